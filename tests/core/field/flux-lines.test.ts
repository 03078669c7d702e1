import { describe, expect, test } from 'vitest';
import { fluxLines, type Place } from '../../../core/field/flux-lines';
import { fieldAt } from '../../../core/field/machine';
import type { DiscsSection } from '../../../core/field/section';
import type { FieldFunction } from '../../../core/magnets/shapes';

const [pitchRadius, poles] = [0.2, 16];
const pitch = (2 * Math.PI * pitchRadius) / poles;
const k = Math.PI / pitch;

/** ψ = sin ks · cosh kz / k: B_z = ∂ψ/∂s, B_s = −∂ψ/∂z, free of currents and of sources. */
const wave: FieldFunction = (x, y, z) => {
  const angle = Math.atan2(y, x);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const along = -Math.sin(k * angle * pitchRadius) * Math.sinh(k * z);
  return [-along * s, along * c, Math.cos(k * angle * pitchRadius) * Math.cosh(k * z)];
};
const flux = ([s, z]: Place) => (Math.sin(k * s) * Math.cosh(k * z)) / k;

describe('flux lines of a field whose flux function is known', () => {
  const half = pitch / 4;
  const lines = fluxLines(wave, { pitchRadius, poles, bottom: -half, top: half, solids: [], planes: [0] }, 12);
  // Through the mid-plane 2/k, and 2 (cosh kh − 1)/k above and below it between the poles: of 2 cosh(π/4) − 1 parts one is the first.
  const crossing = lines.filter((line) => Math.abs(line[0][1]) > 0.9 * half && line[0][1] * line[line.length - 1][1] < 0);

  test('keep to one value of it each', () => {
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) for (const place of line) expect(Math.abs(flux(place) - flux(line[0])) * k).toBeLessThan(2e-3);
  });

  test('share the flux out evenly', () => {
    const values = crossing.map((line) => flux(line[0]) * k).sort((a, b) => a - b);
    expect(values.length).toBe(2 * Math.round(12 / (2 + 2 * (Math.cosh(k * half) - 1))));
    const gaps = values.slice(1).map((v, i) => v - values[i]);
    for (const gap of gaps) expect(gap).toBeCloseTo(2 / values.length, 2);
  });
});

test('lines of two discs go from magnet to magnet, and some from a magnet’s side to the plate it stands on', () => {
  const shape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 } as const;
  const discs: DiscsSection = {
    arrangement: 'facing-pair',
    poles: 12,
    pitchRadius: 0.127,
    backing: { kind: 'steel', thickness: 0.008 },
    runningClearance: 0.0015,
  };
  const step = (2 * Math.PI * 0.127) / 12;
  const solids = [-1, 0, 1, 2].flatMap((m) =>
    [-0.0175, 0.0075].map((low) => ({ from: m * step - 0.015, to: m * step + 0.015, low, high: low + 0.01 })),
  );
  const field = fieldAt(shape, 1.28, 1.05, discs, 0.015);
  const lines = fluxLines(
    field,
    { pitchRadius: 0.127, poles: 12, bottom: -0.0175, top: 0.0175, solids, planes: [-0.01749, 0, 0.01749] },
    24,
  );
  const ends = lines.map((line) => [line[0][1], line[line.length - 1][1]]);
  const over = ends.filter(([a, b]) => a * b < 0).length;
  expect(over).toBeGreaterThan(12);
  expect(lines.length - over).toBeGreaterThan(1);
  for (const [a, b] of ends) for (const z of [a, b]) expect(Math.abs(z)).toBeGreaterThan(0.007);
});

test('no field has no lines', () => {
  expect(fluxLines(() => [0, 0, 0], { pitchRadius, poles, bottom: -0.01, top: 0.01, solids: [], planes: [0] }, 12)).toEqual([]);
});
