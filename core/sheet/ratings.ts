import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Block } from './document';
import { amps, celsius, digits, hertz, ohms, rpm, volts, watts, windSpeed } from './figures';

/** What the machine does and bears, and what its controller makes of it. */
export function ratingBlocks(design: Design, results: Results): Block[] {
  return [{ kind: 'facts', rows: ratingFacts(design, results) }, ...controllerBlocks(results)];
}

function ratingFacts({ winding, turbine, site }: Design, { rated, cutIn, emf, coils }: Results): [string, string][] {
  const runaway = (turbine.runawayRatio * site.gustWind * 60) / (Math.PI * turbine.diameter);
  const never = 'not reached';
  return [
    ['Charging begins', `${cutIn.rpm === null ? never : rpm(cutIn.rpm)}${cutIn.wind === null ? '' : `, wind of ${windSpeed(cutIn.wind)}`}`],
    [
      'At rated wind',
      `${windSpeed(rated.wind)}: ${rpm(rated.rpm)}, ${volts(rated.dcVolts)} DC, ${amps(rated.dcAmps)}, ${watts(rated.dcWatts)}`,
    ],
    ['Current density', `${digits(rated.currentDensity / 1e6)} A/mm²`],
    ['Coil temperature', `${celsius(rated.coilTemperature)}; limit ${celsius(rated.limitTemperature)}`],
    ['At 20 °C', `coil ${ohms(coils.coilResistance20)}, phase with its leads ${ohms(coils.phaseResistance20)}`],
    ['Phase when hot', `${ohms(coils.phaseResistance)}, ${digits(coils.phaseInductance * 1000)} mH`],
    [
      'At 1000 rpm',
      `${volts(emf.phaseRmsPer1000rpm)} per phase, ${volts(emf.lineRmsPer1000rpm)} between lines, ${hertz(emf.hertzPer1000rpm)}`,
    ],
    [
      'Run away, load lost',
      `${rpm(runaway)} in a gust of ${windSpeed(site.gustWind)}: ${volts((emf.lineRmsPer1000rpm * runaway) / 1000)} AC ${winding.connection === 'separate' ? 'per phase' : 'between lines'}`,
    ],
  ];
}

function controllerBlocks({ controller }: Results): Block[] {
  if (controller.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { head: 'Controller, when', share: 0.24 },
        { head: 'gets', share: 0.13, align: 'right' },
        { head: 'limit', share: 0.13, align: 'right' },
        { head: '', share: 0.1 },
        { head: 'advice', share: 0.4 },
      ],
      rows: controller.map(({ situation, value, limit, unit, verdict, advice }) => [
        situation,
        `${digits(value)} ${unit}`,
        `${digits(limit)} ${unit}`,
        verdict,
        advice,
      ]),
    },
  ];
}
