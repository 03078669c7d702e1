import { expect, test } from 'vitest';
import { bzHarmonic, spectrumReader } from '../../../core/field/harmonics';
import { fieldAt } from '../../../core/field/machine';
import type { DiscsSection } from '../../../core/field/section';
import { fieldStage } from '../../../core/field/stage';
import type { MagnetShape } from '../../../core/magnets/section';

const block: MagnetShape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 };
const discs: DiscsSection = {
  arrangement: 'facing-pair',
  poles: 12,
  pitchRadius: 0.127,
  backing: { kind: 'steel', thickness: 0.008 },
  runningClearance: 0.0015,
};
const region = { gapLength: 0.013, innerRadius: 0.104, outerRadius: 0.15, halfHeight: 0.0045 };
const stage = (change: Partial<DiscsSection> = {}, shape: MagnetShape = block, coercivity?: number) =>
  fieldStage(shape, 1.28, 1.05, { ...discs, ...change }, region, coercivity);

test('peak and probe are one and the same field', () => {
  const result = stage();
  expect(result.peak).toBeCloseTo(fieldAt(block, 1.28, 1.05, discs, 0.013)(0.127, 0, 0)[2], 9);
  expect(Math.max(...result.profile.bz)).toBeCloseTo(result.peak, 3);
});

test('the fundamental is the spectrum’s first harmonic at pitch radius', () => {
  const { fundamental, spectrum } = stage();
  expect(bzHarmonic(spectrum, 1, 0.127, 0) / fundamental).toBeCloseTo(1, 3);
  expect(bzHarmonic(spectrum, 2, 0.127, 0)).toBe(0);
});

test('the profile is one pole pair, north under magnet 0', () => {
  const { profile } = stage();
  expect(profile.angle[0]).toBe(0);
  expect(profile.angle.at(-1)).toBeCloseTo(2 * Math.PI, 12);
  expect(profile.bz[0]).toBeGreaterThan(0);
  expect(profile.bz[60]).toBeCloseTo(-profile.bz[0], 9);
});

test('the spectrum is even in height for B_z and odd for B_θ between two discs', () => {
  const reader = spectrumReader(stage().spectrum);
  const [up, down] = [reader.bz(0.12, 0.003), reader.bz(0.12, -0.003)];
  const [left, right] = [reader.bTheta(0.12, 0.003), reader.bTheta(0.12, -0.003)];
  up.forEach((b, h) => expect(down[h]).toBeCloseTo(b, 12));
  left.forEach((b, h) => expect(right[h]).toBeCloseTo(-b, 12));
});

test.each([
  ['facing-pair', 'none'],
  ['facing-pair', 'steel'],
  ['single', 'none'],
  ['single', 'steel'],
  ['single-with-return', 'none'],
  ['single-with-return', 'steel'],
] as const)('%s with %s behind: the spectrum is the direct sum in the copper within 0.5 % of the peak', (arrangement, kind) => {
  const here: DiscsSection = { ...discs, arrangement, backing: kind === 'steel' ? { kind, thickness: 0.008 } : { kind } };
  const { spectrum, peak } = fieldStage(block, 1.28, 1.05, here, region);
  const reader = spectrumReader(spectrum);
  const direct = fieldAt(block, 1.28, 1.05, here, 0.013);
  let worst = 0;
  for (const r of [0.106, 0.115, 0.127, 0.139, 0.149])
    for (const z of [-0.003, -0.001, 0, 0.002, 0.003])
      for (const electrical of [0.1, 0.6, 0.9, 1.3]) {
        const angle = electrical / 6;
        const bz = reader.bz(r, z).reduce((sum, b, h) => sum + b * Math.cos(spectrum.orders[h] * electrical), 0);
        worst = Math.max(worst, Math.abs(bz - direct(r * Math.cos(angle), r * Math.sin(angle), z)[2]));
      }
  expect(worst).toBeLessThan(0.005 * peak);
});

test('a plate too thin for its flux is a warning that says how thick it must be', () => {
  const thin = stage({ backing: { kind: 'steel', thickness: 0.003 } });
  const [caution] = thin.cautions;
  expect(caution).toMatchObject({ severity: 'warning', where: 'discs.backing.thickness' });
  expect(thin.saturation).toBeLessThan(0.9);
  const needed = Number(/A plate of ([\d.]+) mm/.exec(caution.message)![1]) / 1000;
  expect(stage({ backing: { kind: 'steel', thickness: needed + 1e-4 } }).cautions).toEqual([]);
});

test('without steel there is no plate and nothing saturates', () => {
  const result = stage({ backing: { kind: 'none' } });
  expect(result.plate).toBeUndefined();
  expect(result.saturation).toBe(1);
});

test('thin magnets of low coercivity lose strength on their discs', () => {
  const thin: MagnetShape = { ...block, axial: 0.003 };
  expect(stage({ backing: { kind: 'none' } }, thin, 600e3).cautions.map((c) => `${c.severity} ${c.where}`)).toContain(
    'danger magnets.intrinsicCoercivity',
  );
  expect(stage({}, block, 900e3).cautions).toEqual([]);
  expect(stage({}).demagnetizingField).toBeLessThan(stage({ backing: { kind: 'none' } }).demagnetizingField);
});

test('magnets that have lost everything yield a field of nothing, in numbers', () => {
  const result = fieldStage(block, 0, 1.05, discs, region);
  expect(result.peak).toBe(0);
  expect(result.spectrum.bz.every((b) => Math.abs(b) === 0)).toBe(true);
  expect(result.saturation).toBeCloseTo(1, 3);
});

test('copper of no height or no width is a region like another', () => {
  const flat = fieldStage(block, 1.28, 1.05, discs, { ...region, halfHeight: 0 });
  const line = fieldStage(block, 1.28, 1.05, discs, { ...region, innerRadius: 0.127, outerRadius: 0.127 });
  expect(flat.spectrum.heights).toEqual([0]);
  expect(line.spectrum.radii).toEqual([0.127]);
  expect(bzHarmonic(line.spectrum, 1, 0.127, 0) / line.fundamental).toBeCloseTo(1, 3);
});

test.each<[string, MagnetShape]>([
  ['block', block],
  ['sector', { kind: 'sector', innerRadius: 0.104, outerRadius: 0.15, span: 0.4, axial: 0.01 }],
])('at mid-plane the harmonics add up to the field of all magnets, 0.15 %% of its peak, %s', (_name, shape) => {
  const wooden: Partial<DiscsSection> = { backing: { kind: 'none' } };
  const { spectrum, peak } = stage(wooden, shape);
  const field = fieldAt(shape, 1.28, 1.05, { ...discs, ...wooden }, region.gapLength);
  const reader = spectrumReader(spectrum);
  for (let r = region.innerRadius; r <= region.outerRadius; r += 0.002)
    for (let e = 0; e < Math.PI / 2; e += 0.1) {
      const sum = reader.bz(r, 0).reduce((part, b, h) => part + b * Math.cos(spectrum.orders[h] * e), 0);
      expect(Math.abs(sum - field(r * Math.cos(e / 6), r * Math.sin(e / 6), 0)[2]) / peak).toBeLessThan(0.0015);
    }
});
