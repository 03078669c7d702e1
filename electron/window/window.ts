import { BrowserWindow, type BrowserWindowConstructorOptions, type Dialog, type Session, type WebContents } from 'electron';
import type { Host } from '../contract';
import { bundleAddress } from './protocol';

/** The one window: a sandboxed page that can go nowhere and open nothing. */
export function openWindow(
  preload: string,
  dialog: Pick<Dialog, 'showErrorBox' | 'showMessageBox'>,
  place: Pick<BrowserWindowConstructorOptions, 'x' | 'y' | 'width' | 'height' | 'minWidth' | 'minHeight'>,
): BrowserWindow {
  const window = new BrowserWindow({
    ...place,
    show: false,
    title: 'Gapwright',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  window.once('ready-to-show', () => window.show());
  stayOnPage(window.webContents);
  reloadAfterCrash(window, dialog);
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

/**
 * A page that died comes back at once and finds its recovery text. When it dies again within seconds, or stops answering, the user decides.
 */
function reloadAfterCrash(window: BrowserWindow, dialog: Pick<Dialog, 'showMessageBox'>): void {
  const page = window.webContents;
  const offerReload = async (message: string, otherwise: string): Promise<void> => {
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      title: 'Gapwright',
      message,
      detail: 'Work that was not saved is kept for recovery every few seconds, and offered when the page is there again.',
      buttons: ['Load it again', otherwise],
      defaultId: 0,
      cancelId: 1,
    });
    if (response === 0) page.reload();
  };
  let last = -Infinity;
  page.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    const now = performance.now();
    const isFirst = now - last > 10_000;
    last = now;
    if (isFirst) page.reload();
    else void offerReload('The page stopped twice within seconds.', 'Leave it');
  });
  window.on('unresponsive', () => void offerReload('The page does not answer.', 'Wait'));
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
  forgetRecovery: () => Promise<void>,
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
    void forgetRecovery().finally(() => window.destroy());
  });
  return {
    setUnsaved: (value) => {
      unsaved = value;
      return Promise.resolve();
    },
  };
}
