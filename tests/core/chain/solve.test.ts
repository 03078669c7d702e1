import { describe, expect, test } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { createStageCache } from '../../../core/chain/stage-cache';
import { blankDesign, kindDefaults } from '../../../core/design/form';
import { readDesign } from '../../../core/design/parse';
import type { Design } from '../../../core/design/schema';

const blank = blankDesign();
const winding = (change: Partial<Design['winding']>): Design => ({ ...blank, winding: { ...blank.winding, ...change } });
const withLoad = (kind: Design['load']['kind'], rest: Partial<Design> = {}): Design => ({
  ...blank,
  load: kindDefaults('load', kind) as Design['load'],
  ...rest,
});

/** Every number of a result, with its path. */
function numbersOf(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => numbersOf(child, `${path}.${key}`));
}

describe('an edit re-works only what it touches', () => {
  const physics = ['magnets', 'field', 'winding', 'linkage', 'inductance'];
  test.each<[string, (d: Design) => Design, string[]]>([
    ['turns', (d) => ({ ...d, winding: { ...d.winding, turns: 31 } }), ['winding', 'wire', 'emf', 'curve']],
    ['wire', (d) => ({ ...d, winding: { ...d.winding, wire: { ...d.winding.wire, inHand: 1 } } }), ['wire', 'emf', 'curve']],
    ['load', (d) => ({ ...d, load: { kind: 'resistor', resistance: 3 } }), ['curve']],
    ['mean wind', (d) => ({ ...d, site: { ...d.site, meanWind: 5 } }), []],
    ['title', (d) => ({ ...d, title: 'Another' }), []],
    ['gap', (d) => ({ ...d, discs: { ...d.discs, runningClearance: 0.002 } }), ['field', 'linkage', 'inductance', 'emf', 'curve']],
  ])('%s', (_, change, expected) => {
    const cache = createStageCache();
    solve(blank, cache);
    const before = { ...cache.worked };
    expect(Object.keys(before)).toEqual(expect.arrayContaining(physics));
    solve(change(blank), cache);
    const again = Object.keys(cache.worked).filter((stage) => cache.worked[stage] > before[stage]);
    expect(again.sort()).toEqual([...expected].sort());
  });

  test('going back to a design that was solved before works nothing out again', () => {
    const cache = createStageCache();
    const first = solve(blank, cache);
    solve(winding({ turns: 40 }), cache);
    const before = { ...cache.worked };
    expect(solve(structuredClone(blank), cache)).toEqual(first);
    expect(cache.worked).toEqual(before);
  });
});

describe('whatever the design, results are finite numbers', () => {
  const serpentine = (placement: 'stacked' | 'interleaved', phases: number) =>
    winding({
      phases,
      thickness: placement === 'stacked' ? 0.004 : 0.008,
      layout: { kind: 'serpentine', innerRadius: 0.104, outerRadius: 0.15, legWidth: 0.012, placement },
    });
  const controller = {
    maxInputVoltage: 150,
    minInputVoltage: 20,
    maxInputCurrent: 40,
    maxPower: 1500,
    batteryVoltage: 24,
    maxChargeCurrent: 60,
  };
  test.each<[string, Design]>([
    ['the blank design', blank],
    ['delta', winding({ connection: 'delta' })],
    ['a bridge a phase', winding({ connection: 'separate' })],
    ['bridges in series', { ...winding({ connection: 'separate' }), rectifier: { ...blank.rectifier, arrangement: 'bridges-in-series' } }],
    ['three stacked rings', serpentine('stacked', 3)],
    ['three interleaved rings', serpentine('interleaved', 3)],
    ['one ring', serpentine('stacked', 1)],
    ['two phases', winding({ phases: 2, layout: { ...blank.winding.layout, coils: 8 } as Design['winding']['layout'] })],
    ['coils that do not share out', winding({ layout: { ...blank.winding.layout, coils: 10 } as Design['winding']['layout'] })],
    ['a coil for every other phase only', winding({ layout: { ...blank.winding.layout, coils: 2 } as Design['winding']['layout'] })],
    ['a single disc', { ...blank, discs: { ...blank.discs, arrangement: 'single' } }],
    [
      'a return plate without backing',
      { ...blank, discs: { ...blank.discs, arrangement: 'single-with-return', backing: { kind: 'none' } } },
    ],
    ['a resistor', withLoad('resistor')],
    ['lamps', withLoad('threshold')],
    ['open', withLoad('open')],
    ['open delta', { ...withLoad('open'), winding: { ...blank.winding, connection: 'delta' } }],
    ['a tracker', withLoad('tracker', { controller })],
    ['ideal diodes and no resistance', { ...blank, rectifier: { ...blank.rectifier, diode: { threshold: 0, slope: 0 } } }],
    ['a breath of wind', { ...blank, site: { ...blank.site, ratedWind: 1, gustWind: 1 } }],
  ])('%s', (_, design) => {
    expect(readDesign(design).ok).toBe(true);
    const results = solve(design);
    const bad = numbersOf(results).filter(([path, value]) => !Number.isFinite(value) && !path.includes('steel'));
    expect(bad).toEqual([]);
    for (const point of results.curve) {
      const out = point.copperLoss + point.diodeLoss + point.cableLoss + point.eddyLoss + point.bearingLoss + point.dcWatts;
      expect(Math.abs(out - point.shaftWatts)).toBeLessThan(1e-6 * Math.max(1, point.shaftWatts));
    }
  });
});

test('twice the turns make twice the volts and start to charge at half the speed', () => {
  const [one, two] = [20, 40].map((turns) => solve(winding({ turns })));
  expect(two.emf.peakPerRadPerSecond / one.emf.peakPerRadPerSecond).toBeCloseTo(2, 9);
  expect((one.cutIn.rpm ?? 0) / (two.cutIn.rpm ?? 1)).toBeCloseTo(2, 9);
});

test('a machine that never charges says so with null, not with a number', () => {
  expect(solve(withLoad('open')).cutIn).toEqual({ rpm: null, wind: null });
});

test('below its start-up wind the wheel stands still, above it turns', () => {
  const { match, stages } = solve(blank);
  expect(stages.start.wind).toBeGreaterThan(match[0].wind);
  for (const { wind, rpm } of match) expect([wind, rpm > 0]).toEqual([wind, wind >= stages.start.wind!]);
});
