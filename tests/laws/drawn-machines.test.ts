/*
 * Laws of field and EMF for magnets, discs and coils drawn at random
 *   harmonics  the series is the direct sum over all magnets and images
 *   turns      twice the turns, twice the EMF
 *   mirror     a coil mirrored in the radius it lies on, wound on round its mirrored path, gives the opposite
 *   rotation   a machine turned as a whole has every harmonic later by its order times the angle, and as strong
 *   gap        the wider the gap, the weaker the EMF
 *   pitch      legs two pole pitches apart link nothing
 *   limits     every machine that the design file allows yields finite numbers
 */
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { gapOf } from '../../core/chain/gap-of';
import { solve } from '../../core/chain/solve';
import { blankDesign } from '../../core/design/form';
import { readDesign } from '../../core/design/parse';
import type { Design } from '../../core/design/schema';
import { turnLinkage } from '../../core/emf/linkage';
import { emfStage, linkageShape, NO_STEEL } from '../../core/emf/stage';
import { coilEmf, harmonicPeak, rms } from '../../core/emf/waveform';
import { spectrumReader } from '../../core/field/harmonics';
import { fieldAt } from '../../core/field/machine';
import type { DiscsSection } from '../../core/field/section';
import { fieldStage, type GapSpectrum } from '../../core/field/stage';
import type { MagnetShape } from '../../core/magnets/section';
import type { Edge } from '../../core/winding/layouts';
import type { Layout, WindingSection } from '../../core/winding/section';
import { windingStage } from '../../core/winding/stage';
import { seeded, size } from '../electron/size';

/** Whole machines take their time on a busy computer. */
vi.setConfig({ testTimeout: 120_000 });

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** As many draws between 1 and 2 mm as between 100 and 200. */
const sizes = (min: number, max: number) => between(Math.log(min), Math.log(max)).map((x) => Math.min(max, Math.max(min, Math.exp(x))));
const whole = (min: number, max: number) => sizes(min, max).map(Math.round);

/** Machines that somebody could build: magnets beside each other on their discs, coils over the magnets. Shares are of the pole pitch or the pitch radius. */
const built = fc
  .record({
    kind: fc.constantFrom('block', 'cylinder', 'sector'),
    arrangement: fc.constantFrom<DiscsSection['arrangement']>('facing-pair', 'single', 'single-with-return'),
    steel: fc.boolean(),
    polePairs: fc.integer({ min: 3, max: 12 }),
    pitchRadius: between(0.05, 0.3),
    cover: between(0.4, 0.75),
    long: between(0.15, 0.35),
    high: between(0.1, 0.5),
    thickness: between(0.1, 0.4),
    clearance: between(0.03, 0.1),
    leg: between(0.15, 0.3),
    hole: between(0.35, 0.6),
    remanence: between(0.3, 1.4),
    ring: fc.boolean(),
  })
  .map((m) => {
    const poles = 2 * m.polePairs;
    const pitch = (2 * Math.PI * m.pitchRadius) / poles;
    const length = m.long * m.pitchRadius;
    const [inner, outer] = [m.pitchRadius - length / 2, m.pitchRadius + length / 2];
    const axial = m.high * pitch;
    const width = Math.min(m.cover * pitch, (2 * Math.PI * 0.95 * inner) / poles);
    const shapes: Record<string, MagnetShape> = {
      block: { kind: 'block', radial: length, tangential: width, axial },
      cylinder: { kind: 'cylinder', diameter: m.cover * pitch, axial },
      sector: { kind: 'sector', innerRadius: inner, outerRadius: outer, span: (2 * Math.PI * m.cover) / poles, axial },
    };
    const layout: Layout = m.ring
      ? { kind: 'serpentine', innerRadius: inner, outerRadius: outer, legWidth: m.leg * pitch, placement: 'interleaved' }
      : {
          kind: 'concentrated',
          coils: poles % 4 === 0 ? (3 * poles) / 4 : 3,
          holeInnerRadius: inner,
          holeOuterRadius: outer,
          holeInnerWidth: (m.hole * pitch * inner) / m.pitchRadius,
          holeOuterWidth: (m.hole * pitch * outer) / m.pitchRadius,
          legWidth: Math.min(m.leg * pitch, 0.5 * inner),
        };
    const discs: DiscsSection = {
      arrangement: m.arrangement,
      poles,
      pitchRadius: m.pitchRadius,
      backing: m.steel ? { kind: 'steel', thickness: 0.3 * pitch } : { kind: 'none' },
      runningClearance: m.clearance * pitch,
    };
    const winding: WindingSection = {
      layout,
      thickness: m.thickness * pitch,
      skin: 0,
      phases: 3,
      turns: 20,
      connection: 'star',
      parallelPaths: 1,
      leadLength: 1,
    };
    return { shape: shapes[m.kind], remanence: m.remanence, discs, winding };
  });
type Machine = typeof built extends fc.Arbitrary<infer M> ? M : never;

function parts({ shape, remanence, discs, winding }: Machine, clearance = discs.runningClearance) {
  const placed = windingStage(winding, discs.poles);
  const at = { ...discs, runningClearance: clearance };
  const region = {
    gapLength: gapOf({ discs: at, winding: winding as Design['winding'] }),
    innerRadius: placed.innerRadius,
    outerRadius: placed.outerRadius,
    halfHeight: placed.copperHeight / 2,
  };
  return { placed, spectrum: fieldStage(shape, remanence, 1.05, at, region).spectrum };
}

test('the harmonics are the direct sum over all magnets', () => {
  fc.assert(
    fc.property(built, fc.integer({ min: 1, max: 1e6 }), (machine, seed) => {
      const { shape, remanence, discs, winding } = machine;
      const { spectrum } = parts(machine);
      const gap = gapOf({ discs, winding: winding as Design['winding'] });
      const direct = fieldAt(shape, remanence, 1.05, discs, gap);
      const reader = spectrumReader(spectrum);
      const { radii, heights, orders, poles } = spectrum;
      const random = seeded(seed);
      const peak = Math.abs(direct(discs.pitchRadius, 0, 0)[2]);
      const offs = Array.from({ length: 40 }, () => {
        const [r, z] = [radii, heights].map((nodes) => nodes[0] + random() * (nodes[nodes.length - 1] - nodes[0]));
        const electrical = 2 * Math.PI * random();
        const angle = (2 * electrical) / poles;
        const series = reader.bz(r, z).reduce((sum, b, h) => sum + b * Math.cos(orders[h] * electrical), 0);
        return Math.abs(series - direct(r * Math.cos(angle), r * Math.sin(angle), z)[2]) / peak;
      });
      expect(Math.max(...offs)).toBeLessThan(0.004);
      expect(Math.hypot(...offs) / Math.sqrt(offs.length)).toBeLessThan(0.001);
    }),
    { numRuns: size(20, 500), seed: 10 },
  );
});

const section = ({ winding }: Machine) => ({ legWidth: winding.layout.legWidth, height: 0, thickness: winding.thickness });

test('twice the turns give twice the EMF, harmonic by harmonic', () => {
  fc.assert(
    fc.property(built, fc.integer({ min: 1, max: 2500 }), (machine, turns) => {
      const { placed, spectrum } = parts(machine);
      const [one, two] = [turns, 2 * turns].map((n) => emfStage({ ...machine.winding, turns: n }, placed, spectrum, NO_STEEL));
      two.phaseEmf.forEach((emf, j) =>
        emf.cos.forEach((c, h) => {
          const scale = 1e-12 * harmonicPeak(one.phaseEmf[j], 0);
          expect(Math.abs(c - 2 * one.phaseEmf[j].cos[h])).toBeLessThanOrEqual(scale);
          expect(Math.abs(emf.sin[h] - 2 * one.phaseEmf[j].sin[h])).toBeLessThanOrEqual(scale);
        }),
      );
      expect(two.lineRmsPer1000rpm / one.lineRmsPer1000rpm).toBeCloseTo(2, 10);
    }),
    { numRuns: 8, seed: 11 },
  );
});

test('a coil mirrored gives the opposite', () => {
  fc.assert(
    fc.property(built, between(0.1, 1.2), between(0.1, 1.2), (machine, before, after) => {
      const { spectrum } = parts(machine);
      const pitch = (2 * Math.PI) / machine.discs.poles;
      const path = polygon(spectrum, -before * pitch, after * pitch);
      const mirrored = path.map(
        ([from, to]): Edge => [
          [from[0], -from[1]],
          [to[0], -to[1]],
        ],
      );
      const there = turnLinkage(spectrum, () => ({ edges: path, repeat: 1 }), section(machine));
      const back = turnLinkage(spectrum, () => ({ edges: mirrored, repeat: 1 }), section(machine));
      back.forEach((l, h) => expect(Math.abs(l + there[h])).toBeLessThanOrEqual(1e-12 * Math.abs(there[0])));
    }),
    { numRuns: 15, seed: 12 },
  );
});

test('turned as a whole, a machine has the same EMF, later', () => {
  fc.assert(
    fc.property(built, between(-7, 7), (machine, turn) => {
      const { placed, spectrum } = parts(machine);
      const { linkage, orders, polePairs } = linkageShape(machine.winding, placed, spectrum);
      placed.coils.forEach(({ angle }, i) => {
        const here = coilEmf(linkage[i], orders, polePairs, angle, 1);
        const there = coilEmf(linkage[i], orders, polePairs, angle + turn, 1);
        expect(Math.abs(rms(there) / rms(here) - 1)).toBeLessThan(1e-12);
        orders.forEach((n, h) => {
          const [c, s] = [Math.cos(n * polePairs * turn), Math.sin(n * polePairs * turn)];
          const off = Math.hypot(there.cos[h] - (here.cos[h] * c - here.sin[h] * s), there.sin[h] - (here.cos[h] * s + here.sin[h] * c));
          expect(off).toBeLessThan(1e-9 * harmonicPeak(here, 0));
        });
      });
    }),
    { numRuns: 15, seed: 13 },
  );
});

test('the wider the gap, the weaker the EMF', () => {
  fc.assert(
    fc.property(built, between(1.02, 3), (machine, more) => {
      const wide = machine.discs.runningClearance + (more - 1) * 0.1 * machine.shape.axial;
      const [near, far] = [parts(machine), parts(machine, wide)].map(({ placed, spectrum }) =>
        emfStage(machine.winding, placed, spectrum, NO_STEEL),
      );
      expect(far.peakPerRadPerSecond).toBeLessThan(near.peakPerRadPerSecond);
      expect(far.phaseRmsPer1000rpm).toBeLessThan(near.phaseRmsPer1000rpm);
    }),
    { numRuns: 25, seed: 14 },
  );
});

/** A loop of two radial legs as long as the spectrum reaches, at two angles; what runs at constant radius carries no term. */
function polygon({ radii }: GapSpectrum, from: number, to: number): Edge[] {
  const at = (r: number, angle: number): [number, number] => [r * Math.cos(angle), r * Math.sin(angle)];
  const [inner, outer] = [radii[0], radii[radii.length - 1]];
  return [
    [at(inner, from), at(outer, from)],
    [at(outer, to), at(inner, to)],
  ];
}

test('a coil two pole pitches wide gives none', () => {
  fc.assert(
    fc.property(built, between(-3, 3), (machine, middle) => {
      const { spectrum } = parts(machine);
      const pitch = (2 * Math.PI) / machine.discs.poles;
      const linked = (from: number, to: number) =>
        turnLinkage(spectrum, () => ({ edges: polygon(spectrum, from, to), repeat: 1 }), section(machine));
      const full = linked(-pitch / 2, pitch / 2)[0];
      for (const none of linked((middle - 1) * pitch, (middle + 1) * pitch)) expect(Math.abs(none)).toBeLessThan(1e-10 * full);
    }),
    { numRuns: 15, seed: 15 },
  );
});

const blank = blankDesign();
const shapesAtLarge: fc.Arbitrary<MagnetShape> = fc.oneof(
  fc.record({
    kind: fc.constant('block' as const),
    radial: sizes(0.5e-3, 0.3),
    tangential: sizes(0.5e-3, 0.3),
    axial: sizes(0.5e-3, 0.3),
  }),
  fc.record({ kind: fc.constant('cylinder' as const), diameter: sizes(0.5e-3, 0.3), axial: sizes(0.5e-3, 0.3) }),
  fc.record({
    kind: fc.constant('sector' as const),
    innerRadius: sizes(2e-3, 1.5),
    outerRadius: sizes(3e-3, 1.6),
    span: sizes(0.01, 3.1),
    axial: sizes(0.5e-3, 0.3),
  }),
);
const layoutsAtLarge: fc.Arbitrary<Layout> = fc.oneof(
  fc.record({
    kind: fc.constant('serpentine' as const),
    innerRadius: sizes(2e-3, 1.6),
    outerRadius: sizes(2e-3, 1.6),
    legWidth: sizes(0.2e-3, 0.5),
    placement: fc.constantFrom('stacked' as const, 'interleaved' as const),
  }),
  fc.record({
    kind: fc.constant('concentrated' as const),
    coils: whole(1, 120),
    holeInnerRadius: sizes(2e-3, 1.6),
    holeOuterRadius: sizes(2e-3, 1.6),
    holeInnerWidth: sizes(0.2e-3, 0.5),
    holeOuterWidth: sizes(0.2e-3, 0.5),
    legWidth: sizes(0.2e-3, 0.5),
  }),
);
/** Anything within the ranges of the design file, that it does not refuse. */
const allowed = fc
  .record({
    shape: shapesAtLarge,
    remanence: between(0.05, 1.6),
    recoilPermeability: between(1, 2),
    arrangement: fc.constantFrom<DiscsSection['arrangement']>('facing-pair', 'single', 'single-with-return'),
    poles: whole(2, 40).map((pairs) => 2 * pairs),
    pitchRadius: sizes(0.01, 1.5),
    plate: fc.option(sizes(0.5e-3, 0.05)),
    runningClearance: sizes(0.1e-3, 0.02),
    misalignment: fc.option(between(0, 0.8)),
    layout: layoutsAtLarge,
    thickness: sizes(0.2e-3, 0.06),
    skin: between(0, 0.01),
    phases: fc.integer({ min: 1, max: 6 }),
    turns: whole(1, 5000),
    connection: fc.constantFrom<WindingSection['connection']>('star', 'delta', 'separate'),
    parallelPaths: whole(1, 40),
  })
  .map(({ shape, remanence, recoilPermeability, arrangement, poles, pitchRadius, plate, runningClearance, misalignment, ...winding }) => ({
    ...blank,
    magnets: { ...blank.magnets, shape, remanence, recoilPermeability },
    discs: {
      arrangement,
      poles,
      pitchRadius,
      backing: plate === null ? { kind: 'none' as const } : { kind: 'steel' as const, thickness: plate },
      runningClearance,
      ...(misalignment !== null && { misalignment }),
    },
    winding: { ...blank.winding, ...winding },
  }))
  .filter((design) => readDesign(design).ok);

function unfinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => unfinite(child, `${path}.${key}`));
}

test('every machine that the design file allows yields finite numbers', () => {
  fc.assert(
    fc.property(allowed, (design) => {
      expect(unfinite(solve(design))).toEqual([]);
    }),
    { numRuns: size(12, 1000), seed: 16 },
  );
});
