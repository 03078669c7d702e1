import type { ComponentType } from 'react';
import type { Design, Results } from '../../core';
import type { Chart } from '../drawing/chart';
import type { OtherChart } from '../drawing/overlay';
import type { Table } from '../state/own-presets';
import type { Variant } from '../state/results';

export interface EntryGroup {
  title: string;
  /** Paths of the design file; one that the design's kind of shape, layout or load does not have is left out. */
  entries: string[];
  /** Paths that may be left empty. */
  optional?: string[];
  /** A table to pick a group of entries from. */
  preset?: Table;
  /** Another way to an entry of the group, below its table. */
  Tool?: ComponentType;
}

export interface FigureProps {
  design: Design;
  results: Results;
  /** Variants pinned beside this design. */
  against?: readonly Variant[];
}

/** A chart of each variant, for `LineChart` to lay over the design's own. */
export const overlays = (
  against: readonly Variant[] = [],
  chartOf: (variant: Pick<Variant, 'design' | 'results'>) => Chart,
): OtherChart[] => against.map((variant) => ({ name: variant.letter, chart: chartOf(variant) }));

/** One page of one idea. */
export interface Worksheet {
  id: string;
  title: string;
  /** What the page settles, in a line. */
  purpose: string;
  groups: EntryGroup[];
  /** Paths of the results it owns. */
  results: string[];
  /** Beginnings of the entry paths whose cautions are shown here. */
  cautions: string[];
  Figure: ComponentType<FigureProps>;
  /** Takes the place of the standard results column where the page is more than inputs and results. */
  Panel?: ComponentType<FigureProps>;
}
