import type { Matrix } from '../numeric/symmetric';
import { FAILED, firstFailure, type Level } from './events';
import { harmonicsAt } from './harmonics';
import { keyOf, modeUnder, type Mode } from './mode';
import type { Waves } from './symmetry';
import type { Topology } from './topology';

/** What drives the flow: harmonics of each phase's EMF over the electrical angle. */
export interface Drive extends Waves {
  /** Of the shaft. [rad/s] */
  speed: number;
  /** Electrical angular frequency. [rad/s] */
  omega: number;
  inductance: Matrix;
}

/** A stretch of one mode, between two angles. [electrical rad] */
export interface Stretch {
  mode: Mode;
  from: number;
  to: number;
  /** Free parts of the degrees of freedom at `from`. */
  free: Float64Array;
  /** The guard whose failure ended it, its slope there, and by how much the event changes the slope of the currents. [A/rad] */
  event?: { guard: number; slope: number; bend: Float64Array };
}

/** What became of some starting currents. */
export interface Passage {
  end: Float64Array;
  stretches: Stretch[];
}

/** All guards of a mode at one angle. [A or V, per electrical rad] Flat: this is the innermost loop of every curve. */
interface Levels {
  values: Float64Array;
  slopes: Float64Array;
}

const noLevels = (count: number): Levels => ({ values: new Float64Array(count), slopes: new Float64Array(count) });
const levelOf = ({ values, slopes }: Levels, g: number): Level => ({ value: values[g], slope: slopes[g] });

/** Guards are looked at no further apart. [electrical rad] */
const STEP = Math.PI / 24;
/** After an event, where guards may dip for a moment, the first look comes after this share of a step; then steps double. */
const FIRST_LOOK = 0.25;
const MOST_EVENTS = 400;

/**
 * The exact flow of the currents from one event to the next.
 *
 * @param topology  Circuit. [-]
 * @param drive     EMFs and inductance. [V, H]
 * @param rooms     Modes that are no longer needed, to be written over. [-]
 * @returns         Function from starting currents, start and end angle to the currents at the end and the stretches passed. [A, rad]
 *
 * Source    linear systems with constant coefficients between events: modal decomposition and phasors.
 * Checked   tests/laws/rectifier.test.ts
 */
export function flowOf(topology: Topology, drive: Drive, rooms: Mode[] = []) {
  const modes = new Map<number, Mode>();
  const modeFor = (signs: readonly number[]) => {
    const key = keyOf(signs);
    let found = modes.get(key);
    if (!found) modes.set(key, (found = rooms[modes.size] = modeUnder(topology.space(signs), drive, rooms[modes.size])));
    return found;
  };
  const { orders } = drive;
  const m = drive.cos.length;
  const harmonics = orders.length;
  const cosines = new Float64Array(harmonics);
  const sines = new Float64Array(harmonics);
  const turnTo = (angle: number) => harmonicsAt(angle, orders, cosines, sines);
  const left = new Float64Array(m);

  /** Turns to an angle and lets the free parts die away until there. */
  const lookAt = ({ rates, count }: Mode, free: Float64Array, from: number, angle: number) => {
    turnTo(angle);
    for (let j = 0; j < count; j++) left[j] = free[j] * Math.exp(-rates[j] * (angle - from));
  };
  /** Writes one guard and its slope at the angle looked at to a place. */
  const writeLevel = ({ guards, rates, count }: Mode, g: number, levels: Levels, place: number) => {
    let value = guards.constant[g];
    let slope = 0;
    for (let n = 0, h = g * harmonics; n < harmonics; n++, h++) {
      const c = guards.cos[h];
      const s = guards.sin[h];
      value += c * cosines[n] + s * sines[n];
      slope += orders[n] * (s * cosines[n] - c * sines[n]);
    }
    for (let j = 0; j < count; j++) {
      const share = guards.free[g * count + j] * left[j];
      value += share;
      slope -= rates[j] * share;
    }
    levels.values[place] = value;
    levels.slopes[place] = slope;
  };
  const writeLevels = (mode: Mode, free: Float64Array, from: number, angle: number, levels: Levels) => {
    const { count } = mode.guards;
    if (levels.values.length < count) [levels.values, levels.slopes] = [new Float64Array(count), new Float64Array(count)];
    lookAt(mode, free, from, angle);
    for (let g = 0; g < count; g++) writeLevel(mode, g, levels, g);
  };

  /** Free parts that make the currents what they are. */
  const freeOf = ({ count, flux, constant, cos, sin }: Mode, currents: Float64Array, angle: number): Float64Array => {
    turnTo(angle);
    const free = new Float64Array(count);
    for (let j = 0; j < count; j++) {
      let y = -constant[j];
      for (let i = 0; i < m; i++) y += flux[i * count + j] * currents[i];
      for (let n = 0, at = j * harmonics; n < harmonics; n++, at++) y -= cos[at] * cosines[n] + sin[at] * sines[n];
      free[j] = y;
    }
    return free;
  };

  const currentsAt = ({ count, constant, cos, sin, rates, currents }: Mode, free: Float64Array, from: number, angle: number) => {
    turnTo(angle);
    const value = new Float64Array(m);
    for (let j = 0; j < count; j++) {
      let y = free[j] * Math.exp(-rates[j] * (angle - from)) + constant[j];
      for (let n = 0, at = j * harmonics; n < harmonics; n++, at++) y += cos[at] * cosines[n] + sin[at] * sines[n];
      for (let i = 0; i < m; i++) value[i] += currents[i * count + j] * y;
    }
    return value;
  };

  /** Adds the slope of the currents at an angle, so many times, to a sum. */
  const writeSlope = (mode: Mode, free: Float64Array, from: number, angle: number, sum: Float64Array, times: number) => {
    const { count, cos, sin, rates, currents } = mode;
    turnTo(angle);
    for (let j = 0; j < count; j++) {
      let slope = -rates[j] * free[j] * Math.exp(-rates[j] * (angle - from));
      for (let n = 0, at = j * harmonics; n < harmonics; n++, at++) slope += orders[n] * (sin[at] * cosines[n] - cos[at] * sines[n]);
      for (let i = 0; i < m; i++) sum[i] += times * currents[i * count + j] * slope;
    }
  };

  const one = noLevels(1);
  let behind = noLevels(0);
  let ahead = noLevels(0);

  /** Made apart from the loop over the guards, which would else make room for it at every turn. */
  const guardOf = (mode: Mode, free: Float64Array, from: number, g: number) => (angle: number) => {
    lookAt(mode, free, from, angle);
    writeLevel(mode, g, one, 0);
    return levelOf(one, 0);
  };

  /** The first guard to fail between `began`, where all hold and are looked at in `behind`, and `to`; −1 when none does. */
  const failureIn = (mode: Mode, free: Float64Array, began: number, to: number) => {
    const { count } = mode.guards;
    let angle = began;
    while (angle < to) {
      const next = Math.min(angle + Math.min(STEP, Math.max(angle - began, FIRST_LOOK * STEP)), to);
      writeLevels(mode, free, began, next, ahead);
      let found = -1;
      let failed = next;
      let slope = 0;
      for (let g = 0; g < count; g++) {
        if (ahead.values[g] >= FAILED && (behind.slopes[g] >= 0 || ahead.slopes[g] <= 0)) continue;
        const at = guardOf(mode, free, began, g);
        const failure = firstFailure(at, angle, levelOf(behind, g), failed, found < 0 ? levelOf(ahead, g) : at(failed));
        if (failure === undefined) continue;
        found = g;
        failed = failure;
        slope = one.slopes[0];
      }
      if (found >= 0) return { guard: found, angle: failed, slope };
      angle = next;
      [behind, ahead] = [ahead, behind];
    }
    return { guard: -1, angle: to, slope: 0 };
  };

  return (start: ArrayLike<number>, from: number, to: number): Passage => {
    const stretches: Stretch[] = [];
    let mode = modeFor(topology.modeOf(start));
    let currents = onto(mode, start);
    let angle = from;
    let event: Stretch['event'];
    for (let events = 0; events < MOST_EVENTS; events++) {
      const began = angle;
      const free = freeOf(mode, currents, began);
      writeLevels(mode, free, began, began, behind);
      const already = worst(behind.values, mode.guards.count);
      if (already >= 0) {
        mode = modeFor(mode.space.guards[already].next);
        currents = onto(mode, currents);
        continue;
      }
      if (event) writeSlope(mode, free, began, began, event.bend, -1);
      const failure = failureIn(mode, free, began, to);
      angle = failure.angle;
      currents = currentsAt(mode, free, began, angle);
      const stretch: Stretch = { mode, from: began, to: angle, free };
      stretches.push(stretch);
      if (failure.guard < 0) break;
      event = failure.slope < 0 ? { guard: failure.guard, slope: failure.slope, bend: new Float64Array(m) } : undefined;
      if (event) writeSlope(mode, free, began, angle, event.bend, 1);
      stretch.event = event;
      mode = modeFor(mode.space.guards[failure.guard].next);
      currents = onto(mode, currents);
    }
    return { end: currents, stretches };
  };
}

/** The guard that has failed the furthest, −1 when none has. */
function worst(values: Float64Array, count: number): number {
  let found = -1;
  for (let g = 0; g < count; g++) if (values[g] < (found < 0 ? FAILED : values[found])) found = g;
  return found;
}

/** The nearest currents the mode allows, in the measure of stored energy. */
function onto({ count, flux, currents: w }: Mode, currents: ArrayLike<number>): Float64Array {
  const next = new Float64Array(currents.length);
  for (let j = 0; j < count; j++) {
    let y = 0;
    for (let i = 0; i < currents.length; i++) y += flux[i * count + j] * currents[i];
    for (let i = 0; i < currents.length; i++) next[i] += w[i * count + j] * y;
  }
  return next;
}
