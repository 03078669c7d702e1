import type { Matrix } from '../numeric/symmetric';

/** Harmonics of each phase's EMF over the electrical angle, at a shaft speed of 1 rad/s. */
export interface Waves {
  /** Odd, rising. */
  orders: number[];
  /** [phase][harmonic], V·s/rad */
  cos: number[][];
  sin: number[][];
}

export interface PeriodSymmetry {
  /** Shortest stretch after which the currents repeat, phases exchanged or signs turned. [rad, electrical] */
  span: number;
  /** The starting currents that currents at the end of the stretch stand for. */
  image: (currents: ArrayLike<number>) => number[];
  /** For each phase, the mean over the phases it changes places with. */
  shared: (perPhase: number[]) => number[];
}

/** A phase stands for another, its sign kept or turned. */
interface Exchange {
  from: number;
  sign: 1 | -1;
}

const SAME = 1e-9;

/**
 * The shortest stretch of a period that repeats, with phases exchanged and signs turned.
 *
 * @param waves       EMFs. [V·s/rad] Odd harmonics only, so that half a period always turns every sign.
 * @param inductance  Phase by phase. [H]
 * @param connection  A star or a delta allows exchanges that keep its order. [-]
 * @returns           Span and exchange. [rad]
 *
 * Source    half-wave symmetry and the rotation of a balanced system.
 * Checked   tests/laws/rectifier.test.ts
 */
export function periodSymmetry(waves: Waves, inductance: Matrix, connection: 'star' | 'delta' | 'separate'): PeriodSymmetry {
  const m = waves.cos.length;
  const half: PeriodSymmetry = { span: Math.PI, image: (currents) => Array.from(currents, (i) => -i), shared: (perPhase) => perPhase };
  if (m === 1) return half;
  const spans = m % 2 === 1 ? [Math.PI / m, (2 * Math.PI) / m] : [(2 * Math.PI) / m, Math.PI / m];
  for (const span of spans) {
    const found = exchange(waves, span);
    if (!found) continue;
    const oneSign = found.every(({ sign }) => sign === found[0].sign);
    const shift = (found[0].from + m) % m;
    const rotation = found.every(({ from }, j) => from === (j + shift) % m);
    if (connection !== 'separate' && !(oneSign && rotation)) continue;
    if (!keepsInductance(inductance, found)) continue;
    return {
      span,
      image: (currents) => found.map(({ from, sign }) => sign * currents[from]),
      shared: (perPhase) => perPhase.map((_, j) => cycleMean(perPhase, found, j)),
    };
  }
  return half;
}

/** For each phase, the phase whose EMF a span later is the same or the opposite. */
function exchange({ orders, cos, sin }: Waves, span: number): Exchange[] | undefined {
  const turns = orders.map((n) => ({ c: Math.cos(n * span), s: Math.sin(n * span) }));
  const near = SAME * Math.max(...cos.flat().map(Math.abs), ...sin.flat().map(Math.abs));
  const isLater = (from: number, sign: number, phase: number) => {
    for (let h = 0; h < orders.length; h++) {
      const { c, s } = turns[h];
      const laterCos = sign * (cos[from][h] * c + sin[from][h] * s);
      const laterSin = sign * (sin[from][h] * c - cos[from][h] * s);
      if (Math.abs(laterCos - cos[phase][h]) > near || Math.abs(laterSin - sin[phase][h]) > near) return false;
    }
    return true;
  };
  const found: Exchange[] = [];
  for (let phase = 0; phase < cos.length; phase++) {
    for (let from = 0; from < cos.length && found.length === phase; from++) {
      if (isLater(from, 1, phase)) found.push({ from, sign: 1 });
      else if (isLater(from, -1, phase)) found.push({ from, sign: -1 });
    }
    if (found.length === phase) return undefined;
  }
  return found;
}

function keepsInductance(inductance: Matrix, found: readonly Exchange[]): boolean {
  const scale = inductance[0][0];
  return found.every((a, i) =>
    found.every((b, j) => Math.abs(inductance[a.from][b.from] * a.sign * b.sign - inductance[i][j]) < 1e-6 * scale),
  );
}

function cycleMean(perPhase: number[], found: readonly Exchange[], start: number): number {
  let sum = 0;
  let length = 0;
  let k = start;
  do {
    sum += perPhase[k];
    length++;
    k = found[k].from;
  } while (k !== start);
  return sum / length;
}
