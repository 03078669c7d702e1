import { describe, expect, test } from 'vitest';
import { unrolledFundamental } from '../../core/field/machine';
import { steelPlate } from '../../core/field/plate';
import { recoilFactor, type UnrolledMachine } from '../../core/field/recoil';
import type { DiscsSection } from '../../core/field/section';
import { directField, fieldSource } from '../../core/field/source';
import table from './field_iron.json';
import { held } from './held';

// Origin of the table and of the tolerances: field_iron.source.md.
const holdImages = held('images, share of the peak', 0.001);
const holdIdeal = held('fundamental between ideal plates', 1e-4);
const holdRecoil = held('recoil permeability, two dimensions, share of the field', 0.01);
const holdRecoilSolid = held('recoil permeability, three dimensions, share of the field', 0.01);
const holdSaturation = held('field with a plate that saturates', 0.03);
const holdPlate = held('flux density across the plate', 0.03);

const discsOf = (poles: number, pitchRadius: number, steel: boolean): DiscsSection => ({
  arrangement: 'facing-pair',
  poles,
  pitchRadius,
  backing: steel ? { kind: 'steel', thickness: 0.01 } : { kind: 'none' },
  runningClearance: 0.001,
});

describe.each(table.outputs.images_3D_ideal_iron)(
  'machine $name between ideal plates',
  ({ inputs, z_m, r_m, angle_rad, Bz_T, Bradial_T, Btangential_T }) => {
    const [radial, tangential, axial] = inputs.dims_m as [number, number, number];
    const discs = discsOf(inputs.magnets_per_disc, inputs.pitch_radius_m, true);
    const field = directField(fieldSource({ kind: 'block', radial, tangential, axial }, inputs.J_T, discs, inputs.gap_face_to_face_m));

    test('the image stack agrees at every point within 0.1 % of the peak', () => {
      const peak = Math.max(...Bz_T.flat(2).map(Math.abs));
      let worst = 0;
      z_m.forEach((z, iz) =>
        r_m.forEach((r, ir) =>
          angle_rad.forEach((angle, ia) => {
            const [c, s] = [Math.cos(angle), Math.sin(angle)];
            const [bx, by, bz] = field(r * c, r * s, z);
            worst = Math.max(
              worst,
              Math.abs(bz - Bz_T[iz][ir][ia]),
              Math.abs(bx * c + by * s - Bradial_T[iz][ir][ia]),
              Math.abs(by * c - bx * s - Btangential_T[iz][ir][ia]),
            );
          }),
        ),
      );
      holdImages(worst / peak);
    });
  },
);

const machines = Object.entries(table.outputs.finite_element_2D.machines).map(([name, { inputs, ...cases }]) => {
  const machine = (steel: boolean, recoilPermeability: number): UnrolledMachine => ({
    arrangement: 'facing-pair',
    steel,
    polePitch: inputs.tau,
    magnetWidth: inputs.wm,
    magnetHeight: inputs.h,
    gapLength: inputs.g,
    recoilPermeability,
  });
  return { name, machine, gap: inputs.g, remanence: inputs.Br, cases };
});

describe.each(machines)('machine $name unrolled', ({ name, machine, gap, remanence, cases }) => {
  test('the fundamental between ideal plates is the finite elements’ within 0.01 %', () => {
    const fundamental = unrolledFundamental(machine(true, 1), gap / 2) * remanence;
    holdIdeal(Math.abs(fundamental / cases['ideal_iron_mur1.00'].Bz_fundamental_T - 1));
  });

  test('recoil permeability takes what finite elements say, within 1 % of the field', () => {
    const steel = cases['ideal_iron_mur1.05'].Bz_fundamental_T / cases['ideal_iron_mur1.00'].Bz_fundamental_T;
    const air = cases['no_iron_mur1.05'].Bz_fundamental_T / cases['no_iron_mur1.00'].Bz_fundamental_T;
    holdRecoil(Math.abs(recoilFactor(machine(true, 1.05)) - steel));
    holdRecoil(Math.abs(recoilFactor(machine(false, 1.05)) - air));
  });

  test('recoil permeability takes what the three-dimensional solution says, within 1 % of the field', () => {
    const rows = table.outputs.mu_r_effect_3D.filter((row) => row.machine === name);
    expect(rows.length).toBeGreaterThan(0);
    for (const { iron, mu_r, results } of rows) {
      const factor = recoilFactor(machine(iron !== 'none', mu_r));
      for (const { fundamental_change_pct, centre_change_pct } of results) {
        holdRecoilSolid(Math.abs(factor - 1 - fundamental_change_pct / 100));
        holdRecoilSolid(Math.abs(factor - 1 - centre_change_pct / 100));
      }
    }
  });

  const plates = Object.entries(cases).flatMap(([key, values]) => {
    const [, thickness, recoil] = /^BH_plate(\d+)mm_mur([\d.]+)$/.exec(key) ?? [];
    if (!thickness || !recoil || !('plate_B_mean_between_poles_T' in values)) return [];
    const expected = { fundamental: values.Bz_fundamental_T, fluxDensity: values.plate_B_mean_between_poles_T };
    return [{ key, thickness: Number(thickness) / 1000, recoil: Number(recoil), expected }];
  });

  test.each(plates)(
    '$key: a plate that saturates weakens the field as finite elements say, within 3 %',
    ({ thickness, recoil, expected }) => {
      const { saturation } = steelPlate(machine(true, recoil), remanence, thickness);
      const fundamental = unrolledFundamental(machine(true, recoil), gap / 2) * remanence * saturation;
      holdSaturation(Math.abs(fundamental / expected.fundamental - 1));
    },
  );

  test.each(plates.filter(({ expected }) => expected.fluxDensity < 1.9))(
    '$key: the flux density across the plate is the finite elements’ within 3 %',
    ({ thickness, recoil, expected }) => {
      const { fluxDensity } = steelPlate(machine(true, recoil), remanence, thickness);
      holdPlate(Math.abs(fluxDensity / expected.fluxDensity - 1));
    },
  );
});
