import { benchReport, createSolver, type BenchReport, type Design } from '../../../core';

export interface BenchRequest {
  design: Design;
}

export type BenchAnswer = { ok: true; report: BenchReport } | { ok: false; message: string };

const solve = createSolver();

self.onmessage = ({ data: { design } }: MessageEvent<BenchRequest>) => {
  self.postMessage(answer(design));
};

function answer(design: Design): BenchAnswer {
  try {
    return { ok: true, report: benchReport(design, solve(design)) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
