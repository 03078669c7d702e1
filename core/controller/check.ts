import { passing } from '../numeric/passing';
import type { ControllerSection } from './section';
import type { ControllerVerdict } from './stage';

/** What the machine does in the situations a controller meets. Volts are DC, open circuit, peak of the rectified EMF. */
export interface Demands {
  turns: number;
  connection: 'star' | 'delta' | 'separate';
  /** Three, unless said otherwise. */
  phases?: number;
  rated: { amps: number; watts: number };
  /** Greatest watts into the controller in any wind up to the rated one. */
  greatestWatts: number;
  /** Run away in the gust, magnets at −20 °C. */
  gustVolts: number;
  /** Unloaded at rated wind. */
  ratedOpenVolts: number;
  /** Unloaded at the mean wind. */
  lightVolts: number;
  /** Wind at which the unloaded wheel brings the least input volts; null when none does. [m/s] */
  wakeWind?: number | null;
  /** The gust. [m/s] */
  gustWind?: number;
  /** Into the controller at rising winds. */
  winds?: readonly { wind: number; dcAmps: number; dcWatts: number }[];
  /** Where charging begins as it is wound, and joined in delta: its open volts over those of the star. [rpm, -] */
  cutInRpm?: number;
  inDelta?: () => { share: number; cutInRpm?: number };
}

/** Less room than this is called tight. Common practice, no source. */
const ROOM = 0.15;

/**
 * The controller's data sheet against five situations.
 *
 * @param controller  Data-sheet numbers. [V, A, W]
 * @param demands     What the machine does. [V, A, W]
 * @returns           One verdict a situation, with what to change and by how much: changed so, the situation passes.
 *
 * Omits     the controller's own losses, and transients at the moment the load is lost.
 * Source    comparison with the data sheet; a margin below 15 % is called tight (common practice, no source).
 * Checked   tests/core/controller/check.test.ts
 */
export function controllerCheck(controller: ControllerSection, demands: Demands): ControllerVerdict[] {
  const { maxInputVoltage, minInputVoltage, maxInputCurrent, maxPower, batteryVoltage, maxChargeCurrent } = controller;
  const { rated, greatestWatts } = demands;
  const chargeAmps = rated.watts / batteryVoltage;
  const allowedWatts = (watts: number, most: number) =>
    `Take ${watts.toFixed(0)} W less: ${furl(demands, 'dcWatts', most)}, or a larger controller.`;
  const fewerVolts = () => lessVolts(demands, maxInputVoltage);
  return [
    tightest([
      atMost('Rated wind', rated.amps, maxInputCurrent, 'A', (excess) => lessAmps(excess, demands)),
      atMost('Rated wind', rated.watts, maxPower, 'W', (excess) => allowedWatts(excess, rated.watts - excess)),
      atMost('Rated wind', chargeAmps, maxChargeCurrent, 'A', (excess) => {
        const over = chargeAmps - maxChargeCurrent;
        const battery = over > 0 ? `${over.toFixed(1)} A too much` : `all but its ${maxChargeCurrent} A`;
        return `The battery side would get ${battery}. ${allowedWatts(excess * batteryVoltage, rated.watts - excess * batteryVoltage)}`;
      }),
    ]),
    atMost('Gust, load lost', demands.gustVolts, maxInputVoltage, 'V', fewerVolts),
    atLeast('Light wind', demands.lightVolts, minInputVoltage, 'V', wakes(demands), () => moreVolts(demands, minInputVoltage)),
    atMost('Battery disconnected', demands.ratedOpenVolts, maxInputVoltage, 'V', fewerVolts),
    atMost(
      'Battery full',
      greatestWatts,
      maxPower,
      'W',
      (excess) =>
        `Up to ${greatestWatts.toFixed(0)} W must go elsewhere: a diversion load for all of it, or ${furl(demands, 'dcWatts', greatestWatts - excess)}.`,
      `Up to ${greatestWatts.toFixed(0)} W must be turned away or dumped.`,
    ),
  ];
}

/** The open-circuit volts of all situations go with the turns, so the advice is for the worst of them. */
function lessVolts(demands: Demands, limit: number): string {
  const { turns, connection, phases = 3, gustVolts, ratedOpenVolts, gustWind, cutInRpm } = demands;
  const volts = Math.max(gustVolts, ratedOpenVolts);
  const allowed = limit * (1 - ROOM);
  const keep = Math.floor((turns * allowed) / volts);
  const ways: string[] = [];
  if (keep >= 1) ways.push(`${counted(turns - keep, 'turn')} fewer a coil${cutInThen(cutInRpm && (cutInRpm * turns) / keep)}`);
  if (connection === 'star' && phases === 3) {
    const { share, cutInRpm: then } = demands.inDelta?.() ?? { share: 1 / Math.sqrt(3) };
    const delta = volts * share;
    ways.push(`delta instead of star, ${delta.toFixed(0)} V${delta > allowed ? ', still too near' : ''}${cutInThen(then)}`);
  }
  const raises = ways.length > 0 ? ' All but the brake raise the cut-in speed.' : '';
  ways.push(
    gustWind === undefined
      ? 'a brake that acts before the volts do'
      : `furl or brake so that the free wheel never meets more than ${((gustWind * allowed) / gustVolts).toFixed(1)} m/s`,
  );
  return `${sentence(ways)}.${raises}`;
}

const cutInThen = (rpm: number | undefined) => (rpm === undefined ? '' : `, cut-in then at ${rpm.toFixed(0)} rpm`);

/** The wind from which no more than `most` may be let in. */
function furl({ winds = [] }: Demands, key: 'dcAmps' | 'dcWatts', most: number): string {
  const wind = passing(
    winds.map((each) => each.wind),
    winds.map((each) => each[key]),
    most,
  );
  return wind === undefined ? 'furl earlier' : `furl from ${wind.toFixed(1)} m/s`;
}

function lessAmps(excess: number, demands: Demands): string {
  const { turns, rated } = demands;
  const most = rated.amps - excess;
  const more = Math.ceil((turns * rated.amps) / most) - turns;
  return `Take ${excess.toFixed(1)} A less: ${furl(demands, 'dcAmps', most)}, or about ${counted(more, 'turn')} more a coil, from which a tracker takes the same watts at more volts.`;
}

function moreVolts({ turns, lightVolts, wakeWind }: Demands, least: number): string {
  if (!(lightVolts > 0)) return 'The unloaded wheel brings no volts at the mean wind.';
  const more = Math.ceil((turns * least * (1 + ROOM)) / lightVolts) - turns;
  return `${wakes({ wakeWind })} At the mean wind it hardly does: ${counted(more, 'turn')} more a coil would do it.`.trim();
}

function wakes({ wakeWind }: Pick<Demands, 'wakeWind'>): string {
  if (wakeWind === undefined) return '';
  return wakeWind === null ? 'No wind wakes the controller.' : `The controller wakes at ${wakeWind.toFixed(1)} m/s.`;
}

function atMost(
  situation: string,
  value: number,
  limit: number,
  unit: ControllerVerdict['unit'],
  mend: (excess: number) => string,
  fine = '',
): ControllerVerdict {
  const verdict = value > limit ? 'fail' : value > limit * (1 - ROOM) ? 'tight' : 'pass';
  const advice = verdict === 'pass' ? fine || UNCHANGED : mend(value - limit * (1 - ROOM));
  return { situation, verdict, value, limit, unit, margin: (limit - value) / limit, advice };
}

function atLeast(
  situation: string,
  value: number,
  limit: number,
  unit: ControllerVerdict['unit'],
  fine: string,
  mend: () => string,
): ControllerVerdict {
  const verdict = value < limit ? 'fail' : value < limit * (1 + ROOM) ? 'tight' : 'pass';
  const margin = limit > 0 ? (value - limit) / limit : 1;
  return { situation, verdict, value, limit, unit, margin, advice: verdict === 'pass' ? fine || UNCHANGED : mend() };
}

const UNCHANGED = 'Nothing to change.';

const tightest = (verdicts: ControllerVerdict[]) => verdicts.reduce((a, b) => (b.value / b.limit > a.value / a.limit ? b : a));

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

function sentence(ways: string[]): string {
  const text = ways.join('; or ');
  return text[0].toUpperCase() + text.slice(1);
}
