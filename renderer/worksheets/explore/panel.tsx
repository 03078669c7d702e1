import { useDesign } from '../../state/design';
import type { FigureProps } from '../worksheet';
import { InversePanel } from './inverse-panel';
import { SearchEntries, SearchPanel } from './search-panel';
import { Shelf } from './shelf';
import { SpreadPanel } from './spread-panel';
import { WhyNotPanel } from './why-not-panel';

/** The reels in hand, what can be built from them, and how surely. */
export function Panel({ design, results }: FigureProps) {
  const reels = useDesign((s) => s.design.shelf);
  return (
    <>
      <Shelf reels={reels ?? []} />
      <SearchEntries />
      <SearchPanel design={design} results={results} />
      <WhyNotPanel />
      <InversePanel results={results} />
      <SpreadPanel />
    </>
  );
}
