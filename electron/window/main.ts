import path from 'node:path';
import { app, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { keptTexts } from '../kept-texts';
import { designAmong, waitingDesign } from './asked-to-open';
import { designFiles } from './files';
import { answerCalls } from './ipc';
import { showMenu } from './menu';
import { bundleScheme, serveBundle } from './protocol';
import { guardClosing, openWindow, refuseAllPermissions } from './window';

protocol.registerSchemesAsPrivileged([bundleScheme]);
app.enableSandbox();
app.setName('Gapwright');
app.setPath('userData', path.join(app.getPath('appData'), 'Gapwright'));

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

function start(): void {
  serveBundle(protocol, path.join(__dirname, '../renderer'));
  refuseAllPermissions(session.defaultSession);
  const window = openWindow(path.join(__dirname, 'preload.cjs'), dialog);
  const kept = keptTexts(app.getPath('userData'));
  const closing = guardClosing(window, dialog, kept);
  const files = designFiles(window, dialog);
  answerCalls(ipcMain, window.webContents, {
    ...files,
    ...kept,
    takeWaitingDesign: () => waiting.take(files.openPath),
    setUnsaved: (unsaved) => closing.setUnsaved(unsaved),
    setMenu: (entries) => showMenu(entries, Menu, process.platform, (id) => window.webContents.send('menu', id)),
  });
  waiting.onPut(() => window.webContents.send('menu', 'design-waiting'));
  app.on('second-instance', (_event, argv) => {
    const file = designAmong(argv.slice(1));
    if (file) waiting.put(file);
    if (window.isMinimized()) window.restore();
    window.focus();
  });
}
