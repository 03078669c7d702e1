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

/** Several faults of one kind as one: "Dead diode: A plus, B plus". */
function gathered(explanations: readonly Explanation[]): string[] {
  const kinds = [...new Set(explanations.map(({ hypothesis }) => hypothesis.family))];
  return kinds.map((kind) => {
    const own = explanations.filter(({ hypothesis }) => hypothesis.family === kind).map(({ hypothesis }) => hypothesis);
    return own.length === 1
      ? own[0].words
      : `${families[kind].title.toLowerCase()}: one of ${own.map(({ subject }) => subject).join(', ')}`;
  });
}

export function told({ explanations, weight }: Suspect): Told {
  const [{ hypothesis, amount }] = explanations;
  const checks = [...new Set(explanations.map((e) => e.hypothesis.family))].map(
    (family) => explanations.find((e) => e.hypothesis.family === family)?.hypothesis.check ?? '',
  );
  return {
    weight,
    words: gathered(explanations),
    ...(hypothesis.freedom &&
      amount !== undefined && { amount: { label: hypothesis.freedom.label, unit: hypothesis.freedom.unit, value: amount } }),
    checks: checks.filter(Boolean),
  };
}

/** The verdict in a sentence or two. */
export function headline({ verdict, suspects, untested, chance }: Diagnosis): string {
  const [first, ...others] = suspects;
  switch (verdict) {
    case 'nothing-read':
      return 'Nothing has been read yet that the plan can be held against.';
    case 'as-planned':
      return `As planned, as far as these readings tell.${untested.length ? ` They say nothing of: ${untested.map((name) => families[name].title.toLowerCase()).join(', ')}.` : ''}`;
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
const SURE = 0.95;
const LEAST = 0.05;
const MOST = 4;

const oneIn = (chance: number) => (chance > 1e-6 ? Math.round(1 / chance).toLocaleString('en') : 'a million or more');
