import { describe, expect, test } from 'vitest';
import { type SpectrumReader, spectrumReader } from '../../../core/field/harmonics';
import { directField, fieldSource } from '../../../core/field/source';
import { gapSpectrum } from '../../../core/field/spectrum';
import { bearingTorque } from '../../../core/heat/bearing';
import { eddyCoefficient, meanSquareField } from '../../../core/heat/eddy';
import { gaussLegendre } from '../../../core/numeric/integrate';

describe('eddy loss in round wire', () => {
  test('1 mm copper in 0.5 T at 50 Hz loses 44.8 kW/m³', () => {
    // ω² B² d² / (32 ρ) = (314.16 · 0.5 · 1e-3)² / (32 · 1.72e-8) = 0.024674 / 5.504e-7 = 44 829
    const omega = 2 * Math.PI * 50;
    expect(eddyCoefficient(0.5 ** 2, 1, 1e-3, 1.72e-8, 1) * omega ** 2).toBeCloseTo(44829, -1);
  });

  test('agrees with the field E = ωBx summed over the wire’s section', () => {
    const [d, rho, b, omega, n] = [2e-3, 1.8e-8, 0.3, 400, 800];
    let sum = 0;
    let inside = 0;
    for (let i = 0; i < n; i++)
      for (let k = 0; k < n; k++) {
        const x = ((i + 0.5) / n - 0.5) * d;
        const y = ((k + 0.5) / n - 0.5) * d;
        if (x * x + y * y > (d / 2) ** 2) continue;
        inside++;
        sum += (omega * b * x) ** 2 / (2 * rho);
      }
    expect(eddyCoefficient(b ** 2, 1, d, rho, 1) * omega ** 2).toBeCloseTo(sum / inside, -2);
  });

  test('goes with pole pairs and strand diameter squared, and with the volume', () => {
    const one = eddyCoefficient(0.1, 1, 1e-3, 2e-8, 1e-4);
    expect(eddyCoefficient(0.1, 8, 1e-3, 2e-8, 1e-4) / one).toBeCloseTo(64, 10);
    expect(eddyCoefficient(0.1, 1, 2e-3, 2e-8, 1e-4) / one).toBeCloseTo(4, 10);
    expect(eddyCoefficient(0.1, 1, 1e-3, 2e-8, 3e-4) / one).toBeCloseTo(3, 10);
  });

  test('the same copper in four strands of half the diameter loses a quarter', () => {
    expect(eddyCoefficient(0.1, 6, 0.8e-3, 2e-8, 1e-4)).toBeCloseTo(eddyCoefficient(0.1, 6, 1.6e-3, 2e-8, 1e-4) / 4, 12);
  });
});

const reader = (bz: (r: number, z: number) => number[], bTheta: (r: number, z: number) => number[]): SpectrumReader => ({
  bz: (r, z) => Float64Array.from(bz(r, z)),
  bTheta: (r, z) => Float64Array.from(bTheta(r, z)),
});

describe('mean square of the field over the copper', () => {
  test('counts a harmonic by the square of its order, both components', () => {
    // 1² (0.5² + 0.1²) + 3² (0.05² + 0.02²) = 0.26 + 9 · 0.0029 = 0.2861
    const uniform = reader(
      () => [0.5, 0.05],
      () => [0.1, 0.02],
    );
    expect(meanSquareField(uniform, [1, 3], 0.1, 0.15, 0.005)).toBeCloseTo(0.2861, 10);
  });

  test('is a mean over radius and height', () => {
    // B = r over 1 … 2: mean of r² = 7/3. B = z over ±1: mean of z² = 1/3.
    const none = () => [0];
    expect(
      meanSquareField(
        reader((r) => [r], none),
        [1],
        1,
        2,
        1,
      ),
    ).toBeCloseTo(7 / 3, 10);
    expect(
      meanSquareField(
        reader((_r, z) => [z], none),
        [1],
        1,
        2,
        1,
      ),
    ).toBeCloseTo(1 / 3, 10);
  });
});

describe('mean square of the field through its harmonics', () => {
  const shape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 } as const;
  const ORDERS = 80;

  /** Σ n²·B_n² at a point, the field of all magnets and images taken round a quarter of the period. */
  function byHand(field: ReturnType<typeof directField>, polePairs: number, r: number, z: number): number {
    const around = Array.from({ length: ORDERS }, (_, j) => {
      const e = ((j + 0.5) * Math.PI) / (2 * ORDERS);
      const [c, s] = [Math.cos(e / polePairs), Math.sin(e / polePairs)];
      const [bx, by, bz] = field(r * c, r * s, z);
      return { e, bz, bTheta: by * c - bx * s };
    });
    return Array.from({ length: ORDERS }, (_, h) => 2 * h + 1).reduce((sum, n) => {
      const even = around.reduce((part, { e, bz }) => part + bz * Math.cos(n * e), 0);
      const odd = around.reduce((part, { e, bTheta }) => part + bTheta * Math.sin(n * e), 0);
      return sum + ((2 * n) / ORDERS) ** 2 * (even ** 2 + odd ** 2);
    }, 0);
  }

  test.each([
    ['facing-pair', 'none', 0.7, 0.003],
    ['facing-pair', 'steel', 0.3, 0.01],
    ['single', 'none', 0.3, 0.01],
  ] as const)('is the direct sum’s: %s, backing %s, %f mm of air before 0.5 mm of skin', (arrangement, backing, air, tolerance) => {
    const discs = {
      arrangement,
      poles: 12,
      pitchRadius: 0.15,
      backing: backing === 'steel' ? { kind: backing, thickness: 0.008 } : { kind: backing },
      runningClearance: air / 1000,
    };
    const region = { innerRadius: 0.115, outerRadius: 0.185, halfHeight: 0.006 };
    const source = fieldSource(shape, 1.25, discs, 0.012 + 2 * (air + 0.5) * 1e-3);
    const field = directField(source);
    const spectrum = gapSpectrum(source, region, field(discs.pitchRadius, 0, 0)[2]);
    const across = gaussLegendre(8, region.innerRadius, region.outerRadius);
    const through = gaussLegendre(3, -region.halfHeight, region.halfHeight);
    const expected = across.nodes.reduce(
      (sum, r, i) => sum + through.nodes.reduce((s, z, k) => s + across.weights[i] * through.weights[k] * byHand(field, 6, r, z), 0),
      0,
    );
    const area = (region.outerRadius - region.innerRadius) * 2 * region.halfHeight;
    const mean = meanSquareField(spectrumReader(spectrum), spectrum.orders, region.innerRadius, region.outerRadius, region.halfHeight);
    expect(Math.abs((mean * area) / expected - 1)).toBeLessThan(tolerance);
  });
});

test('bearings of a wheel of 2 m drag with 0.04 N·m, under 2 W at 300 rpm', () => {
  expect(bearingTorque(2)).toBeCloseTo(0.04, 12);
  expect(bearingTorque(2) * ((300 * 2 * Math.PI) / 60)).toBeLessThan(2);
});
