import type { IpcMain, IpcMainInvokeEvent, WebContents } from 'electron';
import { answer, hostParsers, type Reply } from '../calls';
import { type Host, hostCalls } from '../contract';
import { bundleAddress } from './protocol';

/** Answers the calls of the contract, from the one page they are meant for and from nobody else. */
export function answerCalls(ipcMain: Pick<IpcMain, 'handle'>, page: WebContents, host: Host): void {
  for (const call of Object.keys(hostCalls) as (keyof Host)[]) {
    ipcMain.handle(call, (event, ...args: unknown[]): Reply | Promise<Reply> =>
      isOurPage(event, page) ? answer(hostParsers, host, call, args) : { error: 'This page may not ask that.' },
    );
  }
}

/** The page's own top frame, still showing the program; not a frame within it, not another page. */
function isOurPage({ sender, senderFrame }: IpcMainInvokeEvent, page: WebContents): boolean {
  return sender === page && senderFrame?.parent === null && senderFrame.url.startsWith(bundleAddress);
}
