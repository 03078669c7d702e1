import type { FigureProps } from '../worksheet';
import { ExpectedTable } from './expected-table';
import { ReadingsTable } from './readings-table';
import { useBenchReport } from './use-report';
import { VerdictPanel } from './verdict-panel';

/** What the meter must read, what it did read, and what that means. */
export function Panel({ design, results }: FigureProps) {
  const state = useBenchReport(design);
  return (
    <>
      <VerdictPanel {...state} />
      <ReadingsTable report={state.report} />
      <ExpectedTable design={design} results={results} />
    </>
  );
}
