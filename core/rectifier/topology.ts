import type { Matrix } from '../numeric/symmetric';
import { endsOf } from './ends';
import { parallelPaths } from './parallel-paths';
import { seriesBridges } from './series-bridges';
import type { Bridge, DcSide, Source } from './steady-state';

/**
 * How phases, diodes and DC side hang together.
 *
 * Phase currents i obey L i′ + R i + ∂φ(i) ∋ e, where φ is the convex potential of diodes and DC side. Within one mode (which diodes conduct, and
 * which way) φ is quadratic and the currents move in a linear space i = N x, so that
 *
 *   Nᵀ L N x′ + Nᵀ Q N x = Nᵀ (e − b)        I_dc = c · i
 *
 * A mode holds while all its guards are positive; the first to fall through zero names the next mode.
 */
export interface Topology {
  /** Signs, one an element: +1, −1, or 0 where nothing flows. What an element is, the topology knows. */
  modeOf(currents: ArrayLike<number>): number[];
  space(mode: readonly number[]): ModeSpace;
  /** Element currents u = T i, row by row. */
  elements: number[][];
  /** AC lines that an element's current passes. */
  lines: number;
  /** Power in the diodes: threshold · I_dc + slope · Σu² + dcSlope · I_dc². */
  diodes: { threshold: number; slope: number; dcSlope: number };
}

export interface ModeSpace {
  /** N as columns. */
  basis: number[][];
  /** Q. [Ω] */
  resistance: Matrix;
  /** b. [V] */
  drop: number[];
  /** c. [-] */
  dc: number[];
  guards: Guard[];
}

/** offset + currents · i + residual · r, with r = e − L i′ − Q i − b: positive while the mode holds, and the mode that follows. */
export interface Guard {
  offset: number;
  currents: number[];
  residual: number[];
  next: number[];
}

/** The topology of a source with its bridge. One phase is always a bridge across its two ends. */
export function topologyOf(source: Source, bridge: Bridge, dc: DcSide): Topology {
  const { connection } = source;
  const m = source.phaseEmf.length;
  if (m > 1 && connection === 'separate' && bridge.arrangement === 'bridges-in-series') return seriesBridges(source, bridge, dc);
  return parallelPaths(source, bridge, dc, endsOf(m === 1 ? 'separate' : connection, m));
}
