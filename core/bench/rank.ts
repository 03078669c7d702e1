import { chanceOf } from '../numeric/distribution';
import { linearSolution } from '../numeric/linear';
import { hypothesesOf, type FamilyName, type Hypothesis } from './hypotheses';
import type { BenchMachine } from './machine';
import { ALLOWANCES, answersOf, AS_PLANNED, type Allowance, type Answers, type Question } from './predict';

/** How well one hypothesis explains all readings, its own freedom and the allowances settled. */
export interface Explanation {
  hypothesis: Hypothesis;
  machine: BenchMachine;
  /** Of its freedom. */
  amount?: number;
  allowance: Allowance;
  /** What each meter should have shown. */
  answers: number[];
  /** Sum of squares in standard deviations, allowances counted. */
  chiSquare: number;
}

/** Hypotheses that these readings cannot hold apart, the likeliest first. */
export interface Suspect {
  explanations: [Explanation, ...Explanation[]];
  /** Share of belief. */
  weight: number;
}

export interface Diagnosis {
  /**
   * `as-planned`, one `fault`, `cannot-tell` between several, `unexplained` where not even the best explains the readings, or `nothing-read`.
   */
  verdict: 'as-planned' | 'fault' | 'cannot-tell' | 'unexplained' | 'nothing-read';
  /** From the likeliest down to where little belief is left. */
  suspects: Suspect[];
  /** Kinds of fault that leave every one of these readings as it is. */
  untested: FamilyName[];
  /** How likely meters and careful building alone make the best explanation fit no better, as a whole or in one allowance. */
  chance: number;
}

/** Belief that makes one fault the answer, and a machine one that is as planned. */
const SURE = 0.95;
const LIKELY = 0.88;
/** Readings that fit their best explanation worse than this are not explained at all. */
const UNLIKELY = 1e-3;
/** Distance squared, in standard deviations, below which two answers are one. */
const ALIKE = 1;
const SAME = 1e-4;
const LEAST_WEIGHT = 1e-4;
const ROUNDS = 12;

const keys = ['field', 'resistance', 'drill'] as const;

/**
 * Ranks everything that may be so with a machine by how well it explains what was read.
 *
 *   weight ∝ prior · exp(−(χ² + k ln n)/2), k numbers of its own, n readings
 *
 * @param healthy    The machine as planned. [-]
 * @param questions  Its readings. [-]
 * @returns          Verdict and suspects. [-]
 *
 * Source    weighted least squares with the allowances as further observations; penalty: Schwarz 1978, Ann. Statist. 6, 461 (BIC).
 * Checked   tests/core/bench/rank.test.ts
 */
export function diagnosis(healthy: BenchMachine, questions: readonly Question[]): Diagnosis {
  if (questions.length === 0) return { verdict: 'nothing-read', suspects: [], untested: [], chance: 1 };
  const hypotheses = promising(hypothesesOf(healthy), questions);
  const classes = indistinguishable(hypotheses, questions);
  const explained = classes.map((members) => ({ members, best: explanationOf(members[0], questions) }));
  const badness = explained.map(({ best }) => best.chiSquare + (best.amount === undefined ? 0 : Math.log(questions.length)));
  const least = Math.min(...badness);
  const belief = explained.map(({ members }, i) => priorOf(members) * Math.exp((least - badness[i]) / 2));
  const total = belief.reduce((a, b) => a + b, 0);
  const ordered = explained
    .map(({ members, best }, i) => ({ members, best, weight: belief[i] / total }))
    .sort((a, b) => b.weight - a.weight);
  const suspects: Suspect[] = [];
  const untested = new Set<FamilyName>();
  for (const { members, best, weight } of ordered) {
    const alone = members.filter(({ family }) => family === 'healthy');
    const named = (alone.length ? alone : members).map((hypothesis) => ({
      ...best,
      hypothesis,
      machine: hypothesis.build(best.amount ?? 0),
    }));
    if (alone.length) members.filter(({ family }) => family !== 'healthy').forEach(({ family }) => untested.add(family));
    if (weight < LEAST_WEIGHT) continue;
    const like = suspects.find(
      ({ explanations: [head] }) =>
        head.hypothesis.family !== 'healthy' && alone.length === 0 && distance(head.answers, best.answers, questions) < ALIKE,
    );
    if (like) {
      like.explanations.push(...named);
      like.weight += weight;
    } else suspects.push({ explanations: named as Suspect['explanations'], weight });
  }
  suspects.sort((a, b) => b.weight - a.weight);
  const [first] = suspects;
  const [best] = first.explanations;
  // Among many readings that fit, one allowance strained beyond belief would be lost.
  const strains = keys.map((key) => chanceOf((Math.log(best.allowance[key]) / ALLOWANCES[key]) ** 2, 1));
  const chance = Math.min(chanceOf(best.chiSquare, questions.length - (best.amount === undefined ? 0 : 1)), ...strains);
  return { verdict: verdictOf(first, chance), suspects, untested: [...untested], chance };
}

function verdictOf({ explanations, weight }: Suspect, chance: number): Diagnosis['verdict'] {
  if (chance < UNLIKELY) return 'unexplained';
  if (explanations[0].hypothesis.family === 'healthy') return weight >= LIKELY ? 'as-planned' : 'cannot-tell';
  return weight >= SURE && explanations.length === 1 ? 'fault' : 'cannot-tell';
}

const priorOf = (members: readonly Hypothesis[]) => members.reduce((sum, { prior }) => sum + prior, 0);

const distance = (a: readonly number[], b: readonly number[], questions: readonly Question[]) =>
  questions.reduce((sum, { sigma }, i) => sum + ((a[i] - b[i]) / sigma) ** 2, 0);

/** So much worse than the best that no reading of direct current mends it. */
const HOPELESS = 100;

/** Direct current takes long to work out: what ohms and AC volts rule out is not asked about it. */
function promising(hypotheses: readonly Hypothesis[], questions: readonly Question[]): readonly Hypothesis[] {
  const quick = questions.filter(({ measurement }) => !measurement.dc);
  if (quick.length === 0 || quick.length === questions.length) return hypotheses;
  const classes = indistinguishable(hypotheses, quick).map((members) => ({ members, ...explanationOf(members[0], quick) }));
  const least = Math.min(...classes.map(({ chiSquare }) => chiSquare));
  return classes.filter(({ chiSquare }) => chiSquare < least + HOPELESS).flatMap(({ members }) => members);
}

/** Hypotheses whose every reading is the same, worked out once. */
function indistinguishable(hypotheses: readonly Hypothesis[], questions: readonly Question[]): Hypothesis[][] {
  const classes: { members: Hypothesis[]; answers: number[] }[] = [];
  const none = new Map(questions.map(({ measurement: { row } }) => [row, { field: 0, resistance: 0 }]));
  for (const hypothesis of hypotheses) {
    const { freedom, family, build } = hypothesis;
    const answers = answersOf(build(freedom?.starts[0] ?? 0), questions, none).at(AS_PLANNED);
    // Two freedoms that look alike at one place may differ at another: only those of one family are put together, or one that moves no reading with none.
    const like = classes.find(({ members: [head], answers: known }) => {
      const isComparable = freedom ? head.family === family || head.family === 'healthy' : !head.freedom;
      return isComparable && distance(known, answers, questions) < SAME;
    });
    if (like) like.members.push(hypothesis);
    else classes.push({ members: [hypothesis], answers });
  }
  return classes.map(({ members }) => members);
}

/** The best a hypothesis can do, from each of its starts. */
export function explanationOf(hypothesis: Hypothesis, questions: readonly Question[]): Explanation {
  const { freedom } = hypothesis;
  if (!freedom) return settled(hypothesis, questions, undefined);
  const tries = freedom.starts.map((start) => settled(hypothesis, questions, start));
  return tries.reduce((best, next) => (next.chiSquare < best.chiSquare ? next : best));
}

/** Gauss–Newton on the logarithms of the allowances and on the hypothesis's own amount. */
function settled(hypothesis: Hypothesis, questions: readonly Question[], start: number | undefined): Explanation {
  const { freedom, build } = hypothesis;
  let built: { amount: number | undefined; machine: BenchMachine; answers: Answers } | undefined;
  const at = (amount: number | undefined, logs: readonly number[]): Explanation => {
    if (!built || built.amount !== amount) {
      const machine = build(amount ?? 0);
      built = { amount, machine, answers: answersOf(machine, questions, built?.answers.slopes) };
    }
    const [field, resistance, drill] = logs.map(Math.exp);
    const allowance = { field, resistance, drill };
    const { machine } = built;
    const answers = built.answers.at(allowance);
    const misfit = questions.reduce((sum, { value, sigma }, i) => sum + ((value - answers[i]) / sigma) ** 2, 0);
    const strain = keys.reduce((sum, key, k) => sum + (logs[k] / ALLOWANCES[key]) ** 2, 0);
    return { hypothesis, machine, amount, allowance, answers, chiSquare: misfit + strain };
  };
  let logs = [0, 0, 0];
  let here = at(start, logs);
  for (let round = 0; round < ROUNDS; round++) {
    const { answers, amount } = here;
    const columns = keys.map((key) => questions.map(({ powers, sigma }, i) => (powers[key] * answers[i]) / sigma));
    if (freedom && amount !== undefined) {
      const step = 1e-3 * (freedom.to - freedom.from) * (amount > (freedom.from + freedom.to) / 2 ? -1 : 1);
      const moved = at(amount + step, logs).answers;
      columns.push(questions.map(({ sigma }, i) => (moved[i] - answers[i]) / sigma / step));
    }
    const rest = questions.map(({ value, sigma }, i) => (value - answers[i]) / sigma);
    const normal = columns.map((a, j) =>
      columns.map((b, k) => a.reduce((sum, x, i) => sum + x * b[i], 0) + (j === k ? (j < 3 ? ALLOWANCES[keys[j]] ** -2 : 1e-9) : 0)),
    );
    const right = columns.map((a, j) => a.reduce((sum, x, i) => sum + x * rest[i], 0) - (j < 3 ? logs[j] * ALLOWANCES[keys[j]] ** -2 : 0));
    const move = linearSolution(normal, right);
    if (!move) break;
    let better: Explanation | undefined;
    for (let share = 1; share > 0.05 && !better; share /= 2) {
      const next = logs.map((l, k) => l + share * move[k]);
      const amountNext =
        freedom && amount !== undefined ? Math.min(freedom.to, Math.max(freedom.from, amount + share * move[3])) : undefined;
      const tried = at(amountNext, next);
      if (tried.chiSquare < here.chiSquare) [better, logs] = [tried, next];
    }
    if (!better) break;
    const gained = here.chiSquare - better.chiSquare;
    here = better;
    if (gained < 1e-3) break;
  }
  return here;
}
