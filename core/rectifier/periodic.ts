import { passageDerivative } from './derivative';
import type { Passage } from './flow';
import type { PeriodSymmetry } from './symmetry';

const CONVERGED = 1e-7;
const MOST_ROUNDS = 400;
/** Where Newton's step does not lessen what is left to this share, the flow itself takes over: it never leads away. */
const LESS = 0.5;

/**
 * The passage whose end, phases exchanged, is its own start.
 *
 * @param pass      Flow over the stretch that repeats. [A]
 * @param symmetry  What the end stands for. [-]
 * @param first     Currents to start from. [A]
 * @param scale     Currents so small that their change does not matter. [A]
 * @returns         Starting currents and the passage. [A]
 *
 * Source    Newton's method on the shooting problem: Aprille & Trick 1972, Proc. IEEE 60, 108. The flow of a convex potential never takes two states
 *           apart, so that plain repetition is safe where Newton's step is not.
 * Checked   tests/laws/rectifier.test.ts
 */
export function periodicPassage(
  pass: (start: ArrayLike<number>) => Passage,
  { image }: PeriodSymmetry,
  first: ArrayLike<number>,
  scale: number,
): { start: ArrayLike<number>; passage: Passage } {
  let start = first;
  let before = Infinity;
  let passage = pass(start);
  for (let round = 1; round < MOST_ROUNDS; round++) {
    const end = image(passage.end);
    const left = end.map((value, i) => value - start[i]);
    const size = length(left);
    if (size <= CONVERGED * Math.max(length(end), scale)) break;
    const step = size < LESS * before ? newtonStep(passageDerivative(passage.stretches), image, left) : left;
    before = size;
    start = step.map((value, i) => start[i] + value);
    passage = pass(start);
  }
  return { start, passage };
}

function length(vector: readonly number[]): number {
  let sum = 0;
  for (const x of vector) sum += x * x;
  return Math.sqrt(sum);
}

/** Solves (1 − S D) step = left, S the exchange of phases. */
function newtonStep(derivative: Float64Array, image: (currents: ArrayLike<number>) => number[], left: readonly number[]): number[] {
  const m = left.length;
  const rows = left.map((value) => [...new Array<number>(m).fill(0), value]);
  for (let c = 0; c < m; c++) {
    const column = image(Array.from({ length: m }, (_, i) => derivative[i * m + c]));
    for (let i = 0; i < m; i++) rows[i][c] = (i === c ? 1 : 0) - column[i];
  }
  for (let p = 0; p < m; p++) {
    let pivot = p;
    for (let r = p + 1; r < m; r++) if (Math.abs(rows[r][p]) > Math.abs(rows[pivot][p])) pivot = r;
    [rows[p], rows[pivot]] = [rows[pivot], rows[p]];
    if (!(Math.abs(rows[p][p]) > 1e-9)) return [...left];
    for (let r = 0; r < m; r++) {
      if (r === p) continue;
      const factor = rows[r][p] / rows[p][p];
      if (factor !== 0) for (let c = p; c <= m; c++) rows[r][c] -= factor * rows[p][c];
    }
  }
  return rows.map((row, i) => row[m] / row[i]);
}
