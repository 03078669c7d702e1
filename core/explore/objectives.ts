import type { ControllerVerdict } from '../controller/stage';
import type { Results } from '../chain/results';
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
  /** Mass of the wire, or its price where the reel has one. [kg or money] */
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

/** Price per kg that counts for a reel: only where every reel has one, else masses are compared. */
export function priceOf(reel: Reel, shelf: readonly Reel[]): number | undefined {
  return shelf.length > 0 && shelf.every(({ price }) => price !== undefined) ? reel.price : undefined;
}

/** Room to one limit as a share of it, negative past it. */
function roomOf({ verdict, value, limit }: ControllerVerdict): number {
  const room = Math.abs(1 - value / limit);
  return verdict === 'fail' ? -room : Math.min(1, room);
}

/** Objectives as numbers of which less is better, in the registry's order. */
export function vectorOf(values: Objectives): number[] {
  return objectives.map(({ id, best }) => (best === 'least' ? values[id] : -values[id]));
}
