import type { Drive } from './flow';

export interface PeriodSymmetry {
  /** Shortest stretch after which the currents repeat, phases exchanged or signs turned. [rad, electrical] */
  span: number;
  /** The starting currents that currents at the end of the stretch stand for. */
  image: (currents: number[]) => number[];
  /** For each phase, the mean over the phases it changes places with. */
  shared: (perPhase: number[]) => number[];
}

const SAME = 1e-9;

/**
 * The shortest stretch of a period that repeats, with phases exchanged and signs turned.
 *
 * @param drive       EMFs. [V] Odd harmonics only, so that half a period always turns every sign.
 * @param connection  A star or a delta allows exchanges that keep its order. [-]
 * @returns           Span and exchange. [rad]
 *
 * Source    half-wave symmetry and the rotation of a balanced system.
 * Checked   tests/laws/rectifier.test.ts
 */
export function periodSymmetry(drive: Drive, connection: 'star' | 'delta' | 'separate'): PeriodSymmetry {
  const m = drive.cos.length;
  const half: PeriodSymmetry = { span: Math.PI, image: (currents) => currents.map((i) => -i), shared: (perPhase) => perPhase };
  if (m === 1) return half;
  const spans = m % 2 === 1 ? [Math.PI / m, (2 * Math.PI) / m] : [(2 * Math.PI) / m, Math.PI / m];
  for (const span of spans) {
    const found = exchange(drive, span);
    if (!found) continue;
    const oneSign = found.every(({ sign }) => sign === found[0].sign);
    const shift = (found[0].from + m) % m;
    const rotation = found.every(({ from }, j) => from === (j + shift) % m);
    if (connection !== 'separate' && !(oneSign && rotation)) continue;
    if (!keepsInductance(drive, found)) continue;
    return {
      span,
      image: (currents) => found.map(({ from, sign }) => sign * currents[from]),
      shared: (perPhase) => perPhase.map((_, j) => cycleMean(perPhase, found, j)),
    };
  }
  return half;
}

/** For each phase, the phase whose EMF a span later is the same or the opposite. */
function exchange({ orders, cos, sin }: Drive, span: number): { from: number; sign: 1 | -1 }[] | undefined {
  const scale = Math.max(...cos.flat().map(Math.abs), ...sin.flat().map(Math.abs));
  const later = cos.map((row, k) => ({
    cos: row.map((c, h) => c * Math.cos(orders[h] * span) + sin[k][h] * Math.sin(orders[h] * span)),
    sin: row.map((c, h) => sin[k][h] * Math.cos(orders[h] * span) - c * Math.sin(orders[h] * span)),
  }));
  const found: { from: number; sign: 1 | -1 }[] = [];
  for (let j = 0; j < cos.length; j++) {
    const match = later.flatMap((shifted, from) =>
      ([1, -1] as const)
        .filter((sign) =>
          orders.every(
            (_, h) =>
              Math.abs(shifted.cos[h] * sign - cos[j][h]) < SAME * scale && Math.abs(shifted.sin[h] * sign - sin[j][h]) < SAME * scale,
          ),
        )
        .map((sign) => ({ from, sign })),
    )[0];
    if (!match) return undefined;
    found.push(match);
  }
  return found;
}

function keepsInductance({ inductance }: Drive, found: { from: number; sign: 1 | -1 }[]): boolean {
  const scale = inductance[0][0];
  return found.every((a, i) =>
    found.every((b, j) => Math.abs(inductance[a.from][b.from] * a.sign * b.sign - inductance[i][j]) < 1e-6 * scale),
  );
}

function cycleMean(perPhase: number[], found: { from: number }[], start: number): number {
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
