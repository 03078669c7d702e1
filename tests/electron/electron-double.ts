import { EventEmitter } from 'node:events';
import type Electron from 'electron';

/**
 * What the window host uses of Electron, in memory. Each part is typed by Electron's own declaration of it, so that a call which Electron does
 * not have, or has with other arguments, does not compile here either.
 */
type Invoke = Parameters<Electron.IpcMain['handle']>[1];

export interface FrameDouble {
  url: string;
  parent: FrameDouble | null;
}

type OpenHandler = Parameters<Electron.WebContents['setWindowOpenHandler']>[0];

class PageDouble extends EventEmitter {
  readonly sent: unknown[][] = [];
  readonly mainFrame: FrameDouble = { url: '', parent: null };
  reloads = 0;
  openHandler: OpenHandler | undefined;
  send(...message: unknown[]): void {
    this.sent.push(message);
  }
  reload(): void {
    this.reloads++;
  }
  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler;
  }
}

class WindowDouble extends EventEmitter {
  readonly webContents = new PageDouble();
  destroyed = false;
  shown = false;
  minimized = false;
  maximized = false;
  /** Where the user has put it. */
  moved: Partial<Electron.Rectangle> = {};
  address = '';
  constructor(readonly options: Electron.BrowserWindowConstructorOptions) {
    super();
  }
  loadURL(address: string): Promise<void> {
    this.address = address;
    this.webContents.mainFrame.url = `${address}index.html`;
    return Promise.resolve();
  }
  show(): void {
    this.shown = true;
  }
  destroy(): void {
    this.destroyed = true;
  }
  isMinimized(): boolean {
    return this.minimized;
  }
  restore(): void {
    this.minimized = false;
  }
  maximize(): void {
    this.maximized = true;
  }
  isMaximized(): boolean {
    return this.maximized;
  }
  getNormalBounds(): Electron.Rectangle {
    const { x = 0, y = 0, width = 0, height = 0 } = { ...this.options, ...this.moved };
    return { x, y, width, height };
  }
  focus(): void {}
  /** As when the user closes it: true when it went. */
  tryToClose(): boolean {
    const event = { prevented: false, preventDefault: () => void (event.prevented = true) };
    this.emit('close', event);
    return !event.prevented;
  }
}

export function electronDouble() {
  const handlers = new Map<string, Invoke>();
  const windows: WindowDouble[] = [];
  const asked: { open: unknown[]; save: unknown[]; message: unknown[] } = { open: [], save: [], message: [] };
  const answers = {
    open: { canceled: true, filePaths: [] as string[] },
    save: { canceled: true, filePath: '' },
    message: 0,
  };
  const state = {
    ready: Promise.resolve(),
    lock: true,
    quits: 0,
    sandboxed: false,
    schemes: [] as Electron.CustomScheme[],
    menus: [] as Electron.MenuItemConstructorOptions[][],
    about: {} as Electron.AboutPanelOptionsOptions,
    displays: [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }],
    paths: { appData: '/app-data' } as Record<string, string>,
  };
  let protocolHandler: ((request: Request) => Response | Promise<Response>) | undefined;

  class BrowserWindow extends WindowDouble {
    constructor(options: Electron.BrowserWindowConstructorOptions) {
      super(options);
      windows.push(this);
    }
  }

  const app = Object.assign(new EventEmitter(), {
    enableSandbox: () => void (state.sandboxed = true),
    setName: () => undefined,
    setPath: (name: string, folder: string) => void (state.paths[name] = folder),
    getPath: (name: string) => state.paths[name] ?? '',
    setAboutPanelOptions: (options: Electron.AboutPanelOptionsOptions) => void (state.about = options),
    requestSingleInstanceLock: () => state.lock,
    quit: () => void state.quits++,
    whenReady: () => state.ready,
  } satisfies Partial<Record<keyof Electron.App, unknown>>);

  const dialog = {
    showOpenDialog: (...args: unknown[]) => (asked.open.push(args.at(-1)), Promise.resolve(answers.open)),
    showSaveDialog: (...args: unknown[]) => (asked.save.push(args.at(-1)), Promise.resolve(answers.save)),
    showMessageBox: (...args: unknown[]) => (
      asked.message.push(args.at(-1)),
      Promise.resolve({ response: answers.message, checkboxChecked: false })
    ),
    showErrorBox: (_title: string, content: string) => void asked.message.push(content),
    showMessageBoxSync: (...args: unknown[]) => (asked.message.push(args.at(-1)), answers.message),
  } satisfies Pick<Electron.Dialog, 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox' | 'showMessageBoxSync' | 'showErrorBox'>;

  const ipcMain = {
    handle: (channel: string, listener: Invoke) => void handlers.set(channel, listener),
  } satisfies Pick<Electron.IpcMain, 'handle'>;

  const permissions = {
    request: undefined as Parameters<Electron.Session['setPermissionRequestHandler']>[0] | undefined,
    check: undefined as Parameters<Electron.Session['setPermissionCheckHandler']>[0] | undefined,
    device: undefined as Parameters<Electron.Session['setDevicePermissionHandler']>[0] | undefined,
  };
  const defaultSession = Object.assign(new EventEmitter(), {
    setPermissionRequestHandler: (handler: typeof permissions.request) => void (permissions.request = handler),
    setPermissionCheckHandler: (handler: typeof permissions.check) => void (permissions.check = handler),
    setDevicePermissionHandler: (handler: typeof permissions.device) => void (permissions.device = handler),
  } satisfies Partial<Record<keyof Electron.Session, unknown>>);

  const protocol = {
    registerSchemesAsPrivileged: (schemes: Electron.CustomScheme[]) => void (state.schemes = schemes),
    handle: (_scheme: string, handler: NonNullable<typeof protocolHandler>) => void (protocolHandler = handler),
  } satisfies Pick<Electron.Protocol, 'registerSchemesAsPrivileged' | 'handle'>;

  const screen = { getAllDisplays: () => state.displays } satisfies Record<keyof Pick<Electron.Screen, 'getAllDisplays'>, unknown>;

  const Menu = {
    buildFromTemplate: (template: Electron.MenuItemConstructorOptions[]) => template,
    setApplicationMenu: (menu: Electron.MenuItemConstructorOptions[]) => void state.menus.push(menu),
  } satisfies Record<'buildFromTemplate' | 'setApplicationMenu', unknown>;

  return {
    module: { app, BrowserWindow, dialog, ipcMain, Menu, protocol, screen, session: { defaultSession } } as Record<string, unknown>,
    app: app as EventEmitter,
    state,
    asked,
    answers,
    windows,
    permissions,
    defaultSession: defaultSession as EventEmitter,
    /** A call as a page makes it from one of its frames; the window's own page when no other is given. */
    invoke: async (
      call: string,
      frame: FrameDouble | null,
      args: unknown[] = [],
      sender: unknown = windows[0]?.webContents,
    ): Promise<unknown> => {
      const handler = handlers.get(call);
      if (!handler) throw new Error(`nobody answers ${call}`);
      return (await handler({ sender, senderFrame: frame } as Electron.IpcMainInvokeEvent, ...args)) as unknown;
    },
    calls: () => [...handlers.keys()],
    fetch: (address: string, method = 'GET') => {
      if (!protocolHandler) throw new Error('no scheme is answered');
      return protocolHandler(new Request(address, { method }));
    },
  };
}

export type ElectronDouble = ReturnType<typeof electronDouble>;
