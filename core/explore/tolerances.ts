import type { Design } from '../design/schema';
import { toleranceRanges } from '../design/tolerance-ranges';
import type { Random } from '../numeric/random';
import type { UnitKind } from '../quantities';

export type ToleranceId = keyof typeof toleranceRanges;

/** How roughly a workshop builds: the greatest departure of each kind, 19 times in 20 within it, or always where it is even. */
export type Tolerances = Record<ToleranceId, number>;

/** One machine as it came out: for each tolerance its departures, in the tolerance's unit. */
export type Departures = Record<ToleranceId, number[]>;

export interface Tolerance {
  id: ToleranceId;
  label: string;
  unit: UnitKind;
  usual: number;
  most: number;
  /** How departures lie: as a bell about 0 with its 95 % at the limit, evenly from −limit to limit, or evenly from 0 to it. */
  law: 'bell' | 'even' | 'upward';
  /** Departures drawn for one machine: one, or one a magnet or a coil. */
  each: 'machine' | 'magnet' | 'coil';
  meaning: string;
}

/** Of a bell whose 95 % lie within a limit, the limit in standard deviations. */
export const BELL_LIMIT = 1.959964;

/** The registry of tolerances. */
export const tolerances: readonly Tolerance[] = [
  {
    id: 'gap',
    label: 'Gap between magnet faces',
    unit: 'length',
    ...toleranceRanges.gap,
    law: 'bell',
    each: 'machine',
    meaning: 'Spacers, thickness of the winding, magnets not quite flush',
  },
  {
    id: 'runOut',
    label: 'Run-out of the discs',
    unit: 'length',
    ...toleranceRanges.runOut,
    law: 'upward',
    each: 'machine',
    meaning: 'How far the gap opens and closes about its mean as the discs turn',
  },
  {
    id: 'remanence',
    label: 'Remanence of the magnets',
    unit: 'percent',
    ...toleranceRanges.remanence,
    law: 'bell',
    each: 'machine',
    meaning: 'Of the whole lot: half the range a grade is sold in',
  },
  {
    id: 'magnetPlace',
    label: 'Place of each magnet',
    unit: 'length',
    ...toleranceRanges.magnetPlace,
    law: 'bell',
    each: 'magnet',
    meaning: 'Along the pitch circle, each by itself',
  },
  {
    id: 'turns',
    label: 'Turns miscounted',
    unit: 'count',
    ...toleranceRanges.turns,
    law: 'bell',
    each: 'coil',
    meaning: 'In each coil by itself, whole turns',
  },
  {
    id: 'wire',
    label: 'Wire diameter',
    unit: 'percent',
    ...toleranceRanges.wire,
    law: 'even',
    each: 'machine',
    meaning: 'Of the bare conductor: IEC 60317-0-1 allows 1 %',
  },
  {
    id: 'airTemperature',
    label: 'Air temperature',
    unit: 'temperatureDifference',
    ...toleranceRanges.airTemperature,
    law: 'bell',
    each: 'machine',
    meaning: 'About the design’s own',
  },
  {
    id: 'magnetTemperature',
    label: 'Magnet temperature',
    unit: 'temperatureDifference',
    ...toleranceRanges.magnetTemperature,
    law: 'bell',
    each: 'machine',
    meaning: 'About the design’s own',
  },
  {
    id: 'wind',
    label: 'Mean wind of the site',
    unit: 'percent',
    ...toleranceRanges.wind,
    law: 'bell',
    each: 'machine',
    meaning: 'How well the year’s mean is known',
  },
];

export const usualTolerances = (): Tolerances => tolerancesOf({});

/** A design's own tolerances, the usual ones where it has none. */
export const tolerancesOf = ({ tolerances: own = {} }: Pick<Design, 'tolerances'>): Tolerances =>
  Object.fromEntries(tolerances.map(({ id, usual }) => [id, own[id] ?? usual])) as Tolerances;

/** How many departures a machine has of each kind. */
export function countOf({ each }: Tolerance, { discs, winding }: Pick<Design, 'discs' | 'winding'>): number {
  if (each === 'machine') return 1;
  if (each === 'coil') return winding.layout.kind === 'concentrated' ? winding.layout.coils : winding.phases;
  return discs.poles * (discs.arrangement === 'facing-pair' ? 2 : 1);
}

/** One departure. */
export function drawn({ law }: Pick<Tolerance, 'law'>, limit: number, random: Random): number {
  if (law === 'bell') return (limit / BELL_LIMIT) * random.normal();
  return limit * (law === 'even' ? 2 * random.uniform() - 1 : random.uniform());
}

/** A machine built just as drawn. */
export const noDepartures = (design: Design): Departures =>
  Object.fromEntries(tolerances.map((each) => [each.id, new Array<number>(countOf(each, design)).fill(0)])) as Departures;

/** One machine as a workshop may build it. Every kind is drawn, in the registry's order, whatever its limit, so that limits do not change the others' draws. */
export function drawnMachine(design: Design, limits: Tolerances, random: Random): Departures {
  return Object.fromEntries(
    tolerances.map((each) => [each.id, Array.from({ length: countOf(each, design) }, () => drawn(each, limits[each.id], random))]),
  ) as Departures;
}
