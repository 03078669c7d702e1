import { studentFactor } from '../numeric/distribution';
import { linearSolution } from '../numeric/linear';
import type { BenchMachine } from './machine';
import { ALLOWANCES, answersOf, AS_PLANNED, withAllowance, type Allowance, type Question } from './predict';

/** A fitted factor on what was planned, with the interval that holds the true one in 95 of 100 cases. */
export interface Fitted {
  value: number;
  low: number;
  high: number;
}

/** Whether the interval leaves out what was planned. */
export const isOff = ({ low, high }: Fitted): boolean => low > 1 || high < 1;

export interface Residual {
  row: number;
  figure: Question['measurement']['figure'];
  measured: number;
  /** By the fitted machine. */
  fitted: number;
  planned: number;
  /** Measured less fitted, in standard deviations. */
  deviations: number;
}

export interface Fit {
  field?: Fitted;
  resistance?: Fitted;
  /** Readings more than factors. */
  degrees: number;
  chiSquare: number;
  residuals: Residual[];
}

const CONFIDENCE = 0.95;
/** The same for a normal distribution: where no reading is left over, the meters' stated accuracy has to do. */
const NORMAL = 1.959964;
const ROUNDS = 8;
/** A predicted value far below the measured one, as of current just under cut-in, still leaves it so much of its uncertainty. */
const LEAST_ANSWER = 0.25;

const keys = ['field', 'resistance', 'drill'] as const;
type Key = (typeof keys)[number];

/**
 * Field and resistance of the machine as built, over those planned, from all its readings.
 *
 *   minimise Σ ((measured − predicted)/σ)², σ from the predicted value; interval = value ± t(95 %, ν) · √(s² C), s² = χ²/ν, C from the normal equations
 *
 * @param planned    Machine as planned. [-]
 * @param questions  Readings. [-]
 * @returns          Factors with 95 % intervals; one that no reading tells is left out. [-]
 *
 * Valid     a machine without a fault: look at rank.ts first.
 * Omits     that readings on one drill share its error, but for its allowance.
 * Source    weighted least squares, Draper & Smith 1998, *Applied Regression Analysis*, ch. 9 and 1.4 (from memory).
 * Checked   tests/core/bench/fit.test.ts
 */
export function fit(planned: BenchMachine, questions: readonly Question[]): Fit {
  const free: Key[] = keys.filter((key) => questions.some(({ powers, measurement }) => tells(key, powers, measurement.figure)));
  let factors: Allowance = AS_PLANNED;
  let found: { answers: number[]; sigmas: number[]; covariance: number[][]; chiSquare: number } | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const { answers, columns } = about(planned, questions, factors, free);
    const sigmas = questions.map(
      ({ share, measurement, value }, i) => Math.hypot(share * Math.max(answers[i], LEAST_ANSWER * value), measurement.step / 2) || 1,
    );
    const rest = questions.map(({ value }, i) => (value - answers[i]) / sigmas[i]);
    const weighted = columns.map((column) => column.map((x, i) => x / sigmas[i]));
    // The drill's own error is known to be small, and cannot be told from the field's otherwise.
    const prior = free.map((key) => (key === 'drill' ? ALLOWANCES.drill ** -2 : 0));
    const strain = free.map((key) => (key === 'drill' ? (1 - factors.drill) * ALLOWANCES.drill ** -2 : 0));
    const normal = weighted.map((a, j) => weighted.map((b, k) => dot(a, b) + (j === k ? prior[j] : 0)));
    const right = weighted.map((a, j) => dot(a, rest) + strain[j]);
    const move = linearSolution(normal, right);
    const covariance = free.map((_, j) =>
      linearSolution(
        normal,
        free.map((_k, k) => (k === j ? 1 : 0)),
      ),
    );
    if (!move || covariance.some((row) => row === undefined)) break;
    found = { answers, sigmas, covariance: covariance as number[][], chiSquare: dot(rest, rest) };
    factors = free.reduce((next, key, j) => ({ ...next, [key]: Math.max(0.01, next[key] + move[j]) }), factors);
    if (move.every((m) => Math.abs(m) < 1e-7)) break;
  }
  if (!found) return { degrees: 0, chiSquare: 0, residuals: [] };
  const { answers, sigmas, covariance, chiSquare } = found;
  const degrees = questions.length - free.filter((key) => key !== 'drill').length;
  const width = degrees > 0 ? studentFactor(CONFIDENCE, degrees) * Math.sqrt(chiSquare / degrees) : NORMAL;
  const interval = (key: Key): Fitted | undefined => {
    const j = free.indexOf(key);
    if (j < 0) return undefined;
    const half = width * Math.sqrt(covariance[j][j]);
    return { value: factors[key], low: factors[key] - half, high: factors[key] + half };
  };
  const [field, resistance] = [interval('field'), interval('resistance')];
  return {
    ...(field && { field }),
    ...(resistance && { resistance }),
    degrees,
    chiSquare,
    residuals: questions.map(({ measurement: { row, figure }, value, planned: plan }, i) => ({
      row,
      figure,
      measured: value,
      fitted: answers[i],
      planned: plan,
      deviations: (value - answers[i]) / sigmas[i],
    })),
  };
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i], 0);

/** Direct current alone tells of the field; it goes with the resistance too little to tell both. */
const tells = (key: Key, powers: Allowance, figure: Question['measurement']['figure']) =>
  key === 'resistance' ? figure === 'ohms' : powers[key] !== 0;

/** Answers of the machine with these factors, and how they go with each. */
function about(planned: BenchMachine, questions: readonly Question[], factors: Allowance, free: readonly Key[]) {
  const { at } = answersOf(withAllowance(planned, factors), questions);
  const drilled = { ...AS_PLANNED, drill: factors.drill };
  const answers = at(drilled);
  const step = 1e-3;
  const columns = free.map((key) =>
    at({ ...drilled, [key]: drilled[key] + step }).map((x, i) => ((x - answers[i]) / step) * (key === 'drill' ? 1 : 1 / factors[key])),
  );
  return { answers, columns };
}
