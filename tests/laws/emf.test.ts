/**
 * Laws of linkage, EMF and inductance
 *   turns        EMF grows with N, inductance with N²
 *   mirror       a turn run the other way round links the opposite
 *   rotation     a coil elsewhere has the same EMF, later
 *   pitch        legs two pole pitches apart give nothing, one pitch the most
 *   Stokes       ∮A·dl along the turn equals ∬B·dS over it
 *   Faraday      e = −dΛ/dt, step by step
 *   Parseval     RMS of harmonics equals RMS of the waveform
 *   connection   a phase is the sum of its coils walked from end to end; equal paths in parallel keep the volts of one
 *   symmetry     a balanced machine's phases are alike and sum to third harmonics only
 *   energy       no currents make negative energy: the inductances are positive definite
 */
import { expect, test } from 'vitest';
import { turnLinkage } from '../../core/emf/linkage';
import { emfFromShape, emfStage, inductanceShape, linkageShape, NO_STEEL } from '../../core/emf/stage';
import { coilEmf, combined, harmonicPeak, rms, valueAt } from '../../core/emf/waveform';
import { gaussLegendre } from '../../core/numeric/integrate';
import { layoutModel, type Edge } from '../../core/winding/layouts';
import type { WindingSection } from '../../core/winding/section';
import { windingStage } from '../../core/winding/stage';
import { coils, harmonicAt, rings, spectrum, winding } from '../core/emf/machine';

const POLES = 12;
const field = spectrum(POLES);
const section = { legWidth: 0.012, height: 0, thickness: 0.01 };
const solved = (w: WindingSection) => emfStage(w, windingStage(w, POLES), field, NO_STEEL);
const edgesOf = (offset: number) => layoutModel(coils(9)).fluxEdges(coils(9), POLES, offset);

test('twice the turns give twice the EMF and four times the inductance', () => {
  const [one, two] = [solved(winding(coils(9))), solved(winding(coils(9), { turns: 120 }))];
  expect(two.phaseRmsPer1000rpm / one.phaseRmsPer1000rpm).toBeCloseTo(2, 12);
  expect(two.phaseInductance / one.phaseInductance).toBeCloseTo(4, 12);
});

test('turns, paths and connection need the field’s and the geometry’s shape only once', () => {
  const w = winding(coils(9));
  const result = windingStage(w, POLES);
  const [shape, perTurn] = [linkageShape(w, result, field), inductanceShape(w, POLES, result, NO_STEEL)];
  const changed = winding(coils(9), { turns: 33, connection: 'delta', parallelPaths: 3 });
  const again = emfFromShape(changed, windingStage(changed, POLES), shape, perTurn);
  expect(again).toEqual(solved(changed));
});

test('a turn run the other way round links the opposite', () => {
  const backwards = (offset: number) => {
    const { edges, repeat } = edgesOf(offset);
    return { edges: edges.map(([from, to]): Edge => [to, from]), repeat };
  };
  const there = turnLinkage(field, edgesOf, section);
  turnLinkage(field, backwards, section).forEach((back, h) => expect(back).toBeCloseTo(-there[h], 15));
});

test('a coil elsewhere has the same EMF, later by its electrical angle', () => {
  const linkage = turnLinkage(field, edgesOf, section);
  const [here, there] = [coilEmf(linkage, field.orders, 6, 0, 1), coilEmf(linkage, field.orders, 6, 0.3, 1)];
  expect(rms(there)).toBeCloseTo(rms(here), 12);
  for (const angle of [0, 0.4, 2, 5])
    expect(valueAt(there, field.orders, angle + 6 * 0.3)).toBeCloseTo(valueAt(here, field.orders, angle), 12);
});

test('legs two pole pitches apart give nothing, one pitch apart the most', () => {
  const legs = (halfAngle: number) => (): { edges: Edge[]; repeat: number } => {
    const at = (r: number, a: number): [number, number] => [r * Math.cos(a), r * Math.sin(a)];
    return {
      edges: [
        [at(0.1, -halfAngle), at(0.15, -halfAngle)],
        [at(0.15, halfAngle), at(0.1, halfAngle)],
      ],
      repeat: 1,
    };
  };
  const pitch = Math.PI / 6;
  const full = turnLinkage(field, legs(pitch / 2), section)[0];
  for (const linkage of turnLinkage(field, legs(pitch), section)) expect(Math.abs(linkage)).toBeLessThan(1e-12 * full);
  for (const share of [0.7, 0.9, 1.1, 1.3]) expect(turnLinkage(field, legs((share * pitch) / 2), section)[0]).toBeLessThan(full);
});

test('the line integral along a turn is the flux through it', () => {
  const filament = { ...section, legWidth: 1e-9, thickness: 1e-9 };
  const offset = 0.006;
  const linkage = turnLinkage(field, () => edgesOf(offset), filament);
  // The same by area: x between the polygon's ends, y up to its sides.
  const { edges } = edgesOf(offset);
  const [[x1, y1], [x0, y0]] = edges[1];
  const xs = gaussLegendre(40, x0, x1);
  field.orders.forEach((n, h) => {
    let flux = 0;
    xs.nodes.forEach((x, i) => {
      const top = y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
      const ys = gaussLegendre(40, -top, top);
      ys.nodes.forEach((y, j) => {
        const b = harmonicAt(n, Math.hypot(x, y), 0) * Math.cos(n * 6 * Math.atan2(y, x));
        flux += xs.weights[i] * ys.weights[j] * b;
      });
    });
    expect(Math.abs(linkage[h] - flux)).toBeLessThan(1e-6 * Math.abs(linkage[0]));
  });
});

test('the EMF is the rate at which the linkage falls', () => {
  const linkage = turnLinkage(field, edgesOf, section);
  const [angle, speed, step] = [0.2, 30, 1e-6];
  const linked = (t: number) => 60 * linkage.reduce((sum, l, h) => sum + l * Math.cos(field.orders[h] * 6 * (speed * t - angle)), 0);
  const emf = coilEmf(linkage, field.orders, 6, angle, 60);
  for (const t of [0, 0.003, 0.01]) {
    const rate = (linked(t + step) - linked(t - step)) / (2 * step);
    expect(speed * valueAt(emf, field.orders, 6 * speed * t)).toBeCloseTo(-rate, 5);
  }
});

test('harmonics and waveform have the same RMS', () => {
  const emf = coilEmf(turnLinkage(field, edgesOf, section), field.orders, 6, 0.1, 1);
  const mean = Array.from({ length: 64 }, (_, i) => valueAt(emf, field.orders, (2 * Math.PI * i) / 64) ** 2).reduce((a, b) => a + b) / 64;
  expect(rms(emf)).toBeCloseTo(Math.sqrt(mean), 12);
});

test('a phase is the sum of its coils, walked along each path with the sense in which each is joined', () => {
  for (const [count, poles, parallelPaths] of [
    [9, 12, 1],
    [12, 10, 2],
    [12, 16, 4],
  ] as const) {
    const w = winding(coils(count), { parallelPaths });
    const result = windingStage(w, poles);
    const emf = emfStage(w, result, spectrum(poles), NO_STEEL);
    for (let phase = 1; phase <= 3; phase++)
      for (let path = 1; path <= parallelPaths; path++) {
        const walk = result.coils.map((c) => (c.phase === phase && c.path === path ? c.direction : 0));
        const walked = combined(emf.coilEmf, walk);
        for (const angle of [0, 1, 2, 4])
          expect(valueAt(walked, emf.orders, angle)).toBeCloseTo(valueAt(emf.phaseEmf[phase - 1], emf.orders, angle), 10);
      }
  }
});

test.each([
  ['nine coils', winding(coils(9))],
  ['a stack of rings', winding(rings('stacked'))],
  ['rings side by side', winding(rings('interleaved'))],
])('%s: phases are alike, later by a third, and only third harmonics are left of their sum', (_, w) => {
  // Rings of a stack lie at different heights: compare the fundamental to what the middle ring may differ.
  const emf = solved(w);
  const sizes = emf.phaseEmf.map((e) => harmonicPeak(e, 0));
  const tolerance = w.layout.kind === 'serpentine' && w.layout.placement === 'stacked' ? 0.1 : 1e-9;
  sizes.forEach((size) => expect(Math.abs(size / sizes[0] - 1)).toBeLessThan(tolerance));
  const sum = combined(emf.phaseEmf, [1, 1, 1]);
  if (tolerance < 1e-6)
    emf.orders.forEach((n, h) => {
      if (n % 3 !== 0) expect(harmonicPeak(sum, h)).toBeLessThan(1e-9 * sizes[0]);
      else expect(harmonicPeak(sum, h)).toBeCloseTo(3 * harmonicPeak(emf.phaseEmf[0], h), 9);
    });
});

test.each([
  ['coils in air', winding(coils(9)), NO_STEEL],
  ['coils between steel', winding(coils(9)), { steelBelow: -0.017, steelAbove: 0.017 }],
  ['a stack of rings between steel', winding(rings('stacked')), { steelBelow: -0.03, steelAbove: 0.03 }],
  ['rings side by side', winding(rings('interleaved')), NO_STEEL],
])('%s: no currents make negative energy', (_, w, steel) => {
  const matrix = inductanceShape(w, POLES, windingStage(w, POLES), steel).map((row) => [...row]);
  // Cholesky: every pivot stays positive.
  for (let k = 0; k < matrix.length; k++) {
    const pivot = matrix[k];
    expect(pivot[k]).toBeGreaterThan(0);
    for (let i = k + 1; i < matrix.length; i++) {
      const row = matrix[i];
      const factor = row[k] / pivot[k];
      for (let j = k; j < matrix.length; j++) row[j] = row[j] - factor * pivot[j];
    }
  }
});
