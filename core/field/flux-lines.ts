import type { FieldFunction } from '../magnets/shapes';

/** Place in the cut along the pitch circle laid flat: along the circle from magnet 0, and along the axle. [m] */
export type Place = [s: number, z: number];

/** A rectangle that flux lines end on. [m] */
export interface Solid {
  from: number;
  to: number;
  low: number;
  high: number;
}

export interface FluxSection {
  pitchRadius: number;
  poles: number;
  /** Heights between which lines are followed. [m] */
  bottom: number;
  top: number;
  /** Magnets and plates. */
  solids: readonly Solid[];
  /** Heights at which flux passes once, or ends, in rising order: mid-plane between two discs, a plate's face. [m] */
  planes: readonly number[];
}

const SAMPLES = 64;
/** Steps to a pole pitch, and the most for one line. */
const STEPS = 120;
const MOST_STEPS = 400;

/**
 * Flux lines along the pitch circle for one pole, the same flux per length of radius between any two neighbours.
 *
 * @param field    Flux density at x, y, z. [m] → [T]
 * @param section  Pitch radius, heights and what lines end on. [m]
 * @param lines    Lines of one pole, about. [-]
 * @returns        Lines of the pole about s = 0; the next pole's are the same, a pole pitch on. [m]
 *
 * Valid     where the field along the radius is small, as it is at the middle of a magnet; past the magnets' ends lines would leave the cut.
 * Omits     what runs inside magnets and plates.
 * Source    ds/B_s = dz/B_z, midpoint steps; begun where the flux through the planes and between two poles is shared out evenly.
 * Checked   tests/core/field/flux-lines.test.ts
 */
export function fluxLines(field: FieldFunction, section: FluxSection, lines: number): Place[][] {
  const { pitchRadius, poles, bottom, top, solids, planes } = section;
  const pitch = (2 * Math.PI * pitchRadius) / poles;
  const at = ([s, z]: Place): Place => {
    const [cosine, sine] = [Math.cos(s / pitchRadius), Math.sin(s / pitchRadius)];
    const [bx, by, bz] = field(pitchRadius * cosine, pitchRadius * sine, z);
    return [by * cosine - bx * sine, bz];
  };
  const isInside = ([s, z]: Place) => z < bottom || z > top || solids.some((b) => s > b.from && s < b.to && z > b.low && z < b.high);

  const levels = [bottom, ...planes, top];
  const between = levels.slice(1).map((high, i) => straight([pitch / 2, levels[i]], [pitch / 2, high]));
  const across = planes.flatMap((z) => [straight([-pitch / 2, z], [0, z]), straight([0, z], [pitch / 2, z])]);
  const through = (places: Place[], component: 0 | 1) => ({
    places,
    sums: runningFlux(
      places,
      places.map((place) => (isInside(place) ? 0 : Math.abs(at(place)[component]))),
    ),
  });
  const fluxes = [...across.map((places) => through(places, 1)), ...between.map((places) => through(places, 0))];
  const share = fluxes.reduce((sum, { sums }) => sum + sums[SAMPLES], 0) / lines;
  if (!(share > 0)) return [];
  return fluxes
    .flatMap(({ places, sums }) => evenly(places, sums, Math.round(sums[SAMPLES] / share)))
    .map((seed) => [...follow(at, isInside, seed, -pitch / STEPS).reverse(), seed, ...follow(at, isInside, seed, pitch / STEPS)]);
}

const straight = (from: Place, to: Place): Place[] => Array.from({ length: SAMPLES + 1 }, (_, i) => mix(from, to, i / SAMPLES));

const mix = (a: Place, b: Place, share: number): Place => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];

function runningFlux(places: Place[], density: number[]): number[] {
  const length = Math.hypot(places[1][0] - places[0][0], places[1][1] - places[0][1]);
  let sum = 0;
  return density.map((b, i) => (i === 0 ? 0 : (sum += ((b + density[i - 1]) / 2) * length)));
}

/** Places in the middle of equal shares of the flux. */
function evenly(places: Place[], sums: number[], count: number): Place[] {
  return Array.from({ length: count }, (_, k) => {
    const flux = ((k + 0.5) / count) * sums[SAMPLES];
    const i = sums.findIndex((sum) => sum >= flux);
    return mix(places[i - 1], places[i], (flux - sums[i - 1]) / (sums[i] - sums[i - 1]));
  });
}

/** A line from a place, along the field or against it, until it ends on something. */
function follow(at: (place: Place) => Place, isInside: (place: Place) => boolean, from: Place, step: number): Place[] {
  const line: Place[] = [];
  let here = from;
  for (let k = 0; k < MOST_STEPS; k++) {
    const next = moved(here, at(moved(here, at(here), step / 2)), step);
    if (next[0] === here[0] && next[1] === here[1]) return line; // no field behind steel
    if (isInside(next)) {
      let [low, high] = [0, 1];
      for (let pass = 0; pass < 12; pass++) {
        const middle = (low + high) / 2;
        if (isInside(mix(here, next, middle))) high = middle;
        else low = middle;
      }
      line.push(mix(here, next, low));
      return line;
    }
    line.push(next);
    here = next;
  }
  return line;
}

function moved([s, z]: Place, [bs, bz]: Place, by: number): Place {
  const size = Math.hypot(bs, bz);
  return size > 0 ? [s + (by * bs) / size, z + (by * bz) / size] : [s, z];
}
