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
/** Held back by the controller’s least volts, before it can take what suits the blades. */
const WAKING = 'it charges, the wheel faster than suits it: the controller is at its least volts and cannot take more';

interface Range {
  state: MatchPoint['state'];
  from: number;
  to: number;
}

/** What wheel and generator do over the wind, one sentence a range, and where two speeds would hold. */
export function rangesInWords(
  results: Pick<Results, 'match' | 'cutIn'> & { stages: Pick<Results['stages'], 'start'> },
  units: UnitPreferences,
): string[] {
  const { match } = results;
  const wind = (v: number, digits = 3) => format(v, 'windSpeed', units, digits);
  const known: Partial<Record<MatchPoint['state'], number | null>> = { still: results.stages.start.wind, idling: results.cutIn.wind };
  const end = ({ state, to }: Range, next: number | undefined) => {
    if (next === undefined) return wind(to);
    const exact = known[state];
    return exact && exact >= to && exact <= next ? wind(exact) : `about ${wind((to + next) / 2, 2)}`;
  };
  const ranges = match.reduce<Range[]>((found, { state, wind: at }) => {
    const last = found.at(-1);
    if (last?.state === state) last.to = at;
    else found.push({ state, from: at, to: at });
    return found;
  }, []);
  const ends = ranges.map((range, i) => end(range, ranges[i + 1]?.from));
  const doing = ({ state }: Range, i: number) =>
    state === 'limited' && ranges.slice(i + 1).some((later) => later.state === 'charging') ? WAKING : doings[state];
  const lines = ranges.map((range, i) => `${i === 0 ? 'Up to' : `From ${ends[i - 1]} to`} ${ends[i]} ${doing(range, i)}.`);
  const double = match.filter(({ balances }) => balances.filter(({ stable }) => stable).length > 1);
  const [first, last] = [double[0], double.at(-1)];
  if (first && last)
    lines.push(
      `From ${wind(first.wind)} to ${wind(last.wind)} more than one speed holds: a wheel that comes from calm stays at the lowest, one that was already faster at a higher.`,
    );
  return lines;
}
