import vm from 'node:vm';
import { expect, test } from 'vitest';
import {
  benchReport,
  blankDesign,
  calculationReport,
  createSolver,
  parseDesign,
  readingsFromCsv,
  serializeDesign,
  windingSheet,
} from '../../core';
import { designText } from '../../electron/design-text';
import { hostileDesign } from './hostile-designs';
import { seeded, size } from './size';

const files = size(250, 100_000);
const time = 7_200_000;
/** Of processor time, since whatever else the machine does must not count. [ms] */
const patience = 1000;

/** Ends work that would never end on its own; that is a fault by itself. */
const script = new vm.Script('work()');
/** One for all: thousands of them fill the memory, and everything then takes a hundred times as long. */
const world = vm.createContext();
const ending = <T>(work: () => T): T => {
  world['work'] = work;
  return script.runInContext(world, { timeout: 60_000 }) as T;
};

/** Paths of numbers that are not finite, but for where steel begins: no steel is told there by infinity. */
function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) || /steel(Below|Above)$/.test(path) ? [] : [`${path} = ${value}`];
  if (typeof value === 'string') return /\b(NaN|Infinity|undefined)\b/.test(value) ? [`${path} = ${value.slice(0, 100)}`] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => notFinite(each, `${path}.${key}`));
}

/** How zod says things that have no words of our own, or nothing. */
const libraryWords = /^$|^(Invalid|Too|Expected|Required|Unrecognized)\b/;

type Outcome = 'no text' | 'refused' | 'worked out';

/** Opens the file as the program does and shows all that it would show. */
function opened(bytes: Uint8Array, isPrinted: boolean, solve: ReturnType<typeof createSolver>): { outcome: Outcome; faults: string[] } {
  let text: string;
  try {
    text = designText(bytes);
  } catch {
    return { outcome: 'no text', faults: [] };
  }
  const parsed = parseDesign(text);
  if (!parsed.ok) {
    const wordless = parsed.problems.filter(
      ({ where, message }) => libraryWords.test(message) || message.length > 2000 || where.length > 2000,
    );
    return {
      outcome: 'refused',
      faults: parsed.problems.length ? wordless.map(({ message }) => `refused in the words “${message}”`) : ['refused without words'],
    };
  }
  const { design } = parsed;
  const results = solve(design);
  const faults = notFinite(results, 'results');
  if (isPrinted) {
    faults.push(...notFinite(windingSheet(design, results), 'sheet'), ...notFinite(calculationReport(design, results), 'report'));
    if (design.bench?.length) faults.push(...notFinite(benchReport(design, results), 'bench'));
    if (!parseDesign(serializeDesign(design)).ok) faults.push('saved, it cannot be opened again');
  }
  return { outcome: 'worked out', faults };
}

/** Milliseconds of processor time that the work took. */
function timed(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

test(`${files} hostile design files: none ends the program, holds it up or leads to a number that is none`, { timeout: time }, () => {
  const solve = createSolver();
  const counts: Record<string, number> = {};
  const faults: string[] = [];
  opened(Buffer.from(serializeDesign(blankDesign())), true, solve); // so that no file pays for the program's own start
  let slowest = { ms: 0, what: '' };
  for (let n = 0; n < files; n++) {
    const { kind, bytes } = hostileDesign(seeded(n));
    const isPrinted = n % 20 === 0;
    let outcome = 'crashed';
    const ms = timed(() => {
      try {
        const found = ending(() => opened(bytes, isPrinted, solve));
        outcome = found.outcome;
        faults.push(...found.faults.slice(0, 3).map((fault) => `${n} ${kind}: ${fault}`));
      } catch (error) {
        faults.push(`${n} ${kind}: ${error instanceof Error ? (error.stack ?? '').slice(0, 400) : String(error)}`);
      }
    });
    if (ms > slowest.ms) slowest = { ms, what: `${n} ${kind}` };
    if (ms > patience) faults.push(`${n} ${kind}: took ${ms.toFixed(0)} ms`);
    const row = `${kind}, ${outcome}`;
    counts[row] = (counts[row] ?? 0) + 1;
  }
  console.log(`${files} hostile design files, slowest ${slowest.ms.toFixed(0)} ms (${slowest.what}):`, counts);
  expect(faults).toEqual([]);
  expect(counts['extreme, worked out']).toBeGreaterThan(files / 100);
});

test('pasted text of any kind gives readings or words, and no number that is none', { timeout: time }, () => {
  const pastes = size(500, 50_000);
  const heads = [
    'rpm',
    'volts',
    'AC V',
    'on',
    'number',
    'coil',
    'note',
    'wind km/h',
    'ohms',
    '',
    '__proto__',
    'constructor',
    '"',
    '\u0000',
  ];
  const cells = [
    '1',
    '1,5',
    '-1',
    '1e999',
    'NaN',
    '',
    '"',
    '""',
    '"a\nb"',
    'dc',
    'coil',
    '∞',
    '=1+1',
    'x'.repeat(5000),
    '\ufeff',
    '٣',
    '1 000',
  ];
  for (let n = 0; n < pastes; n++) {
    const random = seeded(n);
    const one = (list: string[]) => list[Math.floor(random() * list.length)] ?? '';
    const separator = one([',', ';', '\t', ' ']);
    const line = (from: string[]) => Array.from({ length: Math.floor(random() * 8) }, () => one(from)).join(separator);
    const text = [line(heads), ...Array.from({ length: Math.floor(random() * 6) }, () => line(cells))].join(one(['\n', '\r\n', '\r']));
    const { readings, problems } = ending(() => readingsFromCsv(text));
    expect(notFinite(readings), text).toEqual([]);
    expect(
      problems.every(({ message }) => message !== ''),
      text,
    ).toBe(true);
  }
});
