import type { Plant } from '../chain/operating-point';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import { studentFactor } from '../numeric/distribution';
import { steadyState } from '../rectifier/steady-state';
import { powerCeiling } from '../turbine/power-coefficient';
import type { TurbineResult } from '../turbine/stage';
import { windPower } from '../turbine/wind';
import type { Fitted } from './fit';
import { METER_ACCURACY, speedOf } from './readings';

/** How wrong one reading must be for the claim to come down to the ceiling. */
export interface WrongReading {
  what: 'wind' | 'volts' | 'amps' | 'diameter' | 'air density';
  /** As read, and what it would have to be. */
  read: number;
  needed: number;
  /** Of how many of its own standard deviations that would be. */
  deviations: number;
}

/** A wheel in the wind: what it took of it, and whether it can have. */
export interface FieldTest {
  row: number;
  wind: number;
  /** Into the load. [W] */
  watts: number;
  /** Power of the wind through the wheel's circle, gusts counted. [W] */
  windWatts: number;
  /** Load over wind. */
  overall: number;
  /** Share of the shaft's power that reaches the load, where the speed is known. */
  efficiency?: number;
  /** Of the wheel where the speed is known, else of wheel and generator together; with 95 % bounds for the wind. */
  coefficient: number;
  low: number;
  high: number;
  tipSpeedRatio?: number;
  /** Of the plan's curve at that ratio. */
  planned?: number;
  ceiling: number;
  /** `impossible`: above the ceiling whatever the wind was within its bounds; `doubtful`: above it as read. */
  verdict: 'possible' | 'doubtful' | 'impossible';
  /** Likeliest first; none where the claim is possible. */
  wrong: WrongReading[];
}

/** Standard deviations, relative: a handheld anemometer near but not in front of the wheel; a tape over the tips; a barometer and a thermometer not looked at. Common practice, no source. */
const WIND_ACCURACY = 0.05;
const DIAMETER_ACCURACY = 0.01;
const DENSITY_ACCURACY = 0.04;
/** Two standard deviations to each side hold 95 %. */
const BOUNDS = 1.96;

/**
 * What a field test says: power, coefficient, ratio, and whether any wheel can have done so.
 *
 * @param reading  Wind, volts and amps of the DC side, and speed or hertz where known. [m/s, V, A]
 * @param row      Its place. [-]
 * @param design   Wheel, air. [-]
 * @param plant    Generator, for the way from shaft to load. [-]
 * @param wheel    Turbine. [-]
 * @returns        Test; undefined where wind, volts or amps are missing. [-]
 *
 *   P = ½ρA v³ (1 + 3 s²/v²), s the wind's standard deviation: half of how far it was seen to go up and down
 *   the band: v at its 95 % bounds, which power takes to the third
 *
 * Omits     the wind's change over the wheel's height and from the anemometer's place to the wheel's.
 * Source    mean of a cube: third moment of a normal distribution; ceiling: turbine/power-coefficient.ts.
 * Checked   tests/core/bench/field-test.test.ts
 */
export function fieldTest(reading: Reading, row: number, design: Design, plant: Plant, wheel: TurbineResult): FieldTest | undefined {
  const { on, wind, volts, amps, windSpread = 0, accuracy = METER_ACCURACY } = reading;
  if (on !== 'dc' || !wind || !volts || !amps) return undefined;
  const { radius, airDensity } = wheel.wheel;
  const watts = volts * amps;
  const gusts = 1 + 3 * (windSpread / 2 / wind) ** 2;
  const windWatts = windPower(wind, radius, airDensity) * gusts;
  const overall = watts / windWatts;
  const speed = speedOf(reading, design.discs.poles / 2);
  const efficiency = speed && efficiencyAt(plant, speed.value, volts, reading.temperature ?? plant.airTemperature);
  const coefficient = overall / (efficiency ?? 1);
  const windShare = Math.hypot(WIND_ACCURACY, windSpread / 4 / wind);
  const atWind = (deviations: number) => coefficient / Math.max(0.2, 1 + deviations * windShare) ** 3;
  const [low, high] = [atWind(BOUNDS), atWind(-BOUNDS)];
  const tipSpeedRatio = speed && (speed.value * radius) / wind;
  const ceiling = powerCeiling(design.turbine.rows);
  const verdict = low > ceiling ? 'impossible' : coefficient > ceiling ? 'doubtful' : 'possible';
  const over = coefficient / ceiling;
  const wrongIf = (what: WrongReading['what'], read: number, power: number, share: number): WrongReading => {
    const factor = over ** (-1 / power);
    return { what, read, needed: read * factor, deviations: Math.abs(Math.log(factor)) / share };
  };
  const wrong =
    verdict === 'possible'
      ? []
      : [
          wrongIf('wind', wind, -3, windShare),
          wrongIf('volts', volts, 1, accuracy),
          wrongIf('amps', amps, 1, accuracy),
          wrongIf('diameter', design.turbine.diameter, -2, DIAMETER_ACCURACY),
          wrongIf('air density', airDensity, -1, DENSITY_ACCURACY),
        ].sort((a, b) => a.deviations - b.deviations);
  return {
    row,
    wind,
    watts,
    windWatts,
    overall,
    ...(efficiency !== undefined && { efficiency }),
    coefficient,
    low,
    high,
    ...(tipSpeedRatio !== undefined && { tipSpeedRatio, planned: wheel.wheel.coefficient(tipSpeedRatio) }),
    ceiling,
    verdict,
    wrong,
  };
}

/** Load over shaft at a speed, the DC side held at the volts that were read. */
function efficiencyAt(plant: Plant, speed: number, volts: number, temperature: number): number | undefined {
  const dc = { emf: volts, resistance: plant.dcCableResistance };
  const { dcAmps, emfWatts } = steadyState(plant.sourceAt(temperature), plant.bridge, dc, speed);
  const shaft = emfWatts + plant.eddyLoss(speed) + plant.bearingLoss(speed);
  return dcAmps > 0 && shaft > 0 ? (volts * dcAmps) / shaft : undefined;
}

/** Less of a planned coefficient than this tells nothing of the wheel. */
const LEAST_PLANNED = 0.02;

/**
 * The wheel's power coefficient over that of its planned curve.
 *
 * @param tests  Field tests; those without a speed, or beyond what any wheel can do, do not count. [-]
 * @returns      Factor with its 95 % interval; undefined where no test tells. [-]
 *
 * Source    weighted mean of logarithms, weights by the band; Student's t for two tests and more.
 * Checked   tests/core/bench/field-test.test.ts
 */
export function coefficientFit(tests: readonly FieldTest[]): Fitted | undefined {
  const usable = tests.filter(({ planned, verdict }) => planned !== undefined && planned > LEAST_PLANNED && verdict !== 'impossible');
  if (usable.length === 0) return undefined;
  const logs = usable.map(({ coefficient, planned = 1 }) => Math.log(coefficient / planned));
  const sigmas = usable.map(({ low, high }) => Math.log(high / low) / (2 * BOUNDS));
  const weights = sigmas.map((s) => s ** -2);
  const sum = weights.reduce((a, b) => a + b, 0);
  const mean = logs.reduce((total, l, i) => total + weights[i] * l, 0) / sum;
  const degrees = usable.length - 1;
  const scatter = degrees ? logs.reduce((total, l, i) => total + weights[i] * (l - mean) ** 2, 0) / degrees : 1;
  const half = (degrees ? studentFactor(0.95, degrees) : BOUNDS) * Math.sqrt(scatter / sum);
  return { value: Math.exp(mean), low: Math.exp(mean - half), high: Math.exp(mean + half) };
}
