import { isOff, type Fit, type Fitted } from './fit';
import { families } from './hypotheses';
import type { Diagnosis, Explanation, Suspect } from './rank';
import type { UnitKind } from '../quantities';

/** A suspect in words. */
export interface Told {
  /** Share of belief. */
  weight: number;
  /** What may be wrong; several where the readings cannot hold them apart. */
  words: string[];
  amount?: { label: string; unit: UnitKind; value: number };
  /** How to see it without more readings. */
  checks: string[];
}

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** So many coils or pairs of them are named; more are counted. */
const MOST_NAMED = 6;

const listed = (subjects: readonly string[]) =>
  subjects.length > MOST_NAMED
    ? `one of ${subjects.length}, such as ${subjects.slice(0, 2).join(' or ')}`
    : `one of ${subjects.join(', ')}`;

/** Several faults of one kind as one: "Dead diode: A plus, B plus". */
function gathered(explanations: readonly Explanation[]): string[] {
  const kinds = [...new Set(explanations.map(({ hypothesis }) => hypothesis.family))];
  return kinds.map((kind) => {
    const own = explanations.filter(({ hypothesis }) => hypothesis.family === kind).map(({ hypothesis }) => hypothesis);
    return own.length === 1 ? own[0].words : `${families[kind].title.toLowerCase()}: ${listed(own.map(({ subject }) => subject))}`;
  });
}

export function told({ explanations, weight }: Suspect): Told {
  const [{ hypothesis, amount }] = explanations;
  const checks = [...new Set(explanations.map((e) => e.hypothesis.family))].map((family) => {
    const [first, ...others] = explanations.filter((e) => e.hypothesis.family === family).map((e) => e.hypothesis);
    return others.length ? `${first.check} Likewise the others.` : first.check;
  });
  return {
    weight,
    words: gathered(explanations),
    ...(hypothesis.freedom &&
      amount !== undefined && { amount: { label: hypothesis.freedom.label, unit: hypothesis.freedom.unit, value: amount } }),
    checks: checks.filter(Boolean),
  };
}

/** A machine as planned may still be off by a little that its readings tell for sure. */
function tellsOff({ field, resistance }: Pick<Fit, 'field' | 'resistance'>): string {
  const off = (name: string, fitted: Fitted | undefined) =>
    fitted && isOff(fitted) && Math.abs(fitted.value - 1) >= WORTH_TELLING
      ? [`${name} ${(100 * Math.abs(fitted.value - 1)).toFixed(1)} % ${fitted.value > 1 ? 'over' : 'under'} the plan’s`]
      : [];
  const told = [...off('field', field), ...off('resistance', resistance)];
  return told.length ? ` Told for sure, though no more than careful builds stray by: ${told.join(', ')}.` : '';
}

/** The verdict in a sentence or two. */
export function headline({ verdict, suspects, untested, chance }: Diagnosis, fitted: Pick<Fit, 'field' | 'resistance'> = {}): string {
  const [first, ...others] = suspects;
  switch (verdict) {
    case 'nothing-read':
      return 'Nothing has been read yet that the plan can be held against.';
    case 'as-planned':
      return `As planned, as far as these readings tell.${tellsOff(fitted)}${untested.length ? ` They say nothing of: ${untested.map((name) => families[name].title.toLowerCase()).join(', ')}.` : ''}`;
    case 'fault':
      return sentence(first.explanations[0].hypothesis.words);
    case 'cannot-tell': {
      const named = [first, ...others.filter(({ weight }) => first.weight < SURE && weight > LEAST)].flatMap(({ explanations }) =>
        gathered(explanations),
      );
      return named.length === 1
        ? `${sentence(named[0])} Which, these readings cannot tell.`
        : `Cannot tell yet: ${named.slice(0, MOST).join('; or ')}.`;
    }
    case 'unexplained':
      return `No single fault explains these readings (meters alone would do so once in ${oneIn(chance)} times). Read the worst again; look for a speed wrongly told, or two faults at once. Nearest: ${gathered(first.explanations)[0]}.`;
  }
}

/** What stands in the headline: enough belief to name, and no more than can be read. */
const WORTH_TELLING = 0.01;
const SURE = 0.95;
const LEAST = 0.05;
const MOST = 4;

const oneIn = (chance: number) => (chance > 1e-6 ? Math.round(1 / chance).toLocaleString('en') : 'a million or more');
