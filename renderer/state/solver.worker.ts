import { createSolver, type Design, type Problem, type Results } from '../../core';

export interface Request {
  design: Design;
}

export type Answer = { ok: true; results: Results } | { ok: false; problems: Problem[] };

type Spectrum = Results['stages']['field']['spectrum'];

/** An answer on its way. The field's spectrum is most of its weight and often the one before: then it is left out, and the page keeps what it has. */
export interface Sent {
  answer: Answer;
  /** None: the last one sent. */
  spectrum?: Spectrum;
}

const solve = createSolver();

self.onmessage = (event: MessageEvent<Request>) => {
  const { design } = event.data;
  const reply = answer(design);
  self.postMessage(sent(reply));
  if (reply.ok && warming === undefined) {
    warming = ROUNDS;
    warm(design);
  }
};

function answer(design: Design): Answer {
  try {
    return { ok: true, results: solve(design) };
  } catch (error) {
    return { ok: false, problems: problemsOf(error) };
  }
}

let last: Spectrum | undefined;

function sent(reply: Answer): Sent {
  if (!reply.ok) return { answer: reply };
  const { results } = reply;
  const { spectrum, ...field } = results.stages.field;
  const bare = { ...results, stages: { ...results.stages, field: field as Results['stages']['field'] } };
  const isNew = spectrum !== last;
  last = spectrum;
  return { answer: { ok: true, results: bare }, ...(isNew && { spectrum }) };
}

function problemsOf(error: unknown): Problem[] {
  if (error instanceof Error && 'problems' in error && Array.isArray(error.problems)) return error.problems as Problem[];
  return [{ where: '', message: error instanceof Error ? error.message : String(error) }];
}

/** After so many solves all that an edit works through has been compiled; the first ones take ten times as long. */
const ROUNDS = 30;
let warming: number | undefined;

/** Solves the design a few times over with a little less clearance each time, one between any two requests, so that the first edit is as quick as the tenth. */
function warm(design: Design): void {
  const solveAside = createSolver();
  const round = () => {
    if (!warming) return;
    const { discs } = design;
    const runningClearance = discs.runningClearance * (1 - 1e-4 * warming);
    solveAside({ ...design, discs: { ...discs, runningClearance } });
    warming--;
    setTimeout(round);
  };
  setTimeout(round);
}
