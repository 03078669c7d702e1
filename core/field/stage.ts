import { demagnetizingField, KNEE } from '../magnets/demagnetization';
import type { MagnetShape } from '../magnets/section';
import type { Caution } from '../problem';
import { discCautions } from './discs';
import { correctedMachine } from './machine';
import { PLATE_LIMIT } from './plate';
import type { DiscsSection } from './section';
import { directField } from './source';
import { gapSpectrum } from './spectrum';
import { circuitField, circuitHeight } from './textbook';

/**
 * The gap field as odd harmonics of the electrical angle on a grid of nodes: plain data, so that it crosses to a worker and to a cache.
 *
 *   B_z(r, θ, z) = Σ bz_h(z, r) cos(n_h p θ)     B_θ(r, θ, z) = Σ bTheta_h(z, r) sin(n_h p θ)     p = poles / 2
 *
 * Of two discs misaligned by δ the lower is turned by −δ/2 and the upper by δ/2. With bz, bTheta the field of both in line and dz, dTheta what the upper
 * alone gives less what the lower does, ε_h = n_h p δ/2:
 *
 *   B_z = Σ bz cos ε cos(n p θ) + dz sin ε sin(n p θ)     B_θ = Σ bTheta cos ε sin(n p θ) − dTheta sin ε cos(n p θ)
 */
export interface GapSpectrum {
  poles: number;
  /** Harmonic orders n_h = 1, 3, 5 … */
  orders: number[];
  /** Chebyshev nodes over the winding's radii. [m] */
  radii: number[];
  /** Nodes over the copper's height, mid-plane z = 0. [m] */
  heights: number[];
  /** By order, height and radius, the last fastest. [T] */
  bz: Float64Array;
  bTheta: Float64Array;
  /** Only where the discs are misaligned: δ in rad, and the differences of the two discs. */
  misaligned?: { angle: number; dz: Float64Array; dTheta: Float64Array };
}

export interface FieldResult {
  /** Magnet face to magnet face, or to the return plate; for a single disc twice the distance from its face to the mid-plane. [m] */
  gapLength: number;
  /** |B_z| at pitch radius, mid-plane, on the magnet's centre line; halfway between the centre lines where the discs are misaligned. [T] */
  peak: number;
  /** b_1 at the same place. [T] */
  fundamental: number;
  /** Greatest mean flux density in the steel plate's section, steel only. [T] */
  plate?: number;
  /** Relative permeability of the plate as it carries that. [-] */
  platePermeability?: number;
  /** Factor by which plate saturation weakens the field, 1 when it does not. [-] */
  saturation: number;
  /** Factor by which recoil permeability weakens the field. [-] */
  recoil: number;
  /** Peak by the textbook's magnetic circuit, and by how much of the full one it is more; only where steel closes the circuit. [T, -] */
  textbook?: { peak: number; departure: number };
  /** Field that works against the magnets at the middle of their worse pole face, no current flowing. [A/m] */
  demagnetizingField: number;
  /** B_z round one pole pair at pitch radius and mid-plane, and its b_1, b_3, b_5 …. Electrical angle in rad, T. */
  profile: { angle: number[]; bz: number[]; harmonics: number[] };
  spectrum: GapSpectrum;
  cautions: Caution[];
}

/** What the field needs of the winding: where its copper can be. Turns, wire and load do not touch it. */
export interface FieldRegion {
  gapLength: number;
  innerRadius: number;
  outerRadius: number;
  /** Half the height of all the copper. [m] */
  halfHeight: number;
}

const PROFILE_POINTS = 120;

/**
 * The gap field of magnets at their temperature, over the region where the copper can be. Their coercivity at that temperature, where it is known, is only
 * compared.
 */
export function fieldStage(
  shape: MagnetShape,
  remanence: number,
  recoilPermeability: number,
  discs: DiscsSection,
  region: FieldRegion,
  intrinsicCoercivity?: number,
): FieldResult {
  const { gapLength } = region;
  const machine = correctedMachine(shape, remanence, recoilPermeability, discs, gapLength);
  const field = directField(machine.source);
  const { misalignment, poles } = machine.source;
  const peak = Math.abs(field(discs.pitchRadius, 0, 0)[2]);
  const lower = [discs.pitchRadius * Math.cos(misalignment / 2), -discs.pitchRadius * Math.sin(misalignment / 2)] as const;
  const [front, back] = [gapLength / 2, gapLength / 2 + shape.axial].map((z) => field(...lower, -z)[2]);
  const against = demagnetizingField(remanence, Math.min(front, back), recoilPermeability);
  const height = circuitHeight(discs, shape.axial);
  const textbook = height === undefined ? undefined : circuitField(remanence, recoilPermeability, gapLength, height);
  const angle = Array.from({ length: PROFILE_POINTS + 1 }, (_, i) => (2 * Math.PI * i) / PROFILE_POINTS);
  const harmonics = machine.harmonics.map((b, h) => b * Math.cos(((2 * h + 1) * poles * misalignment) / 4));
  const bz = angle.map((e) => harmonics.reduce((sum, b, h) => sum + b * Math.cos((2 * h + 1) * e), 0));
  const cautions = discCautions(shape, discs);
  if (machine.plate && machine.plate.fluxDensity > PLATE_LIMIT) {
    const lost = 100 * (1 - machine.saturation);
    cautions.push({
      severity: 'warning',
      where: 'discs.backing.thickness',
      message:
        `The steel behind the magnets carries ${machine.plate.fluxDensity.toFixed(2)} T, above ${PLATE_LIMIT} T` +
        `${lost > 0.5 ? `, which takes ${lost.toFixed(0)} % off the field` : ''}. ` +
        `A plate of ${(machine.plate.thicknessNeeded * 1000).toFixed(1)} mm would carry it.`,
    });
  }
  if (intrinsicCoercivity !== undefined && against > KNEE * intrinsicCoercivity) {
    cautions.push({
      severity: 'danger',
      where: 'magnets.intrinsicCoercivity',
      message:
        `On their discs the magnets stand ${kilo(against)} against them, past their knee at ${kilo(KNEE * intrinsicCoercivity)} at this temperature: they lose strength ` +
        'for good. Keep them cooler, make them thicker, put steel behind them, or take a grade of higher coercivity.',
    });
  }
  return {
    gapLength,
    peak,
    fundamental: Math.abs(harmonics[0]),
    ...(machine.plate && { plate: machine.plate.fluxDensity, platePermeability: machine.plate.permeability }),
    saturation: machine.saturation,
    recoil: machine.recoil,
    ...(textbook !== undefined && peak > 0 && { textbook: { peak: textbook, departure: textbook / peak - 1 } }),
    demagnetizingField: against,
    profile: { angle, bz, harmonics },
    spectrum: gapSpectrum(machine.source, region, misalignment > 0 ? Math.abs(machine.harmonics.reduce((a, b) => a + b)) : peak),
    cautions,
  };
}

const kilo = (fieldStrength: number) => `${(fieldStrength / 1000).toFixed(0)} kA/m`;
