import type { GapSpectrum } from '../../../core/field/stage';
import { chebyshevNodes } from '../../../core/numeric/interpolate';
import type { Layout, WindingSection } from '../../../core/winding/section';

/** A gap field made up for the tests: smooth in radius and height, orders 1 to 9, falling off towards both rims. [T] */
export function harmonicAt(order: number, r: number, z: number): number {
  const inside = (r - 0.127) / 0.06;
  return ((0.6 * (1 - inside ** 2 / 2)) / order ** 2) * Math.cosh((2 * order * z) / 0.127) * (order % 4 === 3 ? -1 : 1);
}

export function spectrum(poles: number): GapSpectrum {
  const orders = [1, 3, 5, 7, 9];
  const radii = chebyshevNodes(12, 0.07, 0.19);
  const heights = chebyshevNodes(5, -0.03, 0.03);
  const bz = Float64Array.from(orders.flatMap((n) => heights.flatMap((z) => radii.map((r) => harmonicAt(n, r, z)))));
  return { poles, orders, radii, heights, bz, bTheta: bz };
}

export const coils = (count: number): Extract<Layout, { kind: 'concentrated' }> => ({
  kind: 'concentrated',
  coils: count,
  holeInnerRadius: 0.104,
  holeOuterRadius: 0.15,
  holeInnerWidth: 0.0255,
  holeOuterWidth: 0.0368,
  legWidth: 0.012,
});

export const rings = (placement: 'stacked' | 'interleaved'): Layout => ({
  kind: 'serpentine',
  innerRadius: 0.104,
  outerRadius: 0.15,
  legWidth: 0.01,
  placement,
});

export const winding = (layout: Layout, changes: Partial<WindingSection> = {}): WindingSection => ({
  layout,
  thickness: 0.01,
  skin: 0.0005,
  phases: 3,
  turns: 60,
  connection: 'star',
  parallelPaths: 1,
  leadLength: 1,
  ...changes,
});
