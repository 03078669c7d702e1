import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { turnLinkage } from '../../core/emf/linkage';
import { coilEmf, rms } from '../../core/emf/waveform';
import { directField, fieldSource } from '../../core/field/source';
import { gapSpectrum } from '../../core/field/spectrum';
import type { DiscsSection } from '../../core/field/section';
import type { MagnetShape } from '../../core/magnets/section';
import { layoutModel } from '../../core/winding/layouts';
import type { Layout } from '../../core/winding/section';
import { held } from './held';

// linkage.json: magpylib fields, own quadrature; error well below 1e-5. See linkage.source.md.
interface Harmonics {
  flux_linkage_harmonic_peak_Wb_signed_cos: number[];
  flux_linkage_fundamental_peak_Wb: number;
  emf_true_rms_V_per_turn: number;
  rpm: number;
}
interface SingleTurns {
  mean_turn_filament_midplane: Harmonics;
  innermost_turn_midplane_fundamental_Wb: number;
  outermost_turn_midplane_fundamental_Wb: number;
}
interface Case {
  name: string;
  inputs: Record<string, number | string>;
  outputs: Harmonics & Partial<SingleTurns> & { section_average?: Harmonics };
}
const cases = (JSON.parse(readFileSync(new URL('linkage.json', import.meta.url), 'utf8')) as { outputs: Case[] }).outputs;

interface Machine {
  shape: MagnetShape;
  remanence: number;
  poles: number;
  pitchRadius: number;
  gap: number;
}
const machines: Record<string, Machine> = {
  a: { shape: { kind: 'cylinder', diameter: 0.02, axial: 0.008 }, remanence: 1.22, poles: 16, pitchRadius: 0.064, gap: 0.012 },
  b: { shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 }, remanence: 1.28, poles: 12, pitchRadius: 0.127, gap: 0.013 },
  c: {
    shape: { kind: 'block', radial: 0.025, tangential: 0.012, axial: 0.006 },
    remanence: 1.28,
    poles: 16,
    pitchRadius: 0.07,
    gap: 0.009,
  },
};

/** Harmonics of the linkage: of the whole section, or of the single turn at an offset and mid-plane. */
function linkageOf(machine: Machine, steel: boolean, layout: Layout, thickness: number, single?: number): number[] {
  const discs: DiscsSection = {
    arrangement: 'facing-pair',
    poles: machine.poles,
    pitchRadius: machine.pitchRadius,
    backing: steel ? { kind: 'steel', thickness: 0.02 } : { kind: 'none' },
    runningClearance: 0.001,
  };
  const model = layoutModel(layout);
  const [innerRadius, outerRadius] = model.extent(layout);
  const source = fieldSource(machine.shape, machine.remanence, discs, machine.gap);
  const peak = directField(source)(machine.pitchRadius, 0, 0)[2];
  const spectrum = gapSpectrum(source, { innerRadius, outerRadius, halfHeight: thickness / 2 }, peak);
  const edgesAt = (offset: number) => model.fluxEdges(layout, machine.poles, single ?? offset);
  const copper = single === undefined ? thickness : 1e-9;
  return turnLinkage(spectrum, edgesAt, { legWidth: layout.legWidth, height: 0, thickness: copper });
}

interface Run {
  name: string;
  machine: Machine;
  steel: boolean;
  layout: Layout;
  thickness: number;
  expected: Harmonics;
  turns?: [offset: number, fundamental: number][];
}

const num = (value: number | string | undefined) => value as number;
const runs = cases
  .map((c): Run | undefined => {
    if (c.name === 'i_serpentine_bundle_4x5_mitred')
      return {
        name: c.name,
        machine: machines.a,
        steel: false,
        layout: { kind: 'serpentine', innerRadius: 0.052, outerRadius: 0.076, legWidth: 0.004, placement: 'stacked' },
        thickness: 0.005,
        expected: c.outputs,
      };
    if (!c.outputs.section_average) return undefined;
    const { hole_x_inner_m: inner, hole_x_outer_m: outer, hole_half_angle_deg: half } = c.inputs;
    const slope = Math.tan((num(half) * Math.PI) / 180);
    return {
      name: c.name,
      machine: machines[c.inputs.machine],
      steel: String(c.inputs.iron).startsWith('ideal'),
      layout: {
        kind: 'concentrated',
        coils: num(c.inputs.coils),
        holeInnerRadius: num(inner),
        holeOuterRadius: num(outer),
        holeInnerWidth: 2 * num(inner) * slope,
        holeOuterWidth: 2 * num(outer) * slope,
        legWidth: num(c.inputs.leg_width_m),
      },
      thickness: num(c.inputs.stator_thickness_m),
      expected: c.outputs.section_average,
      turns: [
        [0, num(c.outputs.innermost_turn_midplane_fundamental_Wb)],
        [num(c.inputs.leg_width_m) / 2, num(c.outputs.mean_turn_filament_midplane?.flux_linkage_fundamental_peak_Wb)],
        [num(c.inputs.leg_width_m), num(c.outputs.outermost_turn_midplane_fundamental_Wb)],
      ],
    };
  })
  .filter((run) => run !== undefined);

test('the table holds the cases this test knows', () => expect(runs.map((r) => r.name)).toHaveLength(7));

const holdFundamental = held('linkage, fundamental', 0.003);
const holdWave = held('linkage, RMS of the waveform', 0.005);
const holdTurn = held('single turns, fundamental', 0.003);

test.each(runs)('$name: fundamental within 0.3 %, waveform RMS within 0.5 %', ({ machine, steel, layout, thickness, expected }) => {
  const linkage = linkageOf(machine, steel, layout, thickness);
  const fundamental = expected.flux_linkage_fundamental_peak_Wb;
  holdFundamental(Math.abs(linkage[0] / fundamental - 1));
  const orders = linkage.map((_, h) => 2 * h + 1);
  const effective = rms(coilEmf(linkage, orders, machine.poles / 2, 0, 1)) * ((expected.rpm * 2 * Math.PI) / 60);
  holdWave(Math.abs(effective / expected.emf_true_rms_V_per_turn - 1));
});

test.each(runs.filter((run) => run.turns))('$name: innermost, middle and outermost turn within 0.3 %', (run) => {
  for (const [offset, expected] of run.turns ?? []) {
    const [fundamental] = linkageOf(run.machine, run.steel, run.layout, run.thickness, offset);
    holdTurn(Math.abs(fundamental / expected - 1));
  }
});
