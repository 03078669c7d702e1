import type { FileKind, Host, MenuEntry } from './contract';

/** What a host sends back: errors travel as words, since neither IPC nor HTTP carries an exception unharmed. */
export type Reply = { value: unknown } | { error: string };

/** Far above any design, far below what would hurt. In characters and bytes. */
export const longestText = 4_000_000;
const mostBytes = 100_000_000;

const fileKinds: readonly FileKind[] = ['gapwright', 'pdf', 'csv', 'svg', 'png', 'dxf'];

/** Each call's arguments as they come from the other side: unknown until looked at. */
const parsers: { [K in keyof Host]: (args: unknown[]) => Parameters<Host[K]> } = {
  openDesign: (args) => exactly(0, args, []),
  takeWaitingDesign: (args) => exactly(0, args, []),
  saveDesign: (args) => exactly(2, args, [text(args[0], 'token', 100), text(args[1], 'text', longestText)]),
  saveDesignAs: (args) => exactly(2, args, [fileName(args[0]), text(args[1], 'text', longestText)]),
  exportFile: (args) => exactly(3, args, [fileName(args[0]), fileKind(args[1]), bytes(args[2])]),
  readRecovery: (args) => exactly(0, args, []),
  writeRecovery: (args) => exactly(1, args, [args[0] === null ? null : text(args[0], 'text', longestText)]),
  readSettings: (args) => exactly(0, args, []),
  writeSettings: (args) => exactly(1, args, [text(args[0], 'text', longestText)]),
  setUnsaved: (args) => exactly(1, args, [flag(args[0], 'unsaved')]),
  setMenu: (args) => exactly(1, args, [menuEntries(args[0])]),
};

/** Checks the arguments, makes the call, and turns whatever happens into a reply. */
export async function answer<K extends keyof Host>(host: Pick<Host, K>, call: K, args: unknown[]): Promise<Reply> {
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

function text(value: unknown, name: string, longest: number): string {
  if (typeof value !== 'string') throw new TypeError(`${name} must be text; received ${typeof value}`);
  if (value.length > longest) throw new TypeError(`${name} must be at most ${longest} characters; received ${value.length}`);
  return value;
}

function flag(value: unknown, name: string): boolean {
  if (typeof value !== 'boolean') throw new TypeError(`${name} must be true or false; received ${typeof value}`);
  return value;
}

/** A name alone: a renderer may suggest what a file is called, never where it goes. */
function fileName(value: unknown): string {
  const name = text(value, 'name', 200);
  if (!name || /[/\\\p{Cc}]/u.test(name)) throw new TypeError('name must be a file name without folders');
  return name;
}

function fileKind(value: unknown): FileKind {
  const kind = fileKinds.find((k) => k === value);
  if (!kind) throw new TypeError(`kind must be one of ${fileKinds.join(', ')}`);
  return kind;
}

function bytes(value: unknown): Uint8Array {
  if (!(value instanceof Uint8Array)) throw new TypeError('bytes must be a byte array');
  if (value.byteLength > mostBytes) throw new TypeError(`bytes must be at most ${mostBytes}; received ${value.byteLength}`);
  return value;
}

function menuEntries(value: unknown): MenuEntry[] {
  if (!Array.isArray(value) || value.length > 500) throw new TypeError('entries must be a list of at most 500 menu entries');
  return value.map((entry: unknown) => {
    if (typeof entry !== 'object' || entry === null) throw new TypeError('a menu entry must be an object');
    const { id, label, shortcut, group, enabled } = entry as Record<string, unknown>;
    return {
      id: text(id, 'id', 100),
      label: text(label, 'label', 200),
      ...(shortcut === undefined ? {} : { shortcut: text(shortcut, 'shortcut', 50) }),
      group: text(group, 'group', 100),
      enabled: flag(enabled, 'enabled'),
    };
  });
}
