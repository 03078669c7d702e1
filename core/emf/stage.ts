import type { BodyStack } from '../field/images';
import { bzHarmonic, misalignmentShares } from '../field/harmonics';
import type { GapSpectrum } from '../field/stage';
import type { Caution } from '../problem';
import { layoutModel } from '../winding/layouts';
import type { WindingSection } from '../winding/section';
import type { Coil, WindingResult } from '../winding/stage';
import type { WireResult } from '../wire/stage';
import { imageLifts, imagesInductance, mutualInductance, passingDistance, selfInductance, type Bundle } from './bundle';
import { emfCautions, type LoopResistances, misalignmentCautions } from './cautions';
import { turnLinkage } from './linkage';
import { sinePoleFlux, windingFactorVolts } from './textbook';
import { coilEmf, combined, distortion, harmonicPeak, rms, valueAt } from './waveform';
import { circulatingCurrent, zeroSequence } from './zero-sequence';

/** One phase's EMF per unit of shaft speed: e(t) = ω_shaft Σ_h [cos[h] cos(n_h θe) + sin[h] sin(n_h θe)], θe = p·θ_shaft. [V·s/rad] */
export interface PhaseEmf {
  cos: number[];
  sin: number[];
}

export interface EmfResult {
  polePairs: number;
  orders: number[];
  /** Of each coil alone, direction as wound (not counting how it is joined). */
  coilEmf: PhaseEmf[];
  /** Of each phase, terminal to terminal, parallel paths counted. */
  phaseEmf: PhaseEmf[];
  /** Fundamental of the first phase. [V·s/rad] */
  peakPerRadPerSecond: number;
  coilRmsPer1000rpm: number;
  phaseRmsPer1000rpm: number;
  /** Between neighbouring terminals: phase less phase in star, phase less what all have in common in delta, phase where separate. */
  lineRmsPer1000rpm: number;
  /** Flux of a pole as textbooks take it, phase volts by the winding factor, and by how much of the full ones they are more. [Wb, V, -] */
  textbook?: { poleFlux: number; phaseRmsPer1000rpm: number; departure: number };
  /** What all phases of a star or delta have in common, third harmonics above all. No line shows it; round a closed delta it drives a current. */
  zeroSequenceRmsPer1000rpm?: number;
  /** The RMS current it drives at 1000 rpm, nothing connected, coils at 20 °C: delta with its wire known. [A] */
  circulatingAmpsPer1000rpm?: number;
  /** Harmonics' RMS over the fundamental's, phase voltage. [-] */
  distortion: number;
  hertzPer1000rpm: number;
  /** One period of the first phase and of the line at 1000 rpm. Electrical angle in rad, V. */
  waveform: { angle: number[]; phase: number[]; line: number[] };
  /** Self and mutual inductance of the phases, and of a coil alone. [H] */
  inductance: number[][];
  coilInductance: number;
  phaseInductance: number;
  /** Of the first phase's coils upon each other, signs as they are joined. [H] */
  mutualInPhase: number;
  /** RMS by which a parallel path departs most from the mean of its phase: what drives a current round the paths. [V·s/rad] */
  circulating?: number;
  cautions: Caution[];
}

/** What the EMF needs of field and geometry, per turn: turns, wire and connection do not touch it. */
export interface LinkageShape {
  polePairs: number;
  orders: number[];
  /** λ_n of each coil as if it lay on +x. [Wb] */
  linkage: number[][];
  /** Flux of a pole as textbooks take it; none where the linkage is scaled from a table. [Wb] */
  poleFlux?: number;
  /** Only where the discs are misaligned by δ: the part of each coil in quadrature, and the linkage that discs in line would give. [rad, Wb] */
  misaligned?: { angle: number; skew: number[][]; inLine: number[][] };
}

/** Linkage of every coil, one integration for each height at which coils lie. */
export function linkageShape({ layout, thickness }: WindingSection, { coils }: WindingResult, spectrum: GapSpectrum): LinkageShape {
  const model = layoutModel(layout);
  const edgesAt = (offset: number) => model.fluxEdges(layout, spectrum.poles, offset);
  const linkageOf = (bz: GapSpectrum['bz'], shares?: number[]) => {
    const atHeight = new Map<number, number[]>();
    return coils.map(({ height }) => {
      const made = atHeight.get(height) ?? turnLinkage({ ...spectrum, bz }, edgesAt, { legWidth: layout.legWidth, height, thickness });
      atHeight.set(height, made);
      return shares ? made.map((l, h) => l * shares[h]) : made;
    });
  };
  const { poles, orders, misaligned } = spectrum;
  const [inner, outer] = model.legRadii(layout);
  const middle = (inner + outer) / 2;
  const poleFlux = sinePoleFlux(Math.abs(bzHarmonic(spectrum, 1, middle, 0)), middle, outer - inner, poles / 2);
  const inLine = linkageOf(spectrum.bz);
  if (!misaligned) return { polePairs: poles / 2, orders, linkage: inLine, poleFlux };
  const { both, difference } = misalignmentShares(spectrum);
  const linkage = inLine.map((coil) => coil.map((l, h) => l * both[h]));
  return {
    polePairs: poles / 2,
    orders,
    linkage,
    poleFlux,
    misaligned: { angle: misaligned.angle, skew: linkageOf(misaligned.dz, difference), inLine },
  };
}

/** Where the steel begins, below and above the winding's middle; infinite where there is none. [m] */
export type Steel = Pick<BodyStack, 'steelBelow' | 'steelAbove'>;
export const NO_STEEL: Steel = { steelBelow: -Infinity, steelAbove: Infinity };

/** Inductances of one turn, coil against coil, images in the steel counted. [H] */
export function inductanceShape(winding: WindingSection, poles: number, result: WindingResult, steel: Steel): number[][] {
  const { layout, thickness } = winding;
  const model = layoutModel(layout);
  const bundle: Bundle = {
    path: (offset) => model.turnPath(layout, poles, offset, 'mitred'),
    symmetry: model.symmetry(poles),
    legWidth: layout.legWidth,
    thickness,
    passing: passingDistance(layout.legWidth, thickness),
  };
  // Where the drawing has coils cross, one passes over the other.
  const nearest = model.crosses(layout) ? thickness : 0;
  const plated = Number.isFinite(steel.steelBelow) || Number.isFinite(steel.steelAbove);
  const known = new Map<string, number>();
  const between = (i: number, j: number) => {
    const [a, b] = [result.coils[i], result.coils[j]];
    const apart = Math.abs(a.angle - b.angle) % (2 * Math.PI);
    const angle = Math.min(apart, 2 * Math.PI - apart);
    const lift = Math.abs(a.height - b.height);
    const key = `${Math.round(angle * 1e7)} ${plated ? `${a.height} ${b.height}` : Math.round(lift * 1e7)}`;
    let found = known.get(key);
    if (found === undefined) {
      found = i === j ? selfInductance(bundle) : mutualInductance(bundle, angle, Math.max(nearest, lift));
      if (plated) {
        const images = imageLifts(a.height, b.height, steel.steelBelow, steel.steelAbove, result.outerRadius);
        found += imagesInductance(bundle, angle, images);
      }
      known.set(key, found);
    }
    return found;
  };
  const matrix = result.coils.map(() => result.coils.map(() => 0));
  result.coils.forEach((_, i) => {
    for (let j = 0; j <= i; j++) matrix[i][j] = matrix[j][i] = between(i, j);
  });
  return matrix;
}

/** EMF and inductance of coils, phases and lines, from what one turn gives. With the wire, cautions tell amperes as well as volts. */
export function emfFromShape(
  winding: WindingSection,
  result: WindingResult,
  { polePairs, orders, linkage, poleFlux, misaligned }: LinkageShape,
  perTurn: number[][],
  wire?: WireResult,
): EmfResult {
  const { coils } = result;
  const { turns, phases, parallelPaths, connection } = winding;
  const coilEmfs = coils.map((coil, i) => coilEmf(linkage[i], orders, polePairs, coil.angle, turns, misaligned?.skew[i]));
  const sharesOf = (phase: number, paths: number, only?: number) =>
    coils.map((coil) => (coil.phase === phase && (only ?? coil.path) === coil.path ? coil.direction / paths : 0));
  const shares = Array.from({ length: phases }, (_, j) => sharesOf(j + 1, parallelPaths));
  const phaseEmf = shares.map((weights) => combined(coilEmfs, weights));
  const phaseOf = (other: number[][]) =>
    combined(
      coils.map((coil, i) => coilEmf(other[i], orders, polePairs, coil.angle, turns)),
      shares[0],
    );
  const departures = phaseEmf.flatMap((phase, j) =>
    Array.from({ length: parallelPaths }, (_, k) => {
      const path = combined(coilEmfs, sharesOf(j + 1, 1, k + 1));
      return rms(combined([path, phase], [1, -1]));
    }),
  );
  const inductance = phaseInductances(shares, perTurn, turns);
  const at1000rpm = (1000 * 2 * Math.PI) / 60;
  const joined = connection !== 'separate' && phases > 1;
  const common = joined ? zeroSequence(phaseEmf) : undefined;
  const line = common ? combined([phaseEmf[0], connection === 'star' ? phaseEmf[1] : common], [1, -1]) : phaseEmf[0];
  const loopAmps =
    common && connection === 'delta' && wire
      ? circulatingCurrent(
          orders.map((_, h) => harmonicPeak(common, h) * at1000rpm),
          orders,
          { omega: polePairs * at1000rpm, resistance: wire.phaseResistance20, inductance },
        )
      : undefined;
  const phaseRms = rms(phaseEmf[0]) * at1000rpm;
  const seriesTurns = turns * result.seriesCoils * layoutModel(winding.layout).polesLinked(polePairs);
  const byFactor = poleFlux && windingFactorVolts(at1000rpm, polePairs, seriesTurns, result.factors.winding, poleFlux);
  const angle = Array.from({ length: 121 }, (_, i) => (2 * Math.PI * i) / 120);
  return {
    polePairs,
    orders,
    coilEmf: coilEmfs,
    phaseEmf,
    peakPerRadPerSecond: harmonicPeak(phaseEmf[0], 0),
    coilRmsPer1000rpm: rms(coilEmfs[0]) * at1000rpm,
    phaseRmsPer1000rpm: phaseRms,
    lineRmsPer1000rpm: rms(line) * at1000rpm,
    ...(byFactor && phaseRms > 0 && { textbook: { poleFlux, phaseRmsPer1000rpm: byFactor, departure: byFactor / phaseRms - 1 } }),
    ...(common && { zeroSequenceRmsPer1000rpm: rms(common) * at1000rpm }),
    ...(loopAmps !== undefined && { circulatingAmpsPer1000rpm: loopAmps }),
    distortion: distortion(phaseEmf[0]),
    hertzPer1000rpm: (polePairs * 1000) / 60,
    waveform: {
      angle,
      phase: angle.map((a) => valueAt(phaseEmf[0], orders, a) * at1000rpm),
      line: angle.map((a) => valueAt(line, orders, a) * at1000rpm),
    },
    inductance,
    coilInductance: turns ** 2 * perTurn[0][0],
    phaseInductance: inductance[0][0],
    mutualInPhase: mutualInPhase(coils, perTurn, turns),
    circulating: Math.max(...departures),
    cautions: [
      ...emfCautions(winding, phaseEmf, departures, loopAmps, wire && loopResistances(wire, result)),
      ...(misaligned ? misalignmentCautions(misaligned.angle, polePairs, rms(phaseEmf[0]), rms(phaseOf(misaligned.inLine))) : []),
    ],
  };
}

/** EMF and inductance straight from the gap's field. */
export function emfStage(winding: WindingSection, result: WindingResult, spectrum: GapSpectrum, steel: Steel): EmfResult {
  const perTurn = inductanceShape(winding, spectrum.poles, result, steel);
  return emfFromShape(winding, result, linkageShape(winding, result, spectrum), perTurn);
}

/** Paths of a phase carry its current in equal shares. */
function phaseInductances(shares: number[][], perTurn: number[][], turns: number): number[][] {
  const linked = shares.map((b) => perTurn.map((row) => row.reduce((sum, l, j) => sum + l * b[j], 0)));
  return shares.map((a) => linked.map((flux) => turns ** 2 * a.reduce((sum, share, i) => sum + share * flux[i], 0)));
}

function mutualInPhase(coils: Coil[], perTurn: number[][], turns: number): number {
  const own = coils.flatMap(({ phase, direction }, i) => (phase === 1 ? [{ direction, i }] : []));
  const pairs = own.flatMap((a) => own.filter((b) => b.i !== a.i).map((b) => a.direction * b.direction * perTurn[a.i][b.i]));
  return turns ** 2 * pairs.reduce((sum, each) => sum + each, 0);
}

/** Of one path's coils, and of a phase. [Ω] */
const loopResistances = ({ coilResistance20, phaseResistance20 }: WireResult, { seriesCoils }: WindingResult): LoopResistances => ({
  path: coilResistance20 * seriesCoils,
  phase: phaseResistance20,
});
