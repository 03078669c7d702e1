import type { MatchPoint, Results } from '../../../core';
import { format, type UnitPreferences } from '../../units';

type Balances = MatchPoint['balances'];

/** What a push does at one of the balances. */
export function balanceInWords(balances: Balances, i: number, units: UnitPreferences): string {
  if (balances[i]?.stable) return 'A gust brakes it back to this speed, a lull drives it back.';
  const [below, above] = [balances[i - 1], balances[i + 1]];
  const rpm = (at: Balances[number]) => format(at.rpm, 'rpm', units, 3);
  const falls = below ? `it falls to ${rpm(below)}` : 'it comes to a stop';
  return `A little slower and ${falls}, a little faster and it rises${above ? ` to ${rpm(above)}` : ''}.`;
}

const doings: Record<MatchPoint['state'], string> = {
  still: 'it stands still',
  idling: 'it turns without charging: its volts are below the load’s',
  charging: 'it charges',
  stalled: 'the load holds the blades back so far that they stall: they give less than three quarters of their best',
  limited: 'the load takes no more, and the wheel runs on towards run-away',
};

/** What wheel and generator do over the wind, one sentence a range, and where two speeds would hold. */
export function rangesInWords({ match }: Pick<Results, 'match'>, units: UnitPreferences): string[] {
  const wind = (v: number) => format(v, 'windSpeed', units, 3);
  const ranges = match.reduce<{ state: MatchPoint['state']; from: number; to: number }[]>((found, { state, wind: at }) => {
    const last = found.at(-1);
    if (last?.state === state) last.to = at;
    else found.push({ state, from: last?.to ?? 0, to: at });
    return found;
  }, []);
  const lines = ranges.map(({ state, from, to }) => `${from === 0 ? 'Up to' : `From ${wind(from)} to`} ${wind(to)} ${doings[state]}.`);
  const double = match.filter(({ balances }) => balances.filter(({ stable }) => stable).length > 1);
  const [first, last] = [double[0], double.at(-1)];
  if (first && last)
    lines.push(
      `From ${wind(first.wind)} to ${wind(last.wind)} more than one speed holds: a wheel that comes from calm stays at the lowest, one that was already faster at a higher.`,
    );
  return lines;
}
