import type { IpcMain, IpcMainInvokeEvent, WebContents } from 'electron';
import { answer, type Reply } from '../calls';
import { type Host, hostCalls } from '../contract';
import { bundleAddress } from './protocol';

/** Answers the calls of the contract, from the one page they are meant for and from nobody else. */
export function answerCalls(ipcMain: Pick<IpcMain, 'handle'>, page: WebContents, host: Host): void {
  for (const call of Object.keys(hostCalls) as (keyof Host)[]) {
    ipcMain.handle(call, (event, ...args: unknown[]): Reply | Promise<Reply> =>
      isOurPage(event, page) ? answer(host, call, args) : { error: 'This page may not ask that.' },
    );
  }
}

function isOurPage({ senderFrame }: IpcMainInvokeEvent, page: WebContents): boolean {
  return senderFrame !== null && senderFrame === page.mainFrame && senderFrame.url.startsWith(bundleAddress);
}
