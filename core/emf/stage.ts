import { spectrumReader } from '../field/harmonics';
import type { GapSpectrum } from '../field/stage';
import type { Caution } from '../problem';
import { layoutModel } from '../winding/layouts';
import type { WindingSection } from '../winding/section';
import type { Coil, WindingResult } from '../winding/stage';
import { mutualInductance, selfInductance, type Bundle } from './inductance';
import { turnLinkage } from './linkage';
import { coilEmf, combined, harmonicPeak, rms, valueAt } from './waveform';

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
  /** Between neighbouring terminals: √3 × phase for a balanced star (without triplen harmonics), phase for delta and separate. */
  lineRmsPer1000rpm: number;
  /** Harmonics' RMS over the fundamental's, phase voltage. [-] */
  distortion: number;
  hertzPer1000rpm: number;
  /** One period of the first phase and of the line at 1000 rpm. Electrical angle in rad, V. */
  waveform: { angle: number[]; phase: number[]; line: number[] };
  /** Self and mutual inductance of the phases, and of a coil alone. [H] */
  inductance: number[][];
  coilInductance: number;
  phaseInductance: number;
  cautions: Caution[];
}

/** What the EMF needs of field and geometry, per turn: turns, wire and connection do not touch it. */
export interface LinkageShape {
  polePairs: number;
  orders: number[];
  /** λ_h of each coil, per turn. [Wb] */
  linkage: number[][];
}

/** Linkage of every coil, one integration for each height at which coils lie. */
export function linkageStage(winding: WindingSection, { coils }: WindingResult, spectrum: GapSpectrum): LinkageShape {
  const reader = spectrumReader(spectrum);
  const atHeight = new Map<number, number[]>();
  for (const { height } of coils)
    if (!atHeight.has(height))
      atHeight.set(height, turnLinkage(reader, spectrum, layoutModel(winding.layout), winding.layout, height, winding.thickness));
  return {
    polePairs: spectrum.poles / 2,
    orders: spectrum.orders,
    linkage: coils.map(({ height }) => atHeight.get(height) as number[]),
  };
}

/** Inductances of one turn, coil against coil. [H] */
export function inductanceStage(winding: WindingSection, poles: number, { coils }: WindingResult): number[][] {
  const model = layoutModel(winding.layout);
  const bundle: Bundle = {
    path: (offset) => model.turnPath(winding.layout, poles, offset),
    legWidth: winding.layout.legWidth,
    thickness: winding.thickness,
  };
  const own = selfInductance(bundle);
  const known = new Map<string, number>();
  const between = (a: Coil, b: Coil) => {
    const apart = Math.abs(a.angle - b.angle) % (2 * Math.PI);
    const angle = Math.min(apart, 2 * Math.PI - apart);
    const lift = Math.abs(a.height - b.height);
    const key = `${angle.toFixed(9)} ${lift.toFixed(9)}`;
    let mutual = known.get(key);
    if (mutual === undefined) known.set(key, (mutual = mutualInductance(bundle, angle, lift)));
    return mutual;
  };
  return coils.map((a) => coils.map((b) => (a === b ? own : between(a, b))));
}

/** EMF and inductance of coils, phases and lines. */
export function emfStage(winding: WindingSection, { coils }: WindingResult, shape: LinkageShape, perTurn: number[][]): EmfResult {
  const { turns, phases, parallelPaths, connection } = winding;
  const { polePairs, orders } = shape;
  const coilEmfs = coils.map((coil, i) =>
    coilEmf(
      shape.linkage[i].map((l) => turns * l),
      orders,
      polePairs,
      coil.angle,
    ),
  );
  const share = (phase: number) => coils.map((coil) => (coil.phase === phase ? coil.direction / parallelPaths : 0));
  const shares = Array.from({ length: phases }, (_, j) => share(j + 1));
  const phaseEmf = shares.map((weights) => combined(coilEmfs, weights));
  const line = connection === 'star' && phases > 1 ? combined([phaseEmf[0], phaseEmf[1]], [1, -1]) : phaseEmf[0];
  const inductance = shares.map((a) =>
    shares.map((b) => turns ** 2 * a.reduce((sum, wa, i) => sum + wa * b.reduce((inner, wb, j) => inner + wb * perTurn[i][j], 0), 0)),
  );
  const peak = harmonicPeak(phaseEmf[0], 0);
  const at1000rpm = (1000 * 2 * Math.PI) / 60;
  const angle = Array.from({ length: 121 }, (_, i) => (2 * Math.PI * i) / 120);
  return {
    polePairs,
    orders,
    coilEmf: coilEmfs,
    phaseEmf,
    peakPerRadPerSecond: peak,
    coilRmsPer1000rpm: rms(coilEmfs[0]) * at1000rpm,
    phaseRmsPer1000rpm: rms(phaseEmf[0]) * at1000rpm,
    lineRmsPer1000rpm: rms(line) * at1000rpm,
    distortion: peak > 0 ? Math.sqrt(Math.max(0, (2 * rms(phaseEmf[0]) ** 2) / peak ** 2 - 1)) : 0,
    hertzPer1000rpm: (polePairs * 1000) / 60,
    waveform: {
      angle,
      phase: angle.map((a) => valueAt(phaseEmf[0], orders, a) * at1000rpm),
      line: angle.map((a) => valueAt(line, orders, a) * at1000rpm),
    },
    inductance,
    coilInductance: turns ** 2 * perTurn[0][0],
    phaseInductance: inductance[0][0],
    cautions: [],
  };
}
