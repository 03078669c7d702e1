import type { FigureProps } from '../worksheet';
import { Candidates } from './candidates';
import { Shelf } from './shelf';

/** The reels in hand, and what each could become. */
export function Panel({ design }: FigureProps) {
  return (
    <>
      <Shelf reels={design.shelf ?? []} />
      <Candidates />
    </>
  );
}
