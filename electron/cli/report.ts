import type { Results } from '../../core/index';
import { figures, table } from './table';

type Row = [label: string, value: number | string, unit?: string];

/** Every result for a reader at a terminal; numbers to four figures, the full ones are in the JSON. */
export function reportOf(results: Results): string {
  const { gap, coils, emf, cutIn, rated, year } = results;
  const facts: [string, Row[]][] = [
    [
      'Gap',
      [
        ['magnet face to magnet face', gap.length * 1000, 'mm'],
        ['peak at pitch radius', gap.peak, 'T'],
        ['fundamental there', gap.fundamental, 'T'],
        ...(gap.plate === undefined ? [] : [['in the steel plate', gap.plate, 'T'] satisfies Row]),
      ],
    ],
    [
      'Coils',
      [
        ['number', coils.count],
        ['wire in all', coils.wireLength, 'm'],
        ['its mass', coils.wireMass, 'kg'],
        ['window filled', coils.fill * 100, '%'],
        ['goes in', coils.fits ? 'yes' : 'no'],
        ['one coil at 20 °C', coils.coilResistance20, 'Ω'],
        ['one phase at 20 °C', coils.phaseResistance20, 'Ω'],
        ['one phase, hot at rated', coils.phaseResistance, 'Ω'],
        ['one phase, inductance', coils.phaseInductance * 1000, 'mH'],
        ...(coils.pegDistance === undefined ? [] : [['between the pegs', coils.pegDistance * 1000, 'mm'] satisfies Row]),
      ],
    ],
    [
      'Open circuit at 1000 rpm',
      [
        ['phase', emf.phaseRmsPer1000rpm, 'V rms'],
        ['line', emf.lineRmsPer1000rpm, 'V rms'],
        ['frequency', emf.hertzPer1000rpm, 'Hz'],
        ['distortion', emf.distortion * 100, '%'],
      ],
    ],
    [
      'Cut-in',
      [
        ['shaft', cutIn.rpm ?? 'never', 'rpm'],
        ['wind', cutIn.wind ?? 'never', 'm/s'],
      ],
    ],
    [
      'Rated',
      [
        ['wind', rated.wind, 'm/s'],
        ['shaft', rated.rpm, 'rpm'],
        ['output', rated.dcWatts, 'W'],
        ['', rated.dcVolts, 'V'],
        ['', rated.dcAmps, 'A'],
        ['current density', rated.currentDensity / 1e6, 'A/mm²'],
        ['coil', rated.coilTemperature, '°C'],
        ['limit', rated.limitTemperature, '°C'],
      ],
    ],
    ['Year', [['energy', year.energy / 3.6e6, 'kWh']]],
  ];
  return [
    ...facts.flatMap(([title, rows]) => [title, ...rows.map(factLine), '']),
    ...table('Generator by shaft speed', results.curve, {
      rpm: (p) => p.rpm,
      'V dc': (p) => p.dcVolts,
      'A dc': (p) => p.dcAmps,
      'W dc': (p) => p.dcWatts,
      'A phase': (p) => p.phaseAmps,
      'W copper': (p) => p.copperLoss,
      'W diodes': (p) => p.diodeLoss,
      'W cable': (p) => p.cableLoss,
      'W eddy': (p) => p.eddyLoss,
      'W shaft': (p) => p.shaftWatts,
      'coil °C': (p) => p.coilTemperature,
    }),
    ...table('In the wind', results.match, {
      'm/s': (p) => p.wind,
      rpm: (p) => p.rpm,
      'tip speed': (p) => p.tipSpeedRatio,
      'A dc': (p) => p.dcAmps,
      'W dc': (p) => p.dcWatts,
      'W shaft': (p) => p.shaftWatts,
      state: (p) => p.state,
    }),
    ...table('Controller', results.controller, {
      situation: (c) => c.situation,
      verdict: (c) => c.verdict,
      value: (c) => `${figures(c.value)} ${c.unit}`,
      limit: (c) => `${figures(c.limit)} ${c.unit}`,
      advice: (c) => c.advice,
    }),
    ...(results.cautions.length
      ? ['Cautions', ...results.cautions.map((c) => `  ${c.severity.toUpperCase()}  ${c.where}: ${c.message}`), '']
      : []),
  ].join('\n');
}

function factLine([label, value, unit = '']: Row): string {
  return `  ${label.padEnd(28)}${figures(value).padStart(10)} ${typeof value === 'string' && value === 'never' ? '' : unit}`.trimEnd();
}
