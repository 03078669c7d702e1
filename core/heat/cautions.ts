import type { Caution } from '../problem';
import { HOTTEST } from './cooling';

/** What to say of coils that settle at a temperature. `seconds`: time from cold to their limit, where known. [°C, s] */
export function heatCautions(temperature: number, limit: { temperature: number; where: string }, seconds?: number): Caution[] {
  if (temperature <= limit.temperature) return [];
  const soon = seconds === undefined ? '' : `, ${duration(seconds)} from cold`;
  const settles =
    temperature >= HOTTEST
      ? `At rated wind the coils run away thermally: each kelvin makes more heat than it carries off, and they pass their limit of ${limit.temperature.toFixed(0)} °C${soon}`
      : `At rated wind the coils settle at ${temperature.toFixed(0)} °C, above their limit of ${limit.temperature.toFixed(0)} °C${soon && `, which they pass${soon}`}`;
  return [
    {
      severity: 'danger',
      where: limit.where,
      message: `${settles}: thicker wire, fewer amps, or a former and covering that stand more.`,
    },
  ];
}

const duration = (seconds: number) => (seconds < 90 ? `about ${Math.ceil(seconds)} s` : `about ${Math.round(seconds / 60)} min`);
