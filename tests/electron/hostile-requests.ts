import type { Host, KeepingHost } from '../../electron/contract';

/** Calls as a page would make them that is no longer ours. Equal seeds give equal calls. */
export type Random = () => number;

export const one = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)];

const names = ['plan.gapwright', '../outside/secret.txt', '..\\outside', '/etc/passwd', 'C:\\Windows', '.', '..', '', '\u0000', 'a\nb', 'é', '💥', 'x'.repeat(201), 'CON', '__proto__']; // prettier-ignore

const circle: Record<string, unknown> = {};
circle['self'] = circle;

/** What structured cloning lets through, and so what may stand in the place of an argument. */
const anything: (() => unknown)[] = [
  () => undefined,
  () => null,
  () => NaN,
  () => -0,
  () => 1e308,
  () => 10n ** 40n,
  () => true,
  () => [],
  () => {},
  () => circle,
  () => new Map([['args', 1]]),
  () => new Set(names),
  () => new Date(NaN),
  () => /(a+)+$/,
  () => new Error('no'),
  () => new ArrayBuffer(8),
  () => new Uint8Array(3),
  () => new Float64Array(3),
  () => new DataView(new ArrayBuffer(1)),
  () => JSON.parse('{"__proto__":{"then":1},"constructor":1,"toString":null}') as unknown,
  () => new Array<unknown>(2000),
  () => Array<unknown>(501).fill({ id: 'a', label: 'b', group: 'c', enabled: true }),
  () => 'x'.repeat(10_000_001),
  () => '[['.repeat(5000),
];

const page = (random: Random) => one(random, ['page', 'other', ...names]);
const text = (random: Random) => one(random, ['{}', '', '\ud800', 'null', 'half a design', '__proto__']);
const entry = (random: Random) => ({
  id: one(random, names),
  label: one(random, names),
  group: one(random, ['File', 'Edit', '__proto__', '']),
  enabled: random() < 0.5,
  ...(random() < 0.5 ? { shortcut: one(random, ['Ctrl+S', '++', '', 'Ctrl+'.repeat(20)]) } : {}),
});

/** Arguments of the right kind, if not of the right content. */
export const hostArguments: Record<keyof Host, (random: Random, tokens: readonly string[]) => unknown[]> = {
  openDesign: () => [],
  takeWaitingDesign: () => [],
  reopenDesign: (random, tokens) => [one(random, [...tokens, ...names])],
  isChanged: (random, tokens) => [one(random, [...tokens, ...names])],
  saveDesign: (random, tokens) => [one(random, [...tokens, ...names]), text(random)],
  saveDesignAs: (random) => [one(random, names), text(random)],
  exportFile: (random) => [one(random, names), one(random, ['pdf', 'csv', 'gapwright', 'exe', '../x']), new Uint8Array(random() * 100)],
  readRecovery: () => [],
  writeRecovery: (random) => [random() < 0.3 ? null : text(random)],
  readSettings: () => [],
  writeSettings: (random) => [text(random)],
  setUnsaved: (random) => [random() < 0.5],
  setMenu: (random) => [Array.from({ length: random() * 5 }, () => entry(random))],
};

export const keepingArguments: Record<keyof KeepingHost, (random: Random) => unknown[]> = {
  readRecovery: (random) => [page(random), Array.from({ length: random() * 4 }, () => page(random))],
  writeRecovery: (random) => [page(random), random() < 0.3 ? null : text(random)],
  readSettings: () => [],
  writeSettings: (random) => [text(random)],
  setUnsaved: (random) => [page(random), random() < 0.5],
};

/** Half of them as they are, so that they get past the first look; the rest with something else in a place, one too many, or one too few. */
export function spoiled(args: unknown[], random: Random): unknown[] {
  const made = [...args];
  if (random() < 0.5) return made;
  if (random() < 0.2) made.pop();
  else if (random() < 0.2) made.push(one(random, anything)());
  else made[Math.floor(random() * Math.max(1, made.length))] = one(random, anything)();
  return made;
}

const steps = ['..', '.', '%2e', '%2E%2e', '%2f', '/', '\\', '%5c', 'assets', 'index.html', 'secret.txt', 'outside', '%00', '%c0%ae', '%', '//', '?', '#', '@', ':80', 'etc/passwd', 'host/readSettings', '%252e%252e']; // prettier-ignore

export const hostilePath = (random: Random) => `/${Array.from({ length: random() * 9 }, () => one(random, steps)).join('')}`;
