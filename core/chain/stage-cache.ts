/** Keeps the last few results of each stage by what they were worked out from, and counts the work done. */
export interface StageCache {
  <T>(stage: string, inputs: unknown, work: () => T): T;
  /** How often each stage was really worked out. */
  readonly worked: Record<string, number>;
}

const KEPT = 12;

/**
 * A cache for one solver. Inputs are compared by their JSON, so equal designs hit it whichever way they came (undo, file, worker message).
 */
export function createStageCache(): StageCache {
  const kept = new Map<string, Map<string, unknown>>();
  const worked: Record<string, number> = {};
  const cache = <T>(stage: string, inputs: unknown, work: () => T): T => {
    const key = JSON.stringify(inputs);
    const results = kept.get(stage) ?? new Map<string, unknown>();
    kept.set(stage, results);
    if (results.has(key)) {
      const found = results.get(key) as T;
      results.delete(key);
      results.set(key, found);
      return found;
    }
    const made = work();
    worked[stage] = (worked[stage] ?? 0) + 1;
    results.set(key, made);
    if (results.size > KEPT) results.delete(results.keys().next().value as string);
    return made;
  };
  return Object.assign(cache, { worked });
}
