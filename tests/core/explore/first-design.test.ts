import { expect, test, vi } from 'vitest';
import { firstDesign } from '../../../core/explore/first-design';
import type { InHand } from '../../../core/explore/in-hand';
import { mostTurns } from '../../../core/wire/fill';
import { metricGauges } from '../../../core/wire/gauges';
import { blankDesign, parseDesign, serializeDesign } from '../../../core/index';

/** A machine that is busy with other things may take long. */
vi.setConfig({ testTimeout: 60_000 });

const gauge = (mm: number) => {
  const found = metricGauges.find(({ label }) => label === `${mm} mm, grade 2`);
  if (!found) throw new Error(`no gauge of ${mm} mm`);
  return { metal: 'copper' as const, conductorDiameter: found.conductorDiameter, overallDiameter: found.overallDiameter };
};

const inHand = (part: Partial<InHand> = {}): InHand => ({
  wheelDiameter: 2,
  meanWind: 4.5,
  battery: { inSeries: 2, chemistry: 'flooded', capacity: 200 },
  magnets: { shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 }, grade: 'N42', count: 24 },
  wire: { ...gauge(1.4), mass: 5 },
  ...part,
});

const cases: Record<string, InHand> = {
  'a small wheel on one battery': inHand({
    wheelDiameter: 1.2,
    battery: { inSeries: 1, chemistry: 'AGM', capacity: 100 },
    magnets: { shape: { kind: 'cylinder', diameter: 0.03, axial: 0.01 }, grade: 'N42', count: 24 },
    wire: { ...gauge(0.8), mass: 2 },
  }),
  'a middling wheel on two': inHand(),
  'a large wheel on four': inHand({
    wheelDiameter: 3.6,
    meanWind: 6,
    battery: { inSeries: 4, chemistry: 'LiFePO4', capacity: 200 },
    magnets: { shape: { kind: 'block', radial: 0.05, tangential: 0.05, axial: 0.012 }, grade: 'N45', count: 40 },
    wire: { ...gauge(1.25), mass: 12 },
  }),
  ferrite: inHand({
    wheelDiameter: 2.4,
    magnets: { shape: { kind: 'block', radial: 0.05, tangential: 0.03, axial: 0.02 }, grade: 'Y35', count: 48 },
    wire: { ...gauge(1), mass: 12 },
  }),
};

for (const [name, hand] of Object.entries(cases))
  test(`${name} gives a machine that can be built of what is in hand and charges in a light wind`, () => {
    const shares: number[] = [];
    const found = firstDesign(hand, blankDesign(), (share) => shares.push(share));
    if (!found.ok) throw new Error(found.problem.message);
    const { design, results } = found;
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(parseDesign(serializeDesign(design))).toMatchObject({ ok: true });
    expect(2 * design.discs.poles).toBeLessThanOrEqual(hand.magnets.count);
    expect(results.coils.wireMass).toBeLessThanOrEqual(hand.wire.mass);
    expect(results.coils.fits).toBe(true);
    expect(design.winding.wire).toMatchObject({ conductorDiameter: hand.wire.conductorDiameter });
    expect(results.cutIn.wind).toBeGreaterThan(1.7);
    expect(results.cutIn.wind).toBeLessThan(3.5);
    expect(results.rated.coilTemperature).toBeLessThan(results.rated.limitTemperature);
    expect(results.year.energy).toBeGreaterThan(0);
    expect(results.gap.plate).toBeLessThan(1.65);
    expect(
      results.cautions.filter(({ severity, where }) => severity === 'danger' && /^(discs|winding\.layout|magnets)/.test(where)),
    ).toEqual([]);
  });

test('what cannot be built is said with what would help', () => {
  const because = (part: Partial<InHand>) => {
    const found = firstDesign(inHand(part), blankDesign());
    return found.ok ? 'ok' : `${found.problem.where}: ${found.problem.message}`;
  };
  const { magnets, wire } = inHand();
  expect(because({ magnets: { ...magnets, count: 10 } })).toBe('magnets.count: Two discs take at least 16 magnets; 10 are in hand.');
  expect(because({ magnets: { ...magnets, grade: 'N999' } })).toMatch(/^magnets\.grade: /);
  // Eight of 30 mm on half a circle: 77 mm to their middle, so 2 √((77 + 23)² + 15²) = 202 mm across, a quarter of 0.81 m.
  expect(because({ wheelDiameter: 0.5 })).toMatch(/^wheelDiameter: .*202 mm across.*a wheel of 0\.9 m or more/);
  expect(because({ wire: { ...wire, mass: 0.2 } })).toMatch(/^wire\.mass: \d\.\d kg of this wire are needed, 0\.2 kg/);
  expect(because({ wire: { ...gauge(5), mass: 50 } })).toMatch(/^wire\.conductorDiameter: \d+ turns .* take thinner wire/i);
});

test('thick wire takes as many turns as go in, where a somewhat later wind still charges', () => {
  const shape = { kind: 'block' as const, radial: 0.04, tangential: 0.02, axial: 0.0095 };
  const found = firstDesign(
    inHand({ wheelDiameter: 1.4, magnets: { shape, grade: 'N42', count: 24 }, wire: { ...gauge(1.6), mass: 5 } }),
    blankDesign(),
  );
  if (!found.ok) throw new Error(found.problem.message);
  const { wire, turns, thickness, layout } = found.design.winding;
  expect(turns).toBe(mostTurns(1, wire.overallDiameter, layout.legWidth, thickness));
  expect(found.results.cutIn.wind).toBeGreaterThan(3.5);
  expect(found.results.cutIn.wind).toBeLessThan(4.5);
});

test('where coils get too hot the largest wheel is told that keeps them cool', () => {
  const shape = { kind: 'cylinder' as const, diameter: 0.02, axial: 0.005 };
  const withWheel = (wheelDiameter: number) =>
    firstDesign(inHand({ wheelDiameter, magnets: { shape, grade: 'N42', count: 24 }, wire: { ...gauge(0.5), mass: 5 } }), blankDesign());
  const hot = withWheel(2);
  if (hot.ok) throw new Error('it stays cool');
  const { where, message } = hot.problem;
  expect(where).toBe('wheelDiameter');
  expect(message).toMatch(/^The coils would reach \d+ °C at rated wind, more than the 110 °C they stand\. Take more or stronger magnets/);
  const wheel = Number(/, or a wheel of (.*) m or less\.$/.exec(message)?.[1]);
  expect(withWheel(wheel).ok).toBe(true);
  expect(withWheel(wheel + 0.1).ok).toBe(false);
});
