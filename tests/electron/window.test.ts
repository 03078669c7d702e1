import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { hostCalls } from '../../electron/contract';
import { type ElectronDouble, electronDouble } from './electron-double';

const patience = { timeout: 15_000 };

let electron: ElectronDouble;
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'gapwright-window-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
  vi.doUnmock('electron');
  vi.resetModules();
});

/** Boots the real main.ts on a fresh double. */
async function boot(argv: string[] = [], state: Partial<Pick<ElectronDouble['state'], 'lock' | 'displays'>> = {}): Promise<void> {
  electron = electronDouble();
  Object.assign(electron.state, state);
  electron.state.paths['appData'] = folder;
  vi.doMock('electron', () => electron.module);
  const before = process.argv;
  process.argv = ['electron', '.', ...argv];
  await import('../../electron/window/main');
  process.argv = before;
  await electron.state.ready;
}

const window = () => electron.windows[0];
const ask = (call: string, ...args: unknown[]) => electron.invoke(call, window().webContents.mainFrame, args);
const fileAt = (name: string, text = '{}') => {
  const file = path.join(folder, name);
  writeFileSync(file, text);
  return file;
};

test('the page is sandboxed, isolated and without Node', async () => {
  await boot();
  expect(electron.state.sandboxed).toBe(true);
  // All of them: one more, such as `enableBlinkFeatures`, has to be thought about.
  expect(window().options.webPreferences).toEqual({
    preload: expect.stringMatching(/preload\.cjs$/) as string,
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
  });
  expect(window().address).toBe('app://bundle/');
  expect(electron.state.schemes).toEqual([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
  ]);
});

test('the page can go nowhere, open nothing, embed nothing and download nothing', async () => {
  await boot();
  const page = window().webContents;
  for (const name of ['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview']) {
    const event = { preventDefault: vi.fn() };
    page.emit(name, event, 'https://example.org/');
    expect(event.preventDefault, name).toHaveBeenCalledOnce();
  }
  expect(page.openHandler!({ url: 'https://example.org/' } as Electron.HandlerDetails)).toEqual({ action: 'deny' });
  const download = { preventDefault: vi.fn() };
  electron.defaultSession.emit('will-download', download);
  expect(download.preventDefault).toHaveBeenCalledOnce();
});

test('no permission is granted', async () => {
  await boot();
  const answered = vi.fn();
  electron.permissions.request!({} as Electron.WebContents, 'geolocation', answered, {} as Electron.PermissionRequest);
  expect(answered).toHaveBeenCalledWith(false);
  expect(electron.permissions.check!(null, 'media', '', {} as Electron.PermissionCheckHandlerHandlerDetails)).toBe(false);
  expect(electron.permissions.device!({} as Electron.DevicePermissionHandlerHandlerDetails)).toBe(false);
});

test('a second start leaves the first one its window', async () => {
  await boot([], { lock: false });
  expect(electron.windows).toHaveLength(0);
  expect(electron.state.quits).toBe(1);
});

test('every call of the contract is answered, and only to the page itself', async () => {
  await boot();
  expect(electron.calls().sort()).toEqual(Object.keys(hostCalls).sort());
  const refusal = { error: 'This page may not ask that.' };
  const { mainFrame } = window().webContents;
  const strangers = [null, { url: 'https://example.org/', parent: null }, { url: mainFrame.url, parent: mainFrame }];
  for (const call of electron.calls()) {
    for (const frame of strangers) expect(await electron.invoke(call, frame)).toEqual(refusal);
    expect(await electron.invoke(call, mainFrame, [], {})).toEqual(refusal);
  }
  expect(await electron.invoke('readRecovery', mainFrame)).toEqual({ value: null });
});

test('every call refuses arguments of the wrong kind or number', async () => {
  await boot();
  const wrong: Record<string, unknown[][]> = {
    openDesign: [['/etc/passwd']],
    takeWaitingDesign: [[1]],
    reopenDesign: [[], [1], [null], ['x'.repeat(101)], ['id', 'more']],
    isChanged: [[], [1], ['token', 'more']],
    saveDesign: [[], ['token'], [1, 'text'], ['token', null], ['token', 'x'.repeat(10_000_001)], ['token', 'µ'.repeat(5_000_001)]],
    saveDesignAs: [
      ['../x', 'text'],
      ['a\\b', 'text'],
      ['', 'text'],
      ['a', {}],
      ['a\u0000', 'text'],
    ],
    exportFile: [
      ['a', 'exe', new Uint8Array()],
      ['a', 'pdf', 'text'],
      ['a/b', 'pdf', new Uint8Array()],
      ['a', 'pdf'],
    ],
    readRecovery: [[1]],
    writeRecovery: [[], [1], [undefined]],
    readSettings: [[{}]],
    writeSettings: [[null], [3]],
    setUnsaved: [['yes'], []],
    setMenu: [['x'], [[null]], [[{ id: 1 }]], [[{ id: 'a', label: 'b', group: 'c', enabled: 'yes' }]], [Array(501).fill(null)]],
  };
  expect(Object.keys(wrong).sort()).toEqual(Object.keys(hostCalls).sort());
  for (const [call, lists] of Object.entries(wrong)) {
    for (const args of lists)
      expect(await ask(call, ...args), `${call}(${JSON.stringify(args).slice(0, 60)})`).toEqual({ error: expect.any(String) as string });
  }
  expect(electron.asked).toEqual({ open: [], save: [], message: [] });
});

test('an opened design is known to the page by name and token, and saved back to where it came from', async () => {
  await boot();
  const file = fileAt('shed.gapwright', '{"a":1}');
  electron.answers.open = { canceled: false, filePaths: [file] };
  const { value } = (await ask('openDesign')) as { value: { token: string; name: string; text: string } };
  expect(value).toMatchObject({ name: 'shed.gapwright', text: '{"a":1}' });
  expect(JSON.stringify(value)).not.toContain(folder);
  expect(await ask('saveDesign', value.token, '{"a":2}')).toEqual({ value: null });
  expect(readFileSync(file, 'utf8')).toBe('{"a":2}');
});

test('thinking better of it opens and saves nothing', async () => {
  await boot();
  expect(await ask('openDesign')).toEqual({ value: null });
  expect(await ask('saveDesignAs', 'a.gapwright', '{}')).toEqual({ value: null });
  expect(await ask('exportFile', 'a.pdf', 'pdf', new Uint8Array([1]))).toEqual({ value: null });
  expect(readdirSync(folder)).toEqual([]);
});

test('a file opened or saved is opened again in a later run, by an id that does not tell where it lies', async () => {
  await boot();
  const file = fileAt('shed.gapwright', '{"a":1}');
  electron.answers.open = { canceled: false, filePaths: [file] };
  const { value: opened } = (await ask('openDesign')) as { value: { token: string; id: string } };
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'other.gapwright') };
  const { value: saved } = (await ask('saveDesignAs', 'other.gapwright', '{"b":1}')) as { value: { id: string } };
  expect(saved.id).not.toBe(opened.id);
  writeFileSync(file, '{"a":2}');
  vi.resetModules();
  await boot();
  const { value: again } = (await ask('reopenDesign', opened.id)) as { value: { token: string; id: string } };
  expect(again).toEqual({ id: opened.id, name: 'shed.gapwright', text: '{"a":2}', token: expect.any(String) as string });
  expect(again.token).not.toBe(opened.token);
  expect(JSON.stringify(again)).not.toContain(folder);
  expect(await ask('saveDesign', again.token, '{"a":3}')).toEqual({ value: null });
  expect(readFileSync(file, 'utf8')).toBe('{"a":3}');
  expect(await ask('reopenDesign', saved.id)).toMatchObject({ value: { name: 'other.gapwright', text: '{"b":1}' } });
  rmSync(file);
  expect(await ask('reopenDesign', opened.id)).toEqual({ error: expect.stringContaining('there is no such file') as string });
});

test('an id nobody gave, or a list that was tampered with, opens nothing', async () => {
  mkdirSync(path.join(folder, 'Gapwright'));
  const secret = fileAt('secret.gapwright');
  const lies = { error: 'It is not known any more where this design lies.' };
  for (const kept of ['nonsense', '{}', '[null,1]', '[{"id":"a","file":"secret.gapwright"}]', JSON.stringify([{ id: 1, file: secret }])]) {
    writeFileSync(path.join(folder, 'Gapwright', 'files.json'), kept);
    await boot();
    for (const id of ['a', '1', secret, '__proto__', '']) expect(await ask('reopenDesign', id)).toEqual(lies);
    vi.resetModules();
  }
});

test('a token nobody gave writes nothing', async () => {
  await boot();
  expect(await ask('saveDesign', path.join(folder, 'x.gapwright'), '{}')).toEqual({
    error: expect.stringContaining('choose a place') as string,
  });
  expect(readdirSync(folder)).toEqual([]);
});

test('a name without its ending gets it, and asks once more before it replaces a file', async () => {
  await boot();
  fileAt('plan.gapwright', 'old');
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'plan') };
  expect(await ask('saveDesignAs', 'plan.gapwright', 'new')).toEqual({ value: null });
  expect(readFileSync(path.join(folder, 'plan.gapwright'), 'utf8')).toBe('old');
  electron.answers.message = 1;
  expect(await ask('saveDesignAs', 'plan.gapwright', 'new')).toEqual({
    value: { id: expect.any(String) as string, name: 'plan.gapwright', token: expect.any(String) as string },
  });
  expect(readFileSync(path.join(folder, 'plan.gapwright'), 'utf8')).toBe('new');
});

test('bytes go out as they came', async () => {
  await boot();
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'sheet.pdf') };
  const bytes = new Uint8Array([37, 80, 68, 70, 0, 255]);
  expect(await ask('exportFile', 'sheet.pdf', 'pdf', bytes)).toEqual({ value: { name: 'sheet.pdf' } });
  expect(new Uint8Array(readFileSync(path.join(folder, 'sheet.pdf')))).toEqual(bytes);
});

test('a save that fails is an error in words, leaves the old file and no rubbish', async () => {
  await boot();
  mkdirSync(path.join(folder, 'taken.gapwright'));
  fileAt('taken.gapwright/inside', 'old');
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'taken.gapwright') };
  expect(await ask('saveDesignAs', 'taken.gapwright', 'new')).toEqual({
    error: expect.stringMatching(/^Could not write taken\.gapwright: .+ unchanged\.$/) as string,
  });
  expect(readdirSync(folder)).toEqual(['taken.gapwright']);
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'gone', 'x.gapwright') };
  expect(await ask('saveDesignAs', 'x.gapwright', 'new')).toEqual({ error: expect.stringContaining('no such file or folder') as string });
});

test('a file that is no text, too large or not there is refused in words', async () => {
  await boot();
  const refuse = async (file: string) => {
    electron.answers.open = { canceled: false, filePaths: [file] };
    return ((await ask('openDesign')) as { error: string }).error;
  };
  const binary = path.join(folder, 'picture.gapwright');
  writeFileSync(binary, new Uint8Array([0xff, 0xd8, 0xff]));
  expect(await refuse(binary)).toBe('Could not open picture.gapwright: it is not text in UTF-8.');
  expect(await refuse(fileAt('long.gapwright', ' '.repeat(10_000_001)))).toContain('larger than any design, 10 MB');
  expect(await refuse(path.join(folder, 'none.gapwright'))).toContain('there is no such file');
});

test('a design of all the 10 MB that are allowed is saved, opened and kept for recovery whole', async () => {
  await boot();
  const text = `{"notes":"${'µ'.repeat(4_999_993)}"}`;
  expect(Buffer.byteLength(text)).toBe(9_999_998);
  const whole = `${text}\n\n`;
  electron.answers.save = { canceled: false, filePath: path.join(folder, 'long.gapwright') };
  expect(await ask('saveDesignAs', 'long.gapwright', whole)).toHaveProperty('value.token');
  electron.answers.open = { canceled: false, filePaths: [path.join(folder, 'long.gapwright')] };
  expect(((await ask('openDesign')) as { value: { text: string } }).value.text === whole).toBe(true);
  await ask('writeRecovery', whole);
  expect(((await ask('readRecovery')) as { value: string }).value === whole).toBe(true);
});

test('saving through a link replaces the file it points to', async () => {
  await boot();
  const file = fileAt('real.gapwright', 'old');
  const link = path.join(folder, 'link.gapwright');
  symlinkSync(file, link);
  electron.answers.open = { canceled: false, filePaths: [link] };
  const { value } = (await ask('openDesign')) as { value: { token: string } };
  await ask('saveDesign', value.token, 'new');
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(readFileSync(link, 'utf8')).toBe('new');
});

test('saves asked for together land in their order', async () => {
  await boot();
  const file = fileAt('plan.gapwright');
  electron.answers.open = { canceled: false, filePaths: [file] };
  const { value } = (await ask('openDesign')) as { value: { token: string } };
  await Promise.all(Array.from({ length: 20 }, (_, n) => ask('saveDesign', value.token, `${n}`)));
  expect(readFileSync(file, 'utf8')).toBe('19');
  expect(readFileSync(path.join(folder, 'plan.backup.gapwright'), 'utf8')).toBe('18');
  expect(readdirSync(folder).sort()).toEqual(['Gapwright', 'plan.backup.gapwright', 'plan.gapwright']);
});

test('recovery and settings outlive the program, in the application data', async () => {
  await boot();
  expect(await ask('readRecovery')).toEqual({ value: null });
  expect(await ask('readSettings')).toEqual({ value: null });
  await ask('writeRecovery', 'half a design');
  await ask('writeSettings', '{"units":"inch"}');
  vi.resetModules();
  await boot();
  expect(await ask('readRecovery')).toEqual({ value: 'half a design' });
  expect(await ask('readSettings')).toEqual({ value: '{"units":"inch"}' });
  await ask('writeRecovery', null);
  expect(await ask('readRecovery')).toEqual({ value: null });
});

test('closing asks only while something is unsaved', async () => {
  await boot();
  expect(window().tryToClose()).toBe(true);
  await ask('setUnsaved', true);
  electron.answers.message = 0;
  expect(window().tryToClose()).toBe(false);
  expect(electron.asked.message).toHaveLength(1);
  expect(window().destroyed).toBe(false);
  await ask('setUnsaved', false);
  expect(window().tryToClose()).toBe(true);
  expect(electron.asked.message).toHaveLength(1);
});

test('discarding on purpose closes the window and forgets the recovery text', async () => {
  await boot();
  await ask('writeRecovery', 'half a design');
  await ask('setUnsaved', true);
  electron.answers.message = 1;
  window().tryToClose();
  await vi.waitFor(() => expect(window().destroyed).toBe(true), patience);
  expect(await ask('readRecovery')).toEqual({ value: null });
});

test('a page that crashed comes back at once; when it does so again within seconds, or hangs, the user decides', async () => {
  await boot();
  const page = window().webContents;
  const asked = () => electron.asked.message as { message: string }[];
  page.emit('render-process-gone', {}, { reason: 'clean-exit' });
  expect(page.reloads).toBe(0);
  page.emit('render-process-gone', {}, { reason: 'crashed' });
  expect([page.reloads, asked()]).toEqual([1, []]);
  electron.answers.message = 1;
  page.emit('render-process-gone', {}, { reason: 'oom' });
  window().emit('unresponsive');
  await vi.waitFor(() => expect(asked().map(({ message }) => message)).toHaveLength(2), patience);
  expect(asked()).toMatchObject([{ message: 'The page stopped twice within seconds.' }, { message: 'The page does not answer.' }]);
  expect(page.reloads).toBe(1);
  electron.answers.message = 0;
  window().emit('unresponsive');
  await vi.waitFor(() => expect(page.reloads).toBe(2), patience);
});

test('the window opens where it was closed, unless that is nowhere to be seen any more', async () => {
  const file = path.join(folder, 'Gapwright/window.json');
  mkdirSync(path.dirname(file)); // as Electron does by itself
  await boot();
  expect(window().options).toMatchObject({ width: 1400, height: 900, minWidth: 700, minHeight: 500 });
  expect(window().options.x).toBeUndefined();
  window().moved = { x: 300, y: 200, width: 1000, height: 700 };
  window().maximize();
  window().tryToClose();
  const openedOn = async (...displays: Partial<Electron.Rectangle>[]) => {
    vi.resetModules();
    await boot([], { displays: displays.map((area) => ({ workArea: { x: 0, y: 0, width: 1920, height: 1080, ...area } })) });
    return window();
  };
  const again = await openedOn({});
  expect(again.options).toMatchObject({ x: 300, y: 200, width: 1000, height: 700 });
  expect(again.maximized).toBe(true);
  expect((await openedOn({ x: 1920 })).options.x).toBeUndefined();
  expect((await openedOn({ x: 1920 }, {})).options.x).toBe(300);

  for (const text of ['', '{}', 'null', '{"x":1e999,"y":0,"width":5,"height":5}', '{"x":0,"y":0,"width":"wide","height":700}']) {
    writeFileSync(file, text);
    expect((await openedOn({})).options, text).toMatchObject({ width: 1400, height: 900 });
  }
  writeFileSync(file, '{"x":0,"y":0,"width":1,"height":-5,"maximized":"yes"}');
  expect((await openedOn({})).options).toMatchObject({ width: 700, height: 500 });
  expect(window().maximized).toBe(false);
});

test('a design named at the start or by a second start waits for the page', async () => {
  const first = fileAt('first.gapwright', '1');
  const second = fileAt('second.gapwright', '2');
  await boot([first]);
  expect(await ask('takeWaitingDesign')).toMatchObject({ value: { name: 'first.gapwright', text: '1' } });
  expect(await ask('takeWaitingDesign')).toEqual({ value: null });
  electron.app.emit('second-instance', {}, ['electron', '--flag', second]);
  expect(window().webContents.sent).toEqual([['menu', 'design-waiting']]);
  expect(await ask('takeWaitingDesign')).toMatchObject({ value: { name: 'second.gapwright', text: '2' } });
  const event = { preventDefault: vi.fn() };
  electron.app.emit('open-file', event, first);
  expect(event.preventDefault).toHaveBeenCalledOnce();
  expect(await ask('takeWaitingDesign')).toMatchObject({ value: { name: 'first.gapwright' } });
});

test('the menu shows the page’s entries by group and sends back the chosen one', async () => {
  await boot();
  await ask('setMenu', [
    { id: 'save', label: 'Save', shortcut: 'Ctrl+S', group: 'File', enabled: true },
    { id: 'undo', label: 'Undo', group: 'Edit', enabled: false },
  ]);
  const menus = electron.state.menus.at(-1)!;
  const submenu = (label: string) => menus.find((m) => m.label === label)!.submenu as Electron.MenuItemConstructorOptions[];
  expect(submenu('File')).toMatchObject([{ id: 'save', label: 'Save', accelerator: 'CmdOrCtrl+S', registerAccelerator: false }]);
  expect(submenu('Edit')).toMatchObject([{ id: 'undo', enabled: false }, { type: 'separator' }, { role: 'cut' }, { role: 'copy' }, {}, {}]);
  (submenu('File')[0].click as () => void)();
  expect(window().webContents.sent).toEqual([['menu', 'save']]);
});

test('the window’s scheme gives the program’s pages and nothing else', async () => {
  await boot();
  expect((await electron.fetch('app://bundle/../../package.json')).status).toBe(404);
  expect((await electron.fetch('app://bundle/%2e%2e%2fpackage.json')).status).toBe(403);
  expect((await electron.fetch('app://other/index.html')).status).toBe(403);
  const refused = await electron.fetch('app://bundle/index.html', 'POST');
  expect(refused.status).toBe(403);
  expect(refused.headers.get('content-security-policy')).toContain("default-src 'none'");
});
