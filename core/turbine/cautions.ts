import type { Caution } from '../problem';
import { GUST_FACTOR, TURBINE_CLASSES, turbineClass } from './classes';
import { powerCeiling } from './power-coefficient';
import type { SiteSection, TurbineSection } from './section';

/** A wheel that needs more wind than this to start is worth a word. [m/s] Common practice, no source. */
const LATE_START = 4;

/** What to say of a wheel. `best`: its greatest power coefficient; `starts`: least wind that starts it. [-, m/s] */
export function turbineCautions({ rows, curve }: TurbineSection, best: number, starts: number | null): Caution[] {
  const where = curve ? 'turbine.curve' : 'turbine.peakCp';
  const ceiling = powerCeiling(rows);
  const cautions: Caution[] = [];
  if (best > ceiling) {
    const wheels = rows > 1 ? `${rows} wheels in a row` : 'one wheel';
    const slow = 100 * ((best / ceiling) ** (1 / 3) - 1);
    cautions.push({
      severity: 'warning',
      where,
      message: `A power coefficient of ${best.toFixed(3)} is above the ceiling of ${ceiling.toFixed(3)} for ${wheels}: a measuring error. Most likely the wind was read too low, by ${slow.toFixed(0)} % or more, as its cube counts; or the load took its power out of the wheel's own momentum.`,
    });
  }
  if (best <= 0) cautions.push({ severity: 'warning', where, message: 'No point of this curve gives power: the wheel only brakes.' });
  if (curve && curve[0][0] === 0 && curve[0][1] !== 0)
    cautions.push({
      severity: 'warning',
      where,
      message: `At standstill a wheel gives no power, whatever its torque: the curve says ${curve[0][1]} at a tip-speed ratio of 0.`,
    });
  if (best > 0 && (starts === null || starts > LATE_START))
    cautions.push({
      severity: 'note',
      where,
      message:
        starts === null
          ? 'By this curve the wheel does not start from standstill by itself: it must be spun up.'
          : `The wheel starts from standstill only at ${starts.toFixed(1)} m/s.`,
    });
  return cautions;
}

/** What to say of a site. [m/s] */
export function siteCautions({ meanWind, gustWind }: SiteSection): Caution[] {
  if (turbineClass(meanWind, gustWind)) return [];
  const [harshest] = TURBINE_CLASSES;
  const gust = GUST_FACTOR * harshest.referenceWind;
  return [
    {
      severity: 'warning',
      where: gustWind > gust ? 'site.gustWind' : 'site.meanWind',
      message: `A mean wind of ${meanWind} m/s with gusts of ${gustWind} m/s is harsher than class ${harshest.name} of IEC 61400-2 (${harshest.meanWind} and ${gust} m/s): wheel and tower need a design of their own.`,
    },
  ];
}
