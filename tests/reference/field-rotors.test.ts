import { describe, test } from 'vitest';
import { spectrumReader } from '../../core/field/harmonics';
import type { DiscsSection } from '../../core/field/section';
import { directField, fieldSource } from '../../core/field/source';
import { gapSpectrum } from '../../core/field/spectrum';
import type { MagnetShape } from '../../core/magnets/section';
import table from './field_rotors.json';
import { held } from './held';

// Origin of the table and of the tolerances: field_rotors.source.md.
const machines = table.outputs.map((row) => {
  const { dims_m, magnets_per_disc, pitch_radius_m, J_T, discs, shape: kind } = row.inputs;
  const shape: MagnetShape =
    kind === 'cylinder'
      ? { kind, diameter: dims_m[0], axial: dims_m[1] }
      : { kind: 'block', radial: dims_m[0], tangential: dims_m[1], axial: dims_m[2] };
  const section: DiscsSection = {
    arrangement: discs === 2 ? 'facing-pair' : 'single',
    poles: magnets_per_disc,
    pitchRadius: pitch_radius_m,
    backing: { kind: 'none' },
    runningClearance: 0.001,
  };
  // Machine d has one disc and its z counts from the magnets' faces: a gap of twice the middle height puts our z = 0 there.
  const middle = (Math.min(...row.z_m) + Math.max(...row.z_m)) / 2;
  const gap = discs === 2 ? row.inputs.gap_face_to_face_m! : 2 * middle;
  return {
    name: row.name,
    row,
    gap,
    heights: discs === 2 ? row.z_m : row.z_m.map((z) => z - middle),
    source: fieldSource(shape, J_T, section, gap),
  };
});

const holdDirect = held('machine, direct sum, share of the peak', 0.001);
const holdHarmonics = held('machine, harmonics, share of the peak', 0.002);

describe.each(machines)('machine $name', ({ row, heights, source }) => {
  const peak = Math.max(...row.Bz_T.flat(2).map(Math.abs));

  test('the direct sum agrees at every point within 0.1 % of the peak', () => {
    const field = directField(source);
    let worst = 0;
    heights.forEach((z, iz) =>
      row.r_m.forEach((r, ir) =>
        row.angle_rad.forEach((angle, ia) => {
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          const [bx, by, bz] = field(r * c, r * s, z);
          worst = Math.max(
            worst,
            Math.abs(bz - row.Bz_T[iz][ir][ia]),
            Math.abs(bx * c + by * s - row.Bradial_T[iz][ir][ia]),
            Math.abs(by * c - bx * s - row.Btangential_T[iz][ir][ia]),
          );
        }),
      ),
    );
    holdDirect(worst / peak);
  });

  test('the harmonics agree at every point within 0.2 % of the peak', () => {
    const spectrum = gapSpectrum(source, { innerRadius: row.r_m[0], outerRadius: row.r_m.at(-1)!, halfHeight: 0.002 }, peak);
    const reader = spectrumReader(spectrum);
    let worst = 0;
    heights.forEach((z, iz) =>
      row.r_m.forEach((r, ir) => {
        const [bz, bTheta] = [reader.bz(r, z), reader.bTheta(r, z)];
        row.angle_rad.forEach((angle, ia) => {
          const electrical = (angle * spectrum.poles) / 2;
          const sum = (b: Float64Array, wave: (x: number) => number) =>
            spectrum.orders.reduce((total, n, h) => total + b[h] * wave(n * electrical), 0);
          worst = Math.max(
            worst,
            Math.abs(sum(bz, Math.cos) - row.Bz_T[iz][ir][ia]),
            Math.abs(sum(bTheta, Math.sin) - row.Btangential_T[iz][ir][ia]),
          );
        });
      }),
    );
    holdHarmonics(worst / peak);
  });
});
