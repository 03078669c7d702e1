import type { ControllerVerdict } from '../controller/stage';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Reel } from '../design/shelf';
import type { UnitKind } from '../quantities';

/** What machines are weighed by. */
export interface Objectives {
  /** [m/s] Infinity for a machine that never cuts in. */
  cutInWind: number;
  /** [J] */
  yearEnergy: number;
  /** Between the coils at rated wind and their limit. [K] */
  temperatureMargin: number;
  /** Least room to a number of the controller's data sheet, as a share of it; 1 where there is no controller. [-] */
  controllerMargin: number;
  /** Mass of the wire, or its price where prices are what counts: NaN for wire that no reel holds. [kg or money] */
  cost: number;
}

export type ObjectiveId = keyof Objectives;

export interface Objective {
  id: ObjectiveId;
  label: string;
  unit: UnitKind;
  /** Which way is better. */
  best: 'least' | 'most';
  meaning: string;
}

/** The registry of objectives, in the order of their tables. */
export const objectives: readonly Objective[] = [
  { id: 'cutInWind', label: 'Cut-in wind', unit: 'windSpeed', best: 'least', meaning: 'Wind in which it begins to charge' },
  { id: 'yearEnergy', label: 'Energy a year', unit: 'energy', best: 'most', meaning: 'Into the load, at the site’s winds' },
  {
    id: 'temperatureMargin',
    label: 'Coils below limit',
    unit: 'temperatureDifference',
    best: 'most',
    meaning: 'At rated wind, below the lowest limit of covering and former',
  },
  {
    id: 'controllerMargin',
    label: 'Controller’s room',
    unit: 'percent',
    best: 'most',
    meaning: 'Least room to any number of its data sheet, as a share of that number',
  },
  { id: 'cost', label: 'Wire', unit: 'mass', best: 'least', meaning: 'Mass of the wire, or its price where every reel has one' },
];

/** Prices are what counts only where every reel has one; else masses are compared. */
export const isPriced = (shelf: readonly Reel[]): boolean => shelf.length > 0 && shelf.every(({ price }) => price !== undefined);

/** The registry in the words of a shelf: by price or by mass. */
export const objectivesFor = (shelf: readonly Reel[]): readonly Objective[] =>
  isPriced(shelf) ? objectives.map((each) => (each.id === 'cost' ? { ...each, label: 'Price of wire', unit: 'price' } : each)) : objectives;

/** The objectives of a solved machine. `price`: per kg of its wire, where prices are what counts. */
export function objectivesOf({ cutIn, year, rated, controller, coils }: Results, price?: number): Objectives {
  return {
    cutInWind: cutIn.wind ?? Infinity,
    yearEnergy: year.energy,
    temperatureMargin: rated.limitTemperature - rated.coilTemperature,
    controllerMargin: controller.reduce((least, verdict) => Math.min(least, roomOf(verdict)), 1),
    cost: coils.wireMass * (price ?? 1),
  };
}

/** Price per kg of a reel where prices are what counts; NaN, which nothing is weighed by, for wire that no reel holds. */
export const priceOf = (reel: Reel | undefined, shelf: readonly Reel[]): number | undefined =>
  isPriced(shelf) ? (reel?.price ?? NaN) : undefined;

/** Diameters nearer than this are the same wire. [m] */
const SAME_WIRE = 1e-6;

/** The reel on a shelf that a design's wire is of. */
export const reelOf = ({ winding: { wire } }: Pick<Design, 'winding'>, shelf: readonly Reel[]): Reel | undefined =>
  shelf.find(({ metal, conductorDiameter }) => metal === wire.metal && Math.abs(conductorDiameter - wire.conductorDiameter) < SAME_WIRE);

/** Room to one limit as a share of it, negative past it. */
function roomOf({ verdict, value, limit }: ControllerVerdict): number {
  const room = Math.abs(1 - value / limit);
  return verdict === 'fail' ? -room : Math.min(1, room);
}

/** Objectives as numbers of which less is better, in the registry's order. */
export function vectorOf(values: Objectives): number[] {
  return objectives.map(({ id, best }) => (best === 'least' ? values[id] : -values[id]));
}
