import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';

/** Each test starts processes of its own, on a machine that may be busy. */
vi.setConfig({ testTimeout: 60_000 });

const demos = readdirSync('assets').filter((name) => name.endsWith('.gapwright'));
const demo = path.resolve('assets', demos[0]);

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'gapwright-cli-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The built command line as a process of its own. */
function gapwright(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.resolve('dist/cli/main.cjs'), ...args], {
    encoding: 'utf8',
    cwd: folder,
  });
  return { status, stdout, stderr };
}

function fileOf(name: string, text: string): string {
  const file = path.join(folder, name);
  writeFileSync(file, text);
  return file;
}

/** One line on standard error, nothing on standard output. */
function expectRefusal(run: ReturnType<typeof gapwright>, status: number, words: RegExp) {
  expect(run.stderr).toMatch(words);
  expect(run.stderr).toMatch(/^gapwright: [^\n]+\n$/);
  expect(run).toMatchObject({ status, stdout: '' });
}

const everyNumberIn = (value: unknown): number[] =>
  typeof value === 'number' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(everyNumberIn) : [];

describe.each(demos)('%s', (name) => {
  const file = path.resolve('assets', name);
  const text = readFileSync(file, 'utf8');
  /** The demo with the entries at dotted paths set to other values, or taken out where the value is undefined. */
  const changed = (changes: Record<string, unknown>): string => {
    const design = JSON.parse(text) as Record<string, unknown>;
    for (const [entry, value] of Object.entries(changes)) {
      const keys = entry.split('.');
      const parent = keys.slice(0, -1).reduce((at, key) => at[key] as Record<string, unknown>, design);
      parent[keys.at(-1)!] = value;
    }
    return fileOf('changed.gapwright', JSON.stringify(design));
  };

  test('solve --json gives one object with the promised keys and no number that is none', () => {
    const { status, stdout, stderr } = gapwright('solve', file, '--json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const results = JSON.parse(stdout) as Record<string, unknown> & { curve: object[]; match: object[] };
    const promised = {
      gap: ['length', 'peak', 'fundamental'],
      coils: [
        ...[
          'count',
          'wireLength',
          'wireMass',
          'fill',
          'fits',
          'coilResistance20',
          'phaseResistance20',
          'phaseResistance',
          'phaseInductance',
        ],
        'connections',
      ],
      emf: ['peakPerRadPerSecond', 'phaseRmsPer1000rpm', 'lineRmsPer1000rpm', 'distortion', 'hertzPer1000rpm'],
      cutIn: ['rpm', 'wind'],
      rated: ['wind', 'rpm', 'dcVolts', 'dcAmps', 'dcWatts', 'currentDensity', 'coilTemperature', 'limitTemperature'],
      year: ['energy'],
    };
    for (const [part, keys] of Object.entries(promised))
      expect(Object.keys(results[part] as object), part).toEqual(expect.arrayContaining(keys));
    for (const list of ['curve', 'match', 'controller', 'cautions']) expect(results[list], list).toBeInstanceOf(Array);
    const pointKeys = [
      'rpm',
      'dcVolts',
      'dcAmps',
      'dcWatts',
      'phaseAmps',
      'copperLoss',
      'diodeLoss',
      'cableLoss',
      'eddyLoss',
      'shaftWatts',
    ];
    expect(Object.keys(results.curve[0])).toEqual(expect.arrayContaining([...pointKeys, 'coilTemperature']));
    const matchKeys = ['wind', 'rpm', 'tipSpeedRatio', 'dcAmps', 'dcWatts', 'shaftWatts', 'state'];
    expect(Object.keys(results.match[0])).toEqual(expect.arrayContaining(matchKeys));
    // A number that is none would have become null on the way out; cutIn alone may say null.
    const nulls = [...stdout.matchAll(/"(\w+)": null/g)].map(([, key]) => key);
    expect(nulls.filter((key) => key !== 'rpm' && key !== 'wind')).toEqual([]);
    expect(everyNumberIn(results).every(Number.isFinite)).toBe(true);
  });

  test('solve gives a table with units', () => {
    const { status, stdout } = gapwright('solve', file);
    expect(status).toBe(0);
    for (const words of [/Gap\n/, / mm$/m, / T$/m, / V rms$/m, / kWh$/m, /rpm +V dc +A dc/]) expect(stdout).toMatch(words);
    expect(stdout).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('sheet writes a PDF', () => {
    const out = path.join(folder, `${name}.pdf`);
    expect(gapwright('sheet', file, out)).toEqual({ status: 0, stdout: '', stderr: '' });
    expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('cut writes each part as DXF and as SVG and says so', () => {
    const out = path.join(folder, 'cut', name);
    const { status, stdout, stderr } = gapwright('cut', file, out);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const files = readdirSync(out).sort();
    expect(stdout.trimEnd().split('\n').sort()).toEqual(files.map((each) => path.join(out, each)));
    const parts = files.filter((each) => each.endsWith('.dxf')).map((each) => each.slice(0, -4));
    expect(parts).toEqual(expect.arrayContaining(['disc', 'winding-layout']));
    expect(files).toEqual(parts.flatMap((part) => [`${part}.dxf`, `${part}.svg`]));
    for (const part of parts) {
      const contents = ['dxf', 'svg'].map((kind) => readFileSync(path.join(out, `${part}.${kind}`), 'utf8'));
      expect(contents[0]).toMatch(/^0\nSECTION\n[^]*\n0\nEOF\n?$/);
      expect(contents[1]).toMatch(/^<svg [^]*<\/svg>\n$/);
      expect(contents.join('')).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  test('probe gives the field at each point, in their order', () => {
    const points = fileOf('points.csv', 'x,y,z\r\n0.1,0,0\r\n1e-1, 0.02, 0.001\r\n\r\n0,0,0\r\n');
    const { status, stdout } = gapwright('probe', file, points);
    expect(status).toBe(0);
    const [heading, ...rows] = stdout.trimEnd().split('\n');
    expect(heading).toBe('x,y,z,Bx,By,Bz');
    const values = rows.map((row) => row.split(',').map(Number));
    expect(values.map((row) => row.slice(0, 3))).toEqual([
      [0.1, 0, 0],
      [0.1, 0.02, 0.001],
      [0, 0, 0],
    ]);
    expect(values.every((row) => row.length === 6 && row.every(Number.isFinite))).toBe(true);
  });

  test('netlist gives a whole netlist', () => {
    const { status, stdout } = gapwright('netlist', file);
    expect(status).toBe(0);
    expect(stdout).toMatch(/\.end\s*$/i);
  });

  test('an odd number of poles is refused and named', () => {
    expectRefusal(gapwright('solve', changed({ 'discs.poles': 7 })), 2, /discs\.poles: .*even.*7/);
  });

  test('a negative clearance is refused and named', () => {
    expectRefusal(gapwright('netlist', changed({ 'discs.runningClearance': -0.001 })), 2, /discs\.runningClearance: .*-0\.001/);
  });

  test('text for a number is refused and named', () => {
    expectRefusal(gapwright('solve', '--json', changed({ 'winding.turns': 'many' })), 2, /winding\.turns: .*"many"/);
  });

  test('an entry that no design has is refused and named', () => {
    expectRefusal(gapwright('solve', changed({ 'discs.pols': 8 })), 2, /discs\.pols: /);
  });

  test('an entry that is missing is refused and named', () => {
    expectRefusal(gapwright('solve', changed({ 'magnets.remanence': undefined })), 2, /magnets\.remanence: /);
  });

  test('all problems of a design are told at once', () => {
    const file = changed({ 'discs.poles': 7, 'site.airDensity': null });
    expectRefusal(gapwright('solve', file), 2, /discs\.poles: .*; .*site\.airDensity: /);
  });

  test('a text that breaks off is refused wherever it breaks', () => {
    for (const share of [0, 0.1, 0.5, 0.9, 0.999]) {
      const cut = fileOf('cut.gapwright', text.trimEnd().slice(0, Math.floor(text.trimEnd().length * share)));
      expectRefusal(gapwright('solve', cut), 2, /cut\.gapwright: .*JSON/);
    }
  });

  test('a newer version is refused, unharmed', () => {
    const newer = changed({ version: 2 });
    const before = readFileSync(newer);
    expectRefusal(gapwright('solve', newer), 2, /version: /);
    expect(readFileSync(newer)).toEqual(before);
  });

  test('a bad design writes no sheet and no parts', () => {
    const [out, parts] = [path.join(folder, 'never.pdf'), path.join(folder, 'never')];
    expectRefusal(gapwright('sheet', changed({ 'discs.poles': 7 }), out), 2, /discs\.poles/);
    expectRefusal(gapwright('cut', changed({ 'discs.poles': 7 }), parts), 2, /discs\.poles/);
    expect([existsSync(out), existsSync(parts)]).toEqual([false, false]);
  });
});

test('there are demos to try it on', () => {
  expect(demos.length).toBeGreaterThan(0);
});

test('a file that is not there, a folder that is not there and a file that is no text are told in a line', () => {
  expectRefusal(gapwright('solve', 'none.gapwright'), 1, /none\.gapwright: there is no such file/);
  expectRefusal(gapwright('solve', folder), 1, /folder/);
  expectRefusal(gapwright('sheet', demo, path.join(folder, 'none', 'out.pdf')), 1, /out\.pdf: there is no such file or folder/);
  expectRefusal(gapwright('cut', demo, fileOf('in-the-way', '')), 1, /in-the-way: /);
  expectRefusal(gapwright('probe', demo, 'none.csv'), 1, /none\.csv: there is no such file/);
  expectRefusal(gapwright('solve', fileOf('binary.gapwright', '\u0000\u0001\u0002')), 2, /binary\.gapwright: it is not text in UTF-8/);
});

test('a table of points that cannot be read names the line and the column', () => {
  const refuse = (csv: string, words: RegExp) => expectRefusal(gapwright('probe', demo, fileOf('bad.csv', csv)), 1, words);
  refuse('x,y,z\n0,0,0\n0,nought,0\n', /bad\.csv: line 3, column 2 \(y\): must be a number; received "nought"/);
  refuse('0,0\n', /line 1, column 3 \(z\): a number is missing/);
  refuse('0,0,0,0\n', /line 1, column 4: /);
  refuse('0,,0\n', /line 1, column 2 \(y\): a number is missing/);
  refuse('0,0x10,0\n', /line 1, column 2/);
  refuse('1e999,0,0\n', /line 1, column 1/);
  refuse('0;0;0\n', /line 1, column 1/);
  refuse('x,y,z\n', /no point/);
  refuse('', /no point/);
});

test('a command line that is not understood says what there is', () => {
  expectRefusal(gapwright(), 1, /name a command: solve, sheet, report, cut, probe, netlist, search, spread/);
  expectRefusal(gapwright('frobnicate'), 1, /there is no command "frobnicate"; there are solve/);
  expectRefusal(gapwright('constructor'), 1, /there is no command/);
  expectRefusal(gapwright('solve'), 1, /usage: solve FILE \[--json\]/);
  expectRefusal(gapwright('solve', demo, '--jsn'), 1, /no option --jsn/);
  expectRefusal(gapwright('sheet', demo), 1, /usage: sheet FILE OUT\.pdf/);
  expectRefusal(gapwright('cut', demo), 1, /usage: cut FILE OUTDIR/);
});

test('help lists the commands', () => {
  const { status, stdout } = gapwright('--help');
  expect(status).toBe(0);
  for (const command of [
    'solve FILE [--json]',
    'sheet FILE OUT.pdf',
    'report FILE OUT.pdf',
    'cut FILE OUTDIR',
    'probe FILE POINTS.csv',
    'netlist FILE',
    'search FILE [--json]',
    'spread FILE [--json]',
  ])
    expect(stdout).toContain(command);
});
