import type { FigureProps } from '../worksheet';
import { ExpectedTable } from './expected-table';
import { ReadingsTable } from './readings-table';

export function Panel({ design, results }: FigureProps) {
  return (
    <>
      <ExpectedTable design={design} results={results} />
      <ReadingsTable readings={design.bench ?? []} design={design} results={results} />
    </>
  );
}
