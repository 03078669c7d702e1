import type { FileKind, Host, KeepingHost, MenuEntry } from './contract';

/** What a host sends back: errors travel as words, since neither IPC nor HTTP carries an exception unharmed. */
export type Reply = { value: unknown } | { error: string };

/** A design, in bytes: far above any that can be made here, far below what would hurt. */
export const largestDesign = 10_000_000;
/** Exported files, in bytes. */
const largestExport = 100_000_000;

const fileKinds: readonly FileKind[] = ['gapwright', 'pdf', 'csv', 'svg', 'png', 'dxf'];

/** Each call's arguments as they come from the other side: unknown until looked at. */
type Parsers<H> = { [K in keyof H]: H[K] extends (...args: infer A) => unknown ? (args: unknown[]) => A : never };

export const hostParsers: Parsers<Host> = {
  openDesign: (args) => exactly(0, args, []),
  takeWaitingDesign: (args) => exactly(0, args, []),
  reopenDesign: (args) => exactly(1, args, [name(args[0], 'id')]),
  isChanged: (args) => exactly(1, args, [name(args[0], 'token')]),
  saveDesign: (args) => exactly(2, args, [name(args[0], 'token'), design(args[1])]),
  saveDesignAs: (args) => exactly(2, args, [fileName(args[0]), design(args[1])]),
  exportFile: (args) => exactly(3, args, [fileName(args[0]), fileKind(args[1]), bytes(args[2])]),
  readRecovery: (args) => exactly(0, args, []),
  writeRecovery: (args) => exactly(1, args, [designOrNull(args[0])]),
  readSettings: (args) => exactly(0, args, []),
  writeSettings: (args) => exactly(1, args, [design(args[0])]),
  setUnsaved: (args) => exactly(1, args, [flag(args[0], 'unsaved')]),
  setMenu: (args) => exactly(1, args, [menuEntries(args[0])]),
};

export const keepingParsers: Parsers<KeepingHost> = {
  readRecovery: (args) => exactly(2, args, [pageName(args[0]), pageNames(args[1])]),
  writeRecovery: (args) => exactly(2, args, [pageName(args[0]), designOrNull(args[1])]),
  readSettings: (args) => exactly(0, args, []),
  writeSettings: (args) => exactly(1, args, [design(args[0])]),
  setUnsaved: (args) => exactly(2, args, [pageName(args[0]), flag(args[1], 'unsaved')]),
};

/** Checks the arguments, makes the call, and turns whatever happens into a reply. */
export async function answer<H extends object>(parsers: Parsers<H>, host: H, call: keyof H, args: unknown[]): Promise<Reply> {
  try {
    const act = host[call] as (...values: unknown[]) => Promise<unknown>;
    return { value: (await act(...parsers[call](args))) ?? null };
  } catch (error) {
    return { error: error instanceof Error ? error.message : String(error) };
  }
}

function exactly<T>(count: number, args: unknown[], parsed: T): T {
  if (args.length !== count) throw new TypeError(`expected ${count} arguments; received ${args.length}`);
  return parsed;
}

function text(value: unknown, what: string, longest: number): string {
  if (typeof value !== 'string') throw new TypeError(`${what} must be text; received ${typeof value}`);
  if (value.length > longest) throw new TypeError(`${what} must be at most ${longest} characters; received ${value.length}`);
  return value;
}

const name = (value: unknown, what: string) => text(value, what, 100);

/** In bytes too, or a design could be saved that cannot be opened. */
function design(value: unknown): string {
  const given = text(value, 'text', largestDesign);
  const size = new TextEncoder().encode(given).byteLength;
  if (size > largestDesign) throw new TypeError(`text must be at most ${largestDesign} bytes; received ${size}`);
  return given;
}

const designOrNull = (value: unknown) => (value === null ? null : design(value));

/** Part of a file's name, so nothing that could lead elsewhere. */
function pageName(value: unknown): string {
  const page = name(value, 'page');
  if (!/^[\w-]+$/.test(page)) throw new TypeError('page must be a name of letters, digits and hyphens');
  return page;
}

function pageNames(value: unknown): string[] {
  if (!Array.isArray(value) || value.length > 1000) throw new TypeError('present must be a list of at most 1000 pages');
  return value.map(pageName);
}

function flag(value: unknown, what: string): boolean {
  if (typeof value !== 'boolean') throw new TypeError(`${what} must be true or false; received ${typeof value}`);
  return value;
}

/** A name alone: a renderer may suggest what a file is called, never where it goes. */
function fileName(value: unknown): string {
  const given = text(value, 'name', 200);
  if (!given || /[/\\\p{Cc}]/u.test(given)) throw new TypeError('name must be a file name without folders');
  return given;
}

function fileKind(value: unknown): FileKind {
  const kind = fileKinds.find((k) => k === value);
  if (!kind) throw new TypeError(`kind must be one of ${fileKinds.join(', ')}`);
  return kind;
}

function bytes(value: unknown): Uint8Array {
  if (!(value instanceof Uint8Array)) throw new TypeError('bytes must be a byte array');
  if (value.byteLength > largestExport) throw new TypeError(`bytes must be at most ${largestExport}; received ${value.byteLength}`);
  return value;
}

function menuEntries(value: unknown): MenuEntry[] {
  if (!Array.isArray(value) || value.length > 500) throw new TypeError('entries must be a list of at most 500 menu entries');
  return value.map((entry: unknown) => {
    if (typeof entry !== 'object' || entry === null) throw new TypeError('a menu entry must be an object');
    const { id, label, shortcut, group, enabled } = entry as Record<string, unknown>;
    return {
      id: name(id, 'id'),
      label: text(label, 'label', 200),
      ...(shortcut === undefined ? {} : { shortcut: text(shortcut, 'shortcut', 50) }),
      group: name(group, 'group'),
      enabled: flag(enabled, 'enabled'),
    };
  });
}
