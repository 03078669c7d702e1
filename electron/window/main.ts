import path from 'node:path';
import { app, dialog, ipcMain, Menu, protocol, screen, session } from 'electron';
import { keptTexts } from '../kept-texts';
import { designAmong, waitingDesign } from './asked-to-open';
import { designFiles } from './files';
import { answerCalls } from './ipc';
import { showMenu } from './menu';
import { bundleScheme, serveBundle } from './protocol';
import { rememberedFiles } from './remembered-files';
import { guardClosing, openWindow, refuseAllPermissions } from './window';
import { least, windowState } from './window-state';

/** Set by the build. */
declare const GAPWRIGHT_VERSION: string;

protocol.registerSchemesAsPrivileged([bundleScheme]);
app.enableSandbox();
app.setName('Gapwright');
app.setPath('userData', path.join(app.getPath('appData'), 'Gapwright'));
app.setAboutPanelOptions({ applicationName: 'Gapwright', applicationVersion: GAPWRIGHT_VERSION, copyright: 'MIT licence' });

const waiting = waitingDesign(designAmong(process.argv.slice(1)));

if (!app.requestSingleInstanceLock()) {
  app.quit();
} else {
  app.on('open-file', (event, file) => {
    event.preventDefault();
    waiting.put(file);
  });
  app.on('window-all-closed', () => app.quit());
  void app.whenReady().then(start);
}

/** A program has one window, and the window one page. */
const onlyPage = 'window';

function start(): void {
  serveBundle(protocol, path.join(__dirname, '../renderer'));
  refuseAllPermissions(session.defaultSession);
  const state = windowState(app.getPath('userData'), screen);
  const window = openWindow(path.join(__dirname, 'preload.cjs'), dialog, {
    ...state.bounds,
    minWidth: least.width,
    minHeight: least.height,
  });
  if (state.maximized) window.maximize();
  window.on('close', () => state.keep(window));
  const kept = keptTexts(app.getPath('userData'));
  const writeRecovery = (text: string | null) => kept.writeRecovery(onlyPage, text);
  const closing = guardClosing(window, dialog, () => writeRecovery(null));
  const files = designFiles(window, dialog, rememberedFiles(app.getPath('userData')));
  const show = (entries: Parameters<typeof showMenu>[0]) =>
    showMenu(entries, Menu, process.platform, (id) => window.webContents.send('menu', id));
  // Until the page has given its own; Electron's has entries that reload the page and open its tools.
  void show([]);
  answerCalls(ipcMain, window.webContents, {
    ...files,
    readRecovery: () => kept.readRecovery(onlyPage, []),
    writeRecovery,
    readSettings: kept.readSettings,
    writeSettings: kept.writeSettings,
    takeWaitingDesign: () => waiting.take(files.openPath),
    setUnsaved: (unsaved) => closing.setUnsaved(unsaved),
    setMenu: show,
  });
  waiting.onPut(() => window.webContents.send('menu', 'design-waiting'));
  app.on('second-instance', (_event, argv, folder) => {
    const file = designAmong(argv.slice(1), folder);
    if (file) waiting.put(file);
    if (window.isMinimized()) window.restore();
    window.focus();
  });
}
