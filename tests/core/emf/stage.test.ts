import { expect, test } from 'vitest';
import { emfFromShape, emfStage, inductanceShape, linkageShape, NO_STEEL } from '../../../core/emf/stage';
import { windingStage } from '../../../core/winding/stage';
import { wireStage } from '../../../core/wire/stage';
import { coils, rings, spectrum, winding } from './machine';

const solved = (w = winding(coils(9)), poles = 12) => emfStage(w, windingStage(w, poles), spectrum(poles), NO_STEEL);

test('star lines are root three of a phase, third harmonics gone; delta lines are the phase without them, separate ones the phase', () => {
  const star = solved();
  const fundamental = star.peakPerRadPerSecond / Math.SQRT2;
  const at1000rpm = (1000 * Math.PI) / 30;
  expect(star.lineRmsPer1000rpm / (Math.sqrt(3) * fundamental * at1000rpm)).toBeCloseTo(1, 2);
  const separate = solved(winding(coils(9), { connection: 'separate' }));
  expect(separate.lineRmsPer1000rpm).toBeCloseTo(separate.phaseRmsPer1000rpm, 12);
  const delta = solved(winding(coils(9), { connection: 'delta' }));
  expect(delta.lineRmsPer1000rpm * Math.sqrt(3)).toBeCloseTo(star.lineRmsPer1000rpm, 9);
  const thirds = solved(winding(coils(12), { connection: 'delta' }), 10);
  expect(thirds.phaseRmsPer1000rpm).toBeCloseTo(Math.hypot(thirds.lineRmsPer1000rpm, thirds.zeroSequenceRmsPer1000rpm ?? 0), 9);
  expect(thirds.zeroSequenceRmsPer1000rpm).toBeGreaterThan(0.01 * thirds.phaseRmsPer1000rpm);
});

test('a single phase in “star” has no neighbour to be measured against', () => {
  const { lineRmsPer1000rpm, phaseRmsPer1000rpm } = solved(winding(coils(12), { phases: 1 }));
  expect(lineRmsPer1000rpm).toBeCloseTo(phaseRmsPer1000rpm, 12);
});

test('frequency is pole pairs times turns a second', () => {
  expect(solved().hertzPer1000rpm).toBeCloseTo(100, 12);
});

test('the waveform starts and ends alike and has the RMS it says', () => {
  const { waveform, phaseRmsPer1000rpm, lineRmsPer1000rpm } = solved();
  for (const [wave, rms] of [
    [waveform.phase, phaseRmsPer1000rpm],
    [waveform.line, lineRmsPer1000rpm],
  ] as const) {
    expect(wave[0]).toBeCloseTo(wave[wave.length - 1], 9);
    const mean = wave.slice(1).reduce((sum, v) => sum + v * v, 0) / (wave.length - 1);
    expect(Math.sqrt(mean)).toBeCloseTo(rms, 6);
  }
});

test('distortion is the harmonics over the fundamental', () => {
  const { phaseEmf, distortion } = solved();
  const peaks = phaseEmf[0]?.sin.map((s, h) => Math.hypot(s, phaseEmf[0]?.cos[h] ?? 0)) ?? [];
  expect(distortion).toBeCloseTo(Math.hypot(...peaks.slice(1)) / peaks[0], 12);
});

test('paths of unlike coils are told of the volts between them', () => {
  const w = winding(coils(12), { parallelPaths: 4 });
  const { cautions, circulating } = solved(w, 10);
  expect(circulating).toBeGreaterThan(0);
  expect(cautions.map(({ severity, where }) => [severity, where])).toContainEqual(['danger', 'winding.parallelPaths']);
  expect(solved(winding(coils(12), { parallelPaths: 2 }), 10).cautions).toEqual([]);
});

test('with the wire known, the current round unlike paths and its loss are told too', () => {
  const w = winding(coils(12), { parallelPaths: 4 });
  const placed = windingStage(w, 10);
  const wire = { metal: 'copper', conductorDiameter: 1e-3, overallDiameter: 1.1e-3, inHand: 1, thermalClass: 180 } as const;
  const wound = wireStage(w, wire, placed);
  const perTurn = inductanceShape(w, 10, placed, NO_STEEL);
  const { cautions, circulating = 0 } = emfFromShape(w, placed, linkageShape(w, placed, spectrum(10)), perTurn, wound);
  // Four paths a phase of one coil each: every one departs as far, and twelve times I²R is lost.
  const amperes = (circulating * 1000 * Math.PI) / 30 / wound.coilResistance20;
  expect(cautions[0]?.message).toContain(`${Number(amperes.toPrecision(2))} A`);
  expect(cautions[0]?.message).toContain(`${Number((12 * amperes ** 2 * wound.coilResistance20).toPrecision(2))} W`);
});

test('a delta with third harmonics is told of the volts round it, a star is not', () => {
  expect(solved(winding(coils(12), { connection: 'delta' }), 10).cautions.map(({ where }) => where)).toEqual(['winding.connection']);
  expect(solved(winding(coils(12)), 10).cautions).toEqual([]);
});

test('a stack is told how far its rings’ volts differ, rings in one layer are not', () => {
  const stack = solved(winding(rings('stacked'), { thickness: 0.019 }));
  const spread = stack.phaseEmf.map((emf) => Math.hypot(emf.sin[0], emf.cos[0]));
  expect(Math.max(...spread) / Math.min(...spread)).toBeGreaterThan(1.03);
  expect(stack.cautions.map(({ where }) => where)).toEqual(['winding.layout.placement']);
  expect(solved(winding(rings('interleaved'))).cautions).toEqual([]);
});

test('inductances are those of the phases: alike, symmetric, with neighbours that oppose', () => {
  const { inductance, phaseInductance, coilInductance } = solved();
  inductance.forEach((row, i) => {
    expect(row[i]).toBeCloseTo(phaseInductance, 12);
    row.forEach((l, j) => expect(l).toBeCloseTo(inductance[j][i], 15));
  });
  expect(inductance[0][1]).toBeLessThan(0);
  expect(phaseInductance / coilInductance).toBeCloseTo(3, 1);
});

test('steel raises a coil’s inductance', () => {
  const w = winding(coils(9));
  const result = windingStage(w, 12);
  const [air] = inductanceShape(w, 12, result, NO_STEEL) as [number[]];
  const [steel] = inductanceShape(w, 12, result, { steelBelow: -0.017, steelAbove: 0.017 }) as [number[]];
  const [below] = inductanceShape(w, 12, result, { steelBelow: -0.017, steelAbove: Infinity }) as [number[]];
  expect(below[0]).toBeGreaterThan(air[0]);
  expect(steel[0]).toBeGreaterThan(below[0]);
});

test('rings in one layer, whose ends cross in the drawing, share no more than each has', () => {
  for (const placement of ['stacked', 'interleaved'] as const) {
    const { inductance } = solved(winding(rings(placement)));
    inductance.forEach((row, i) => row.forEach((l, j) => expect(Math.abs(l) <= row[i] || i === j).toBe(true)));
  }
});

test('any number of coils, phases and paths gives finite numbers', () => {
  for (const w of [
    winding(coils(1), { phases: 1 }),
    winding(coils(2)),
    winding(coils(7), { phases: 5, parallelPaths: 3 }),
    winding(rings('interleaved'), { phases: 4 }),
    winding(rings('stacked'), { phases: 6, parallelPaths: 2 }),
    winding({ ...coils(9), legWidth: 0.03 }),
  ]) {
    const numbers: number[] = [];
    JSON.stringify(solved(w), (_, value: unknown) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.every(Number.isFinite)).toBe(true);
  }
});
