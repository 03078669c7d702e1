import { createSolver, type Design, type Problem, type Results } from '../../core';

export interface Request {
  design: Design;
}

export type Answer = { ok: true; results: Results } | { ok: false; problems: Problem[] };

const solve = createSolver();

self.onmessage = (event: MessageEvent<Request>) => {
  self.postMessage(answer(event.data.design));
};

function answer(design: Design): Answer {
  try {
    return { ok: true, results: solve(design) };
  } catch (error) {
    return { ok: false, problems: problemsOf(error) };
  }
}

function problemsOf(error: unknown): Problem[] {
  if (error instanceof Error && 'problems' in error && Array.isArray(error.problems)) return error.problems as Problem[];
  return [{ where: '', message: error instanceof Error ? error.message : String(error) }];
}
