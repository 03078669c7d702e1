import type { ControllerSection } from './section';
import type { ControllerVerdict } from './stage';

/** What the machine does in the situations a controller meets. Volts are DC, open circuit, peak of the rectified EMF. */
export interface Demands {
  turns: number;
  connection: 'star' | 'delta' | 'separate';
  rated: { amps: number; watts: number };
  /** Greatest watts into the controller in any wind up to the rated one. */
  greatestWatts: number;
  /** Run away in the gust, magnets at −20 °C. */
  gustVolts: number;
  /** Unloaded at rated wind. */
  ratedOpenVolts: number;
  /** Unloaded at the mean wind. */
  lightVolts: number;
}

/** Less room than this is called tight. Common practice, no source. */
const ROOM = 0.15;

/**
 * The controller's data sheet against five situations.
 *
 * @param controller  Data-sheet numbers. [V, A, W]
 * @param demands     What the machine does. [V, A, W]
 * @returns           One verdict a situation, with what to change and by how much.
 *
 * Omits     the controller's own losses, and transients at the moment the load is lost.
 * Source    comparison with the data sheet; a margin below 15 % is called tight (common practice, no source).
 * Checked   tests/core/controller/check.test.ts
 */
export function controllerCheck(controller: ControllerSection, demands: Demands): ControllerVerdict[] {
  const { turns } = demands;
  const tooHigh = (volts: number) => lessVolts(demands, volts, controller.maxInputVoltage);
  const rated = worst([
    atMost(
      'Rated wind',
      demands.rated.amps,
      controller.maxInputCurrent,
      'A',
      (by) => `Take ${by.toFixed(1)} A less: a higher-voltage winding, or furl earlier.`,
    ),
    atMost(
      'Rated wind',
      demands.rated.watts,
      controller.maxPower,
      'W',
      (by) => `Take ${by.toFixed(0)} W less: furl earlier, or a larger controller.`,
    ),
    atMost(
      'Rated wind',
      demands.rated.watts / controller.batteryVoltage,
      controller.maxChargeCurrent,
      'A',
      (by) => `The battery side would get ${by.toFixed(1)} A too much: furl earlier, or a larger controller.`,
    ),
  ]);
  return [
    rated,
    atMost('Gust, load lost', demands.gustVolts, controller.maxInputVoltage, 'V', () => tooHigh(demands.gustVolts)),
    atLeast('Light wind', demands.lightVolts, controller.minInputVoltage, 'V', () => {
      const more = Math.ceil((turns * controller.minInputVoltage * (1 + ROOM)) / demands.lightVolts) - turns;
      return `At the mean wind the controller hardly wakes: ${more} turns more a coil would do it.`;
    }),
    atMost('Battery disconnected', demands.ratedOpenVolts, controller.maxInputVoltage, 'V', () => tooHigh(demands.ratedOpenVolts)),
    atMost(
      'Battery full',
      demands.greatestWatts,
      controller.maxPower,
      'W',
      (by) => `The wheel can give ${by.toFixed(0)} W more than the controller can turn away: a diversion load, or furl earlier.`,
    ),
  ];
}

function lessVolts({ turns, connection }: Demands, volts: number, limit: number): string {
  const fewer = turns - Math.floor((turns * limit) / (volts * (1 + ROOM)));
  const delta = connection === 'star' ? `; or delta instead of star, ${(volts / Math.sqrt(3)).toFixed(0)} V` : '';
  return `${fewer} turns fewer a coil${delta}; or a brake that acts before the volts do.`;
}

function atMost(
  situation: string,
  value: number,
  limit: number,
  unit: ControllerVerdict['unit'],
  mend: (by: number) => string,
): ControllerVerdict {
  const margin = 1 - value / limit;
  const verdict = margin < 0 ? 'fail' : margin < ROOM ? 'tight' : 'pass';
  return {
    situation,
    verdict,
    value,
    limit,
    unit,
    advice: verdict === 'pass' ? 'Nothing to change.' : mend(Math.max(value * (1 + ROOM) - limit, 0)),
  };
}

function atLeast(situation: string, value: number, limit: number, unit: ControllerVerdict['unit'], mend: () => string): ControllerVerdict {
  const margin = limit > 0 ? value / limit - 1 : Infinity;
  const verdict = margin < 0 ? 'fail' : margin < ROOM ? 'tight' : 'pass';
  return { situation, verdict, value, limit, unit, advice: verdict === 'pass' ? 'Nothing to change.' : mend() };
}

function worst(verdicts: ControllerVerdict[]): ControllerVerdict {
  return verdicts.reduce((a, b) => (b.value / b.limit > a.value / a.limit ? b : a));
}
