import type { Design } from '../design/schema';
import type { Random } from '../numeric/random';
import type { UnitKind } from '../quantities';

export type ToleranceId =
  | 'gap'
  | 'runOut'
  | 'remanence'
  | 'magnetPlace'
  | 'turns'
  | 'wire'
  | 'airTemperature'
  | 'magnetTemperature'
  | 'wind';

/** How roughly a workshop builds: the greatest departure of each kind, 19 times in 20 within it, or always where it is even. */
export type Tolerances = Record<ToleranceId, number>;

/** One machine as it came out: for each tolerance its departures, in the tolerance's unit. */
export type Departures = Record<ToleranceId, number[]>;

export interface Tolerance {
  id: ToleranceId;
  label: string;
  unit: UnitKind;
  /** What a careful amateur reaches. Common practice, no source, but where one is named. */
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

/**
 * The registry of tolerances. Wire: IEC 60317-0-1 allows the conductor ± 1 % from 0.3 mm up (from memory).
 */
export const tolerances: readonly Tolerance[] = [
  {
    id: 'gap',
    label: 'Gap between magnet faces',
    unit: 'length',
    usual: 0.5e-3,
    most: 5e-3,
    law: 'bell',
    each: 'machine',
    meaning: 'Spacers, thickness of the winding, magnets not quite flush',
  },
  {
    id: 'runOut',
    label: 'Run-out of the discs',
    unit: 'length',
    usual: 0.5e-3,
    most: 5e-3,
    law: 'upward',
    each: 'machine',
    meaning: 'How far the gap opens and closes about its mean as the discs turn',
  },
  {
    id: 'remanence',
    label: 'Remanence of the magnets',
    unit: 'percent',
    usual: 0.03,
    most: 0.2,
    law: 'bell',
    each: 'machine',
    meaning: 'Of the whole lot: half the range a grade is sold in',
  },
  {
    id: 'magnetPlace',
    label: 'Place of each magnet',
    unit: 'length',
    usual: 1e-3,
    most: 10e-3,
    law: 'bell',
    each: 'magnet',
    meaning: 'Along the pitch circle, each by itself',
  },
  {
    id: 'turns',
    label: 'Turns miscounted',
    unit: 'count',
    usual: 1,
    most: 20,
    law: 'bell',
    each: 'coil',
    meaning: 'In each coil by itself, whole turns',
  },
  {
    id: 'wire',
    label: 'Wire diameter',
    unit: 'percent',
    usual: 0.01,
    most: 0.1,
    law: 'even',
    each: 'machine',
    meaning: 'Of the bare conductor: IEC 60317-0-1 allows 1 %',
  },
  {
    id: 'airTemperature',
    label: 'Air temperature',
    unit: 'temperatureDifference',
    usual: 10,
    most: 50,
    law: 'bell',
    each: 'machine',
    meaning: 'About the design’s own',
  },
  {
    id: 'magnetTemperature',
    label: 'Magnet temperature',
    unit: 'temperatureDifference',
    usual: 10,
    most: 60,
    law: 'bell',
    each: 'machine',
    meaning: 'About the design’s own',
  },
  {
    id: 'wind',
    label: 'Mean wind of the site',
    unit: 'percent',
    usual: 0.1,
    most: 0.5,
    law: 'bell',
    each: 'machine',
    meaning: 'How well the year’s mean is known',
  },
];

export const usualTolerances = (): Tolerances => Object.fromEntries(tolerances.map(({ id, usual }) => [id, usual])) as Tolerances;

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
