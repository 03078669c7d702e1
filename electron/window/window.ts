import { BrowserWindow, type Dialog, type Session, type WebContents } from 'electron';
import type { Host } from '../contract';
import type { KeptTexts } from '../kept-texts';
import { bundleAddress } from './protocol';

/** The one window: a sandboxed page that can go nowhere and open nothing. */
export function openWindow(preload: string, dialog: Pick<Dialog, 'showErrorBox'>): BrowserWindow {
  const window = new BrowserWindow({
    width: 1400,
    height: 900,
    minWidth: 700,
    minHeight: 500,
    show: false,
    title: 'Gapwright',
    webPreferences: { preload, sandbox: true, contextIsolation: true, nodeIntegration: false, webviewTag: false, spellcheck: false },
  });
  window.once('ready-to-show', () => window.show());
  stayOnPage(window.webContents);
  reloadAfterCrash(window);
  window.loadURL(bundleAddress).catch((error: unknown) => {
    dialog.showErrorBox(
      'Gapwright',
      `The program's own page could not be shown: ${error instanceof Error ? error.message : String(error)}`,
    );
  });
  return window;
}

function stayOnPage(page: WebContents): void {
  page.setWindowOpenHandler(() => ({ action: 'deny' }));
  page.on('will-navigate', (event) => event.preventDefault());
  page.on('will-frame-navigate', (event) => event.preventDefault());
  page.on('will-redirect', (event) => event.preventDefault());
  page.on('will-attach-webview', (event) => event.preventDefault());
}

/** A page that died comes back at once and finds its recovery text; one that dies again within seconds stays down. */
function reloadAfterCrash(window: BrowserWindow): void {
  let last = -Infinity;
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    const now = performance.now();
    if (reason === 'clean-exit' || now - last < 10_000) return;
    last = now;
    window.webContents.reload();
  });
}

export function refuseAllPermissions(session: Session): void {
  session.setPermissionRequestHandler((_page, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => event.preventDefault());
}

/** Asks before a window with unsaved changes closes. Discarding also forgets the recovery text, or it would be offered back at the next start. */
export function guardClosing(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showMessageBoxSync'>,
  kept: Pick<KeptTexts, 'writeRecovery'>,
): Pick<Host, 'setUnsaved'> {
  let unsaved = false;
  window.on('close', (event) => {
    if (!unsaved) return;
    event.preventDefault();
    const choice = dialog.showMessageBoxSync(window, {
      type: 'warning',
      title: 'Gapwright',
      message: 'The design has changes that are not saved.',
      buttons: ['Keep working', 'Discard the changes'],
      defaultId: 0,
      cancelId: 0,
    });
    if (choice !== 1) return;
    void kept.writeRecovery(null).finally(() => window.destroy());
  });
  return {
    setUnsaved: (value) => {
      unsaved = value;
      return Promise.resolve();
    },
  };
}
