import { contextBridge, ipcRenderer, type IpcRendererEvent } from 'electron';
import type { Reply } from '../calls';
import { hostCalls, type WindowHost } from '../contract';

const invoke =
  (call: string) =>
  async (...args: unknown[]): Promise<unknown> => {
    const reply = (await ipcRenderer.invoke(call, ...args)) as Reply;
    if ('error' in reply) throw new Error(reply.error);
    return reply.value;
  };

const onMenu: WindowHost['onMenu'] = (listener) => {
  const pass = (_event: IpcRendererEvent, id: string) => listener(id);
  ipcRenderer.on('menu', pass);
  return () => ipcRenderer.off('menu', pass);
};

contextBridge.exposeInMainWorld('gapwrightHost', {
  ...Object.fromEntries(Object.keys(hostCalls).map((call) => [call, invoke(call)])),
  onMenu,
});
