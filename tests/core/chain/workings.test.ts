import { describe, expect, test } from 'vitest';
import {
  blankDesign,
  type Design,
  entryQuantities,
  evaluate,
  plainText,
  resultQuantities,
  type Results,
  solve,
  stageQuantities,
  workingLines,
  workingsOf,
} from '../../../core/index';
import { holds } from '../../../core/working';
import { demo } from '../../demo';

// A working is what a reader trusts. So that none can lie, every formula shown is worked out here and must give the result, and where there is none, the
// relation shown in its place must hold.

const cabin = demo('hill-cabin');
const shed = demo('shed-light');
const farm = demo('farm-tracker');

/** Between them every kind of layout, disc, load and connection. */
const designs: Record<string, Design> = {
  'hill-cabin': cabin,
  'shed-light': shed,
  'farm-tracker': farm,
  blank: blankDesign(),
  'on a resistor, in delta, two paths': {
    ...cabin,
    discs: { ...cabin.discs, poles: 16 },
    winding: { ...cabin.winding, layout: { ...cabin.winding.layout, coils: 12 } as never, connection: 'delta', parallelPaths: 2 },
    load: { kind: 'resistor', resistance: 1.5 },
  },
  'separate bridges in series on a string of lamps, one disc': {
    ...cabin,
    discs: { ...cabin.discs, arrangement: 'single', backing: { kind: 'none' } },
    winding: { ...cabin.winding, connection: 'separate', wire: { ...cabin.winding.wire, metal: 'aluminium' } },
    rectifier: { ...cabin.rectifier, arrangement: 'bridges-in-series' },
    load: { kind: 'threshold', turnOn: 20, slope: 0.4 },
  },
  'open, with a return plate': {
    ...cabin,
    discs: { ...cabin.discs, arrangement: 'single-with-return' },
    load: { kind: 'open' },
  },
  'discs turned against each other, three rings stacked': {
    ...shed,
    discs: { ...shed.discs, misalignment: 0.06 },
    winding: { ...shed.winding, phases: 3, skin: 0.0003, connection: 'delta' },
  },
  'three rings, stacked': { ...shed, winding: { ...shed.winding, phases: 3, skin: 0.0003 } },
  'more turns than go in, wire thicker than the leg': {
    ...shed,
    winding: { ...shed.winding, wire: { ...shed.winding.wire, conductorDiameter: 0.0064, overallDiameter: 0.0066 } },
  },
};

const known: Record<string, unknown> = { ...entryQuantities, ...resultQuantities, ...stageQuantities };
const valueAt = (root: unknown, path: string) =>
  path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], root);
/** Results by name are in rpm, formulas in rad/s. */
const inFormula = (path: string, value: number) => ((known[path] as { unit: string }).unit === 'rpm' ? (value * 2 * Math.PI) / 60 : value);
/** The rated power is a difference of means over a period, each integrated on its own. */
const tolerance = (path: string) => (/^rated\.dc/.test(path) ? 1e-5 : 1e-9);

describe.each(Object.entries(designs))('%s', (_name, design) => {
  const results: Results = solve(design);
  const workings = workingsOf(design, results).flatMap((group) => group.workings);
  const show = (value: number) => {
    expect(value).toSatisfy(Number.isFinite);
    return String(value);
  };

  test('every result has its working, once', () => {
    const present = Object.keys({ ...resultQuantities, ...stageQuantities }).filter((path) => valueAt(results, path) !== undefined);
    expect(workings.map(({ result }) => result).sort()).toEqual(present.sort());
  });

  test('the formula shown gives the result shown', () => {
    for (const { result, formula } of workings) {
      const value = valueAt(results, result);
      if (!formula || typeof value !== 'number') continue;
      const expected = inFormula(result, value);
      const difference = Math.abs(evaluate(formula) - expected);
      expect([result, difference <= tolerance(result) * Math.abs(expected) + 1e-12, evaluate(formula), expected]).toEqual([
        result,
        true,
        expect.any(Number),
        expected,
      ]);
    }
  });

  test('the check shown holds', () => {
    for (const { result, check } of workings) {
      if (!check) continue;
      const [left, right] = [evaluate(check.left), evaluate(check.right)];
      expect([result, left, check.sign, right, holds(check)]).toEqual([result, left, check.sign, right, true]);
    }
  });

  test('a result that no formula gives is held to account by a check, unless there is no result', () => {
    const free = workings.filter(({ formula, check, result }) => !formula && !check && valueAt(results, result) !== null);
    expect(free.map(({ result }) => result)).toEqual([]);
  });

  test('every working names its inputs, its limits and its source, and nothing in it is no number', () => {
    for (const working of workings) {
      const { law, symbols, numbers, check, terms } = workingLines(working, show);
      expect(working.limits).toMatch(/\.$/);
      expect(working.source).toMatch(/\.$/);
      for (const line of [law, symbols, numbers, check?.symbols, check?.numbers])
        if (line) expect(plainText(line)).not.toMatch(/NaN|undefined|Infinity/);
      for (const { path } of [...terms, ...(working.from ?? []).map((at) => ({ path: at }))])
        if (path !== undefined) expect(Object.keys(known)).toContain(path);
      for (const term of terms) expect([working.result, term.symbol === '']).toEqual([working.result, false]);
    }
  });

  test('a symbol stands for one thing in a working', () => {
    for (const working of workings) {
      const terms = workingLines(working, show).terms;
      const symbols = terms.map(({ symbol }) => symbol);
      expect(new Set(symbols).size).toBe(symbols.length);
    }
  });
});
