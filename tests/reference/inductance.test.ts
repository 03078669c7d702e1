import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { mutualInductance, ownDistance, passingDistance, selfInductance, type Bundle } from '../../core/emf/bundle';
import { filament, neumann } from '../../core/emf/inductance';
import { layoutModel } from '../../core/winding/layouts';
import type { Layout } from '../../core/winding/section';
import type { PathPiece } from '../../core/winding/stage';
import { held } from './held';

// inductance.json: Neumann filaments in numpy, extrapolated; error 4e-5 to 2e-4. See inductance.source.md.
interface Case {
  name: string;
  inputs: { coils: number; leg_width_m: number; thickness_m: number; hole_polygon_m: [number, number][] };
  outputs: { self_inductance_per_turn2_H: number; mutual_1_sequence_per_turn2_H: number[]; mutual_2_sequence_per_turn2_H: number[] };
}
const cases = (JSON.parse(readFileSync(new URL('inductance.json', import.meta.url), 'utf8')) as { outputs: Case[] }).outputs;

const bundle = (path: Bundle['path'], symmetry: number, legWidth: number, thickness: number): Bundle => ({
  path,
  symmetry,
  legWidth,
  thickness,
  passing: passingDistance(legWidth, thickness),
});

function bundleOf({ inputs }: Case): Bundle {
  const [[inner, innerY], [outer, outerY]] = inputs.hole_polygon_m as [[number, number], [number, number]];
  const layout: Layout = {
    kind: 'concentrated',
    coils: inputs.coils,
    holeInnerRadius: inner,
    holeOuterRadius: outer,
    holeInnerWidth: -2 * innerY,
    holeOuterWidth: -2 * outerY,
    legWidth: inputs.leg_width_m,
  };
  const path = (offset: number) => layoutModel(layout).turnPath(layout, 12, offset, 'mitred');
  return bundle(path, 1, layout.legWidth, inputs.thickness_m);
}

const holdSelf = held('self-inductance', 0.02);
const holdMutual = held('mutual inductance', 0.05);
const holdBrooks = held('Brooks coil, Grover', 0.005);
const holdNagaoka = held('circular coil of one layer, Nagaoka', 0.01);
const holdMaxwell = held('coaxial circles, Maxwell', 0.003);

test.each(cases)('$name: self-inductance within 2 %', (of) => {
  holdSelf(Math.abs(selfInductance(bundleOf(of)) / of.outputs.self_inductance_per_turn2_H - 1));
});

test.each(cases)('$name: mutual inductance of first and second neighbour within 5 %', (of) => {
  const pitch = (2 * Math.PI) / of.inputs.coils;
  const tables = [of.outputs.mutual_1_sequence_per_turn2_H, of.outputs.mutual_2_sequence_per_turn2_H];
  tables.forEach((sequence, k) => {
    const finest = sequence[sequence.length - 1];
    holdMutual(Math.abs(mutualInductance(bundleOf(of), (k + 1) * pitch, 0) / finest - 1));
  });
});

const circle = (radius: number, pieces: number): PathPiece[] =>
  Array.from({ length: pieces }, (_, k) => ({
    kind: 'arc',
    centre: [0, 0],
    radius,
    start: (2 * Math.PI * k) / pieces,
    sweep: (2 * Math.PI) / pieces,
  }));

test('the Brooks coil has the inductance of the handbook within 0.5 %', () => {
  // Grover 1946, ch. 13: L = 1.6994e-6 a N², inner radius and both sides of the section c = 20 mm, mean radius a = 30 mm.
  const side = 0.02;
  const brooks = bundle((offset) => circle(side + offset, 60), 60, side, side);
  holdBrooks(Math.abs(selfInductance(brooks) / (1.6994e-6 * 0.03) - 1));
});

test.each([
  // Nagaoka 1909: L = K μ₀ π a² N² / b, K by 2a / b.
  { flatness: 10, nagaoka: 0.203315 },
  { flatness: 5, nagaoka: 0.319825 },
  { flatness: 2.5, nagaoka: 0.471865 },
  { flatness: 2, nagaoka: 0.52551 },
])('a circular coil of one layer, $flatness times as wide as long, has the inductance of the table within 1 %', ({ flatness, nagaoka }) => {
  const a = 0.03;
  const b = (2 * a) / flatness;
  const layer = bundle(() => circle(a, 60), 60, 1e-6, b);
  holdNagaoka(Math.abs(selfInductance(layer) / ((nagaoka * 4e-7 * Math.PI ** 2 * a ** 2) / b) - 1));
});

test.each([
  // Maxwell's elliptic integrals, quoted in inductance.json under "validation".
  { a: 0.05, b: 0.05, lift: 0.005, expected: 1.501438151850739e-7 },
  { a: 0.05, b: 0.04, lift: 0.01, expected: 7.220064021902715e-8 },
  { a: 0.06, b: 0.03, lift: 0, expected: 3.2917076840843897e-8 },
])('coaxial circles of $a and $b m, $lift m apart, agree with Maxwell within 0.3 %', ({ a, b, lift, expected }) => {
  const [one, other] = [filament(circle(a, 90), 90, 0), filament(circle(b, 90), 90, 0)];
  holdMaxwell(Math.abs(neumann(one, other, lift) / expected - 1));
});

test('a long straight bar stands at 0.2235 of its sides from itself', () => {
  // Maxwell's exact value for a square, ln(R/a) = −0.80509: Grover 1946, table 2 (from memory): R = 0.44705 a.
  expect(ownDistance(1, 1)).toBeCloseTo(0.44705, 4);
});
