import type { SearchSection } from '../design/search';
import { objectives, type Objective, type Objectives } from './objectives';

export type Limits = NonNullable<SearchSection['limits']>;
export type Weights = NonNullable<SearchSection['weights']>;

/** A limit that a machine breaks. */
export interface Breach {
  objective: Objective;
  value: number;
  limit: number;
}

/** The limits a machine breaks, in the objectives' order; what is not known breaks none. */
export function breaches(values: Objectives, limits: Limits): Breach[] {
  return objectives.flatMap((objective) => {
    const { id, best } = objective;
    const limit = limits[id];
    if (limit === undefined) return [];
    const breaks = best === 'least' ? values[id] > limit : values[id] < limit;
    return breaks ? [{ objective, value: values[id], limit }] : [];
  });
}

/**
 * Marks from 0 to 1: where each machine stands between the worst and the best of all in each respect, weighed. Only for an order within a list; it decides
 * nothing.
 */
export function marks(all: readonly Objectives[], weights: Weights): number[] {
  const total = objectives.reduce((sum, { id }) => sum + (weights[id] ?? 1), 0);
  const shares = objectives.map(({ id, best }) => {
    const finite = all.map((values) => values[id]).filter(Number.isFinite);
    const [low, high] = [Math.min(...finite), Math.max(...finite)];
    return (value: number) => {
      if (!Number.isFinite(value)) return 0;
      const place = high > low ? (value - low) / (high - low) : 1;
      return best === 'least' && high > low ? 1 - place : place;
    };
  });
  return all.map((values) =>
    total > 0 ? objectives.reduce((sum, { id }, k) => sum + (weights[id] ?? 1) * shares[k](values[id]), 0) / total : 0,
  );
}
