import type { Results } from './results';

/** What stands where a result is no number, or none that means anything; undefined where the number stands. */
export function wordInstead(path: string, { rated, cutIn, stages }: Results): string | undefined {
  switch (path) {
    case 'rated.coilTemperature':
      return rated.runsAway ? RUNS_AWAY : undefined;
    case 'stages.gust.coilTemperature':
      return stages.gust.runsAway ? RUNS_AWAY : undefined;
    case 'stages.gust.seconds':
      return stages.gust.seconds === null ? 'never' : stages.gust.seconds === 0 ? 'past it' : undefined;
    case 'stages.start.wind':
      return stages.start.wind === null ? 'never' : undefined;
    case 'cutIn.rpm':
    case 'cutIn.wind':
      return cutIn[path === 'cutIn.rpm' ? 'rpm' : 'wind'] === null ? 'never' : undefined;
    default:
      return undefined;
  }
}

/** Each kelvin brings more loss than it carries away: no temperature at which the metal is still solid is a balance. */
const RUNS_AWAY = 'runs away';
