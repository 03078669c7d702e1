import { expect, test } from 'vitest';
import { emfFromShape, inductanceShape, linkageShape, NO_STEEL, type EmfResult } from '../../../core/emf/stage';
import { rms } from '../../../core/emf/waveform';
import { circulatingCurrent, zeroSequence } from '../../../core/emf/zero-sequence';
import { openCircuitPeak } from '../../../core/rectifier/open-circuit';
import { steadyState, type Source } from '../../../core/rectifier/steady-state';
import type { WindingSection } from '../../../core/winding/section';
import { windingStage } from '../../../core/winding/stage';
import { wireStage } from '../../../core/wire/stage';
import { balancedSource } from '../rectifier/source';
import { coils, rings, spectrum, winding } from './machine';

const SPEED = (1000 * Math.PI) / 30;
const wire = { metal: 'copper', conductorDiameter: 1e-3, overallDiameter: 1.1e-3, inHand: 1, thermalClass: 180 } as const;
const bridge = { arrangement: 'bridge', threshold: 0.7, slope: 0.01 } as const;

/** EMF of a winding, and what the rectifier sees of it. */
function machine(w: WindingSection): { emf: EmfResult; source: Source } {
  const placed = windingStage(w, 12);
  const wound = wireStage(w, wire, placed);
  const emf = emfFromShape(w, placed, linkageShape(w, placed, spectrum(12)), inductanceShape(w, 12, placed, NO_STEEL), wound);
  const { polePairs, orders, phaseEmf, inductance } = emf;
  return {
    emf,
    source: { connection: w.connection, polePairs, orders, phaseEmf, inductance, resistance: wound.phaseResistance20, lineResistance: 0 },
  };
}

test('three phases have their third harmonics in common, and nothing else', () => {
  const { phaseEmf, orders } = balancedSource('delta', 3, { shares: { 1: 1, 3: 0.2, 5: 0.1, 9: 0.05 } });
  const common = zeroSequence(phaseEmf);
  orders.forEach((n, h) => expect(Math.hypot(common.cos[h], common.sin[h])).toBeCloseTo(n === 3 ? 0.2 : n === 9 ? 0.05 : 0, 12));
});

test('the current round the delta is EMF over impedance, harmonic by harmonic', () => {
  const loop = { omega: 200, resistance: 0.4, inductance: [1, 2, 3].map((i) => [1, 2, 3].map((j) => (i === j ? 1e-3 : 1e-4))) };
  const byHand = Math.hypot(6 / Math.hypot(0.4, 3 * 200 * 1.2e-3), 1 / Math.hypot(0.4, 9 * 200 * 1.2e-3)) / Math.SQRT2;
  expect(circulatingCurrent([0, 6, 1], [1, 3, 9], loop)).toBeCloseTo(byHand, 12);
});

test('the rectifier, unable to charge, finds the same current round the delta', () => {
  for (const w of [winding(rings('interleaved'), { connection: 'delta' }), winding(rings('stacked'), { connection: 'delta', turns: 20 })]) {
    const { emf, source } = machine(w);
    const { dcAmps, phaseAmps } = steadyState(source, bridge, { emf: 1e4, resistance: 0 }, SPEED);
    expect(dcAmps).toBe(0);
    for (const amps of phaseAmps) expect(amps / (emf.circulatingAmpsPer1000rpm ?? 0)).toBeCloseTo(1, 3);
    const told = emf.cautions.find(({ where }) => where === 'winding.connection')!;
    expect(told.message).toContain(`${Number(phaseAmps[0].toPrecision(2))} A`);
    expect(told.message).toContain(`${Number((3 * source.resistance * phaseAmps[0] ** 2).toPrecision(2))} W`);
  }
});

test.each(['star', 'delta'] as const)('%s: the greatest line volts are what the rectifier opens at', (connection) => {
  const { emf, source } = machine(winding(coils(9), { connection }));
  const crest = Math.max(...emf.waveform.line.map(Math.abs));
  expect(crest / (openCircuitPeak(source, bridge) * SPEED)).toBeCloseTo(1, 3);
});

test('separate phases and a single one have nothing in common to tell', () => {
  for (const w of [winding(coils(9), { connection: 'separate' }), winding(coils(12), { connection: 'delta', phases: 1 })]) {
    const { emf } = machine(w);
    expect(emf.zeroSequenceRmsPer1000rpm).toBeUndefined();
    expect(emf.circulatingAmpsPer1000rpm).toBeUndefined();
    expect(emf.lineRmsPer1000rpm / (rms(emf.phaseEmf[0]) * SPEED)).toBeCloseTo(1, 12);
  }
});
