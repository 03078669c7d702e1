import type { Design, Problem } from '../../core';
import { resultsStore, solveAside } from './results';

/** Puts a design beside the one on screen. Returns why it cannot be worked out, or nothing. */
export async function pin(name: string, design: Design): Promise<Problem[]> {
  const { results, solvedFor } = resultsStore.getState();
  const answer = results && solvedFor === design ? { ok: true as const, results } : await solveAside(design);
  if (!answer.ok) return answer.problems;
  resultsStore.setState(({ variants }) => {
    const id = 1 + Math.max(0, ...variants.map((v) => v.id));
    return { variants: [...variants, { id, letter: letterOf(id), name, design, results: answer.results }] };
  });
  return [];
}

export function unpin(id: number): void {
  resultsStore.setState(({ variants }) => ({ variants: variants.filter((v) => v.id !== id) }));
}

export function unpinAll(): void {
  resultsStore.setState({ variants: [] });
}

/** A, B, … Z, then numbers. */
const letterOf = (id: number) => (id <= 26 ? String.fromCharCode(64 + id) : String(id));
