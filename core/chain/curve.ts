import { refined, type Mix } from '../numeric/refine';
import type { LoadPoint } from '../turbine/match';
import { FLATTEST } from './operating-point';
import type { Responder, Response } from './responder';
import type { CurvePoint } from './results';

/** Places on the curve: before current flows and from there on. */
const IDLE = 11;
const DRAWING = 49;
/** Between two places the curve may be solved at so many steps: about a kink it is. */
const STEPS = 2;
/** Every so many steps it is solved, and in the middle between, whatever it looks like. */
const STRIDE = 8 * STEPS;
/**
 * A place foretold better than this is not looked at more closely: its surroundings are then known to about a tenth of it. Power as a share of what the
 * shaft takes there and a little of what it takes at the top; temperature as a share of it in °C, and in kelvin.
 */
const NEAR = { power: 5e-3, littleOfTop: 2e-2, volts: 1e-2, rise: 0.02, temperature: 0.5 };
/** Between two places the wheel meets the load at so many straight pieces. */
const PIECES = 2;

/** The generator on its load over the shaft's speed. */
export interface LoadCurve {
  /** At some sixty speeds, rising. */
  responses: Response[];
  /** Read off at any speed. [rad/s] */
  at: (speed: number) => Response;
  /** Shaft power at speeds close enough to go straight between them. */
  load: LoadPoint[];
}

/** Places over a range of speeds in which the curve is smooth. */
interface Range {
  count: number;
  speedAt: (place: number) => number;
  placeAt: (speed: number) => number;
}

/**
 * The curve from near standstill to `top`. [rad/s] From cut-in on the places lie as the squares of whole numbers: above a threshold currents grow like
 * powers of the square root of what speed goes beyond it, so that they are smooth there.
 */
export function loadCurve(respond: Responder, cutIn: number | undefined, top: number): LoadCurve {
  if (cutIn === undefined || cutIn >= 0.9 * top) return over(respond, evenly(IDLE + DRAWING, top));
  const idle = over(respond, evenly(IDLE, cutIn));
  const drawing = over(respond, {
    count: DRAWING,
    speedAt: (place) => cutIn + (top - cutIn) * (place / (DRAWING - 1)) ** 2,
    placeAt: (speed) => (DRAWING - 1) * Math.sqrt((speed - cutIn) / (top - cutIn)),
  });
  return {
    responses: [...idle.responses, ...drawing.responses],
    load: [...idle.load, ...drawing.load],
    at: (speed) => (speed < cutIn ? idle : drawing).at(speed),
  };
}

const evenly = (count: number, top: number): Range => ({
  count,
  speedAt: (place) => (top * (place + 0.5)) / count,
  placeAt: (speed) => (speed * count) / top - 0.5,
});

function over(respond: Responder, { count, speedAt, placeAt }: Range): LoadCurve {
  let most = 0;
  const { at, part } = refined<Response>(STEPS * (count - 1) + 1, STRIDE, {
    work: (step, guess) => {
      const response = respond(speedAt(step / STEPS), guess);
      most = Math.max(most, response.point.shaftWatts);
      return response;
    },
    mix: mixed,
    far: ({ point: guess }, { point }) => {
      const watts = NEAR.power * (point.shaftWatts + NEAR.littleOfTop * most);
      const kelvin = NEAR.temperature + NEAR.rise * Math.abs(point.coilTemperature);
      return (
        Math.abs(guess.dcWatts - point.dcWatts) > watts ||
        Math.abs(guess.shaftWatts - point.shaftWatts) > watts ||
        Math.abs(guess.dcVolts - point.dcVolts) > NEAR.volts * point.dcVolts ||
        Math.abs(guess.coilTemperature - point.coilTemperature) > kelvin
      );
    },
    alike: (a, b) => a.limited === b.limited,
    possible: ({ point }) => POWERS.every((key) => point[key] >= 0),
  });
  const pieces = PIECES * (count - 1);
  return {
    responses: Array.from({ length: count }, (_, place) => at(STEPS * place)),
    load: Array.from({ length: pieces + 1 }, (_, i) => ({
      speed: speedAt(i / PIECES),
      shaftWatts: part((STEPS * i) / PIECES, shaftWatts),
    })),
    // A little beyond the ends, where an idle stretch begins and ends, the cubic goes on.
    at: (speed) => at(STEPS * Math.min(count - 0.5, Math.max(-0.5, placeAt(speed)))),
  };
}

const shaftWatts: Mix<Response, number> = (responses, weights) => {
  let sum = 0;
  for (let i = 0; i < responses.length; i++) sum += weights[i] * responses[i].point.shaftWatts;
  return sum;
};

/** None of these can be negative. */
const POWERS = ['dcAmps', 'dcWatts', 'copperLoss', 'diodeLoss', 'cableLoss', 'eddyLoss', 'bearingLoss'] as const;

/** Responses added up by weights: losses then add up to the shaft's power as they did in each. */
const mixed: Mix<Response, Response> = (responses, weights) => {
  const [first] = responses;
  const point: CurvePoint = { ...first.point };
  for (const key of Object.keys(point) as (keyof CurvePoint)[]) {
    let sum = 0;
    for (let i = 0; i < responses.length; i++) sum += weights[i] * responses[i].point[key];
    point[key] = sum;
  }
  const start = first.start.map(() => 0);
  const settling = { temperature: 0, slope: 0 };
  for (let i = 0; i < responses.length; i++) {
    for (let k = 0; k < start.length; k++) start[k] += weights[i] * responses[i].start[k];
    settling.temperature += weights[i] * responses[i].settling.temperature;
    settling.slope += weights[i] * responses[i].settling.slope;
  }
  settling.slope = Math.min(settling.slope, FLATTEST);
  return { point, limited: responses.every(({ limited }) => limited), start, settling };
};
