import { expect, test } from 'vitest';
import type { WindingSection } from '../../../core/winding/section';
import { windingStage } from '../../../core/winding/stage';
import type { WireSection } from '../../../core/wire/section';
import { phaseResistance, wireStage } from '../../../core/wire/stage';

const winding: WindingSection = {
  layout: {
    kind: 'concentrated',
    coils: 9,
    holeInnerRadius: 0.104,
    holeOuterRadius: 0.15,
    holeInnerWidth: 0.0255,
    holeOuterWidth: 0.0368,
    legWidth: 0.018,
  },
  thickness: 0.01,
  skin: 0.0005,
  phases: 3,
  turns: 60,
  connection: 'star',
  parallelPaths: 1,
  leadLength: 2,
};
const wire: WireSection = { metal: 'copper', conductorDiameter: 1.4e-3, overallDiameter: 1.474e-3, inHand: 1, thermalClass: 180 };
const solved = (w: Partial<WindingSection> = {}, of: Partial<WireSection> = {}) => {
  const section = { ...winding, ...w };
  return wireStage(section, { ...wire, ...of }, windingStage(section, 12));
};

test('a coil is as long as its turns at their mean, every layer counted', () => {
  // Layer by layer, by hand: the hole's outline and 2π of each layer's own offset, 1000 layers.
  const slope = (0.0368 - 0.0255) / 2;
  const hole = 0.0255 + 0.0368 + 2 * Math.hypot(0.046, slope);
  const layers = Array.from({ length: 1000 }, (_, i) => hole + 2 * Math.PI * (0.018 * (i + 0.5)) * 1e-3);
  expect(solved().coilLength).toBeCloseTo(60 * (layers.reduce((sum, l) => sum + l, 0) / 1000), 6);
});

test('all the wire is coils, leads and every strand', () => {
  const { coilLength, wireLength, wireMass } = solved({}, { inHand: 2, overallDiameter: 1e-3, conductorDiameter: 0.9e-3 });
  expect(wireLength).toBeCloseTo(2 * (9 * coilLength + 3 * 2), 9);
  expect(wireMass).toBeCloseTo(wireLength * Math.PI * 0.45e-3 ** 2 * 8890, 9);
});

test('a phase has its series coils, its leads, and a quarter of the ohms on two paths', () => {
  const one = solved({ leadLength: 0 });
  expect(one.phaseResistance20).toBeCloseTo(3 * one.coilResistance20, 12);
  const six = { ...winding.layout, coils: 6, legWidth: 0.02 } as WindingSection['layout'];
  const series = solved({ layout: six, leadLength: 0 });
  const parallel = solved({ layout: six, leadLength: 0, parallelPaths: 2 });
  expect(parallel.phaseResistance20).toBeCloseTo(series.phaseResistance20 / 4, 12);
  expect(solved().phaseResistance20 - one.phaseResistance20).toBeCloseTo(2 / 58e6 / (Math.PI * 0.7e-3 ** 2), 9);
});

test('a hotter phase has more resistance, by the metal’s own coefficient', () => {
  const result = solved();
  expect(phaseResistance(result, wire, 20)).toBe(result.phaseResistance20);
  expect(phaseResistance(result, wire, 120) / result.phaseResistance20).toBeCloseTo(1.393, 9);
  expect(phaseResistance(result, { ...wire, metal: 'aluminium' }, 120) / result.phaseResistance20).toBeCloseTo(1.403, 9);
});

test('aluminium has more ohms and less mass', () => {
  expect(solved({}, { metal: 'aluminium' }).coilResistance20 / solved().coilResistance20).toBeCloseTo(1 / 0.61, 2);
  expect(solved({}, { metal: 'aluminium' }).wireMass / solved().wireMass).toBeCloseTo(0.304, 3);
});

test('turns that do not fit are told how many to take out, and then they fit', () => {
  const { fits, turnsTooMany, cautions, fill } = solved({ turns: 80 });
  expect(fits).toBe(false);
  expect(fill).toBeGreaterThan(0.6);
  expect(cautions).toMatchObject([{ severity: 'danger', where: 'winding.turns' }]);
  expect(cautions[0]?.message).toContain(`take out ${turnsTooMany} turns`);
  expect(solved({ turns: 80 - turnsTooMany }).fits).toBe(true);
  expect(solved({ turns: 80 - turnsTooMany + 1 }).fits).toBe(false);
});

test('the refusal names the limit that is passed', () => {
  const message = (turns: number) => solved({ turns }).cautions[0]?.message;
  expect(message(70)).toContain('a hand reaches');
  expect(message(90)).toContain('rows');
  expect(message(110)).toContain('however they lie');
});

test('following either other advice makes the turns fit as well', () => {
  const message = solved({ turns: 80 }).cautions[0]?.message ?? '';
  const wider = Number(/leg ([\d.]+) mm wider/.exec(message)?.[1]) / 1000;
  const thinner = Number(/at most ([\d.]+) mm/.exec(message)?.[1]) / 1000;
  expect(wider).toBeGreaterThan(0);
  expect(solved({ turns: 80, layout: { ...winding.layout, legWidth: 0.018 + wider } }).fits).toBe(true);
  expect(solved({ turns: 80 }, { overallDiameter: thinner }).fits).toBe(true);
});

test('a strand thicker than the leg never fits', () => {
  const { fits, turnsTooMany, cautions } = solved({ turns: 1, thickness: 0.001 });
  expect({ fits, turnsTooMany }).toEqual({ fits: false, turnsTooMany: 1 });
  expect(cautions[0]?.where).toBe('winding.wire.overallDiameter');
});

test('a covering thinner than the metal is named', () => {
  expect(solved({}, { overallDiameter: 1.3e-3 }).cautions[0]).toMatchObject({ severity: 'danger', where: 'winding.wire.overallDiameter' });
});

test('a winding that fits raises nothing', () => {
  expect(solved({ turns: 60 }).cautions).toEqual([]);
});
