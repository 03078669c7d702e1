import type { Caution } from '../problem';
import type { Gust } from './gust';
import { runsAway, type Plant } from './operating-point';
import type { MatchPoint } from './results';

/** The lowest of the coils' limits and the entry that sets it. */
interface Limit {
  /** [°C] */
  temperature: number;
  where: string;
}

/** How long the extreme operating gust lasts: IEC 61400-2 (from memory). [s] */
const GUST_SECONDS = 10.5;

/** What to say of the coils at rated wind. [°C] */
export function ratedHeatCautions(plant: Plant, temperature: number, limit: Limit): Caution[] {
  if (temperature <= limit.temperature || runsAway(plant, temperature)) return [];
  return [
    {
      severity: 'danger',
      where: limit.where,
      message: `At rated wind the coils settle at ${temperature.toFixed(0)} °C, above their limit of ${limit.temperature.toFixed(0)} °C: thicker wire, fewer amps, or a former and covering that stand more.`,
    },
  ];
}

/** Thermal runaway in a wind that may last. */
export function runawayCautions(plant: Plant, match: readonly MatchPoint[], { where }: Limit): Caution[] {
  const first = match.find(({ coilTemperature }) => runsAway(plant, coilTemperature));
  if (!first) return [];
  return [
    {
      severity: 'danger',
      where,
      message: `From ${first.wind.toFixed(1)} m/s on the coils’ temperature runs away: no temperature below the melting point of the wire, ${plant.melts.toFixed(0)} °C, carries off what is lost in them. They burn out long before; the curves beyond are worked out at the melting point. Thicker wire or fewer amps, or furl before.`,
    },
  ];
}

/** What the greatest gust does to coils that rated wind leaves whole: a warning where they pass their limit before a gust is over. [m/s] */
export function gustHeatCautions({ seconds, runsAway }: Gust, wind: number, limit: Limit): Caution[] {
  if (seconds === null || seconds === 0) return [];
  const time = seconds < 90 ? `${seconds.toPrecision(2)} s` : `${(seconds / 60).toPrecision(2)} minutes`;
  const end = runsAway ? 'and their temperature runs away: nothing but less wind stops it' : 'and go on warming';
  return [
    {
      severity: seconds <= GUST_SECONDS ? 'warning' : 'note',
      where: limit.where,
      message: `With the load on, a gust of ${wind} m/s brings the coils from rated wind to their limit of ${limit.temperature.toFixed(0)} °C in ${time}, ${end}. Furl or brake before.`,
    },
  ];
}
