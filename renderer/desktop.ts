import type { Host, WindowHost } from '../electron/contract';
import { createBrowserHost } from './browser-host';

declare global {
  interface Window {
    readonly gapwrightHost?: WindowHost;
  }
}

/** The machine this runs on: the desktop window's own host, or the browser's means where there is no window. */
export const desktop: Host = (typeof window === 'undefined' ? undefined : window.gapwrightHost) ?? createBrowserHost();

/** Calls back with the id of a chosen entry of the window's menu; a browser has no such menu. */
export function onMenu(listener: (id: string) => void): () => void {
  return window.gapwrightHost?.onMenu(listener) ?? (() => undefined);
}

/** Whether the host shows a menu of its own, so that the page need not. */
export const hasMenu = (): boolean => window.gapwrightHost !== undefined;

export const isMac = (): boolean => /Mac|iPhone|iPad/.test(navigator.userAgent);
