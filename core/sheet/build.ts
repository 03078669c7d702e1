import type { Results } from '../chain/results';
import { standingCautions } from '../controller/cautions';
import { serializeDesign } from '../design/serialize';
import type { Design } from '../design/schema';
import type { Caution } from '../problem';
import { benchPage } from './bench-page';
import { boardDrawing } from './board-drawing';
import { coilDrawing } from './coil-drawing';
import { connectionDrawings } from './connection-drawing';
import { connectionBlocks } from './connection-table';
import type { Block, SheetDocument } from './document';
import {
  amps,
  bareMm,
  celsius,
  digits,
  kilograms,
  many,
  metres,
  mm,
  percent,
  rpm,
  teslas,
  volts,
  watts,
  windSpeed,
  wireMm,
} from './figures';
import { planDrawing } from './plan-drawing';
import { readingsBlocks } from './readings-table';
import { rectifierDrawing } from './rectifier-drawing';
import { sectionDrawing } from './section-drawing';
import { magnetWords, shoppingBlocks } from './shopping';
import { traceOf } from './trace';
import { strandToCut, windingSteps } from './winding-steps';

const heading = (text: string): Block => ({ kind: 'heading', text });

/** The winding sheet: all that is needed on the bench, in the order in which it is needed. */
export function windingSheet(design: Design, results: Results): SheetDocument {
  return {
    title: design.title || 'Untitled machine',
    machine: machineLine(design, results),
    trace: traceOf(serializeDesign(design)),
    blocks: [
      { kind: 'text', text: 'Read the cautions at the end before you begin. Lengths in mm unless another unit stands beside them.' },
      heading('What to wind'),
      { kind: 'facts', rows: windingFacts(design, results), large: true },
      { kind: 'drawing', drawing: coilDrawing(design, results) },
      heading('Steps'),
      { kind: 'steps', steps: windingSteps(design, results) },
      { kind: 'drawing', drawing: boardDrawing(design, results) },
      heading('The machine'),
      { kind: 'drawing', drawing: planDrawing(design, results) },
      { kind: 'drawing', drawing: sectionDrawing(design, results) },
      { kind: 'facts', rows: machineFacts(design, results) },
      heading('Connections'),
      ...connectionBlocks(design, results),
      ...connectionDrawings(design, results).map((drawing): Block => ({ kind: 'drawing', drawing })),
      { kind: 'drawing', drawing: rectifierDrawing(design) },
      heading('What the meter must read'),
      ...readingsBlocks(design, results),
      heading('Ratings and limits'),
      { kind: 'facts', rows: ratingFacts(design, results) },
      ...controllerBlocks(results),
      heading('To buy'),
      ...shoppingBlocks(design, results),
      heading('Cautions'),
      { kind: 'cautions', cautions: bySeverity([...results.cautions, ...standingCautions]) },
      ...(design.notes ? [heading('Notes'), { kind: 'text', text: design.notes } as Block] : []),
      ...benchPage(design, results),
    ],
  };
}

const severities = ['danger', 'warning', 'note'];
export const bySeverity = (cautions: Caution[]) =>
  cautions.toSorted((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));

const arrangements = {
  'facing-pair': 'two discs facing',
  single: 'one disc',
  'single-with-return': 'one disc and a return plate',
};
const connections = { star: 'star', delta: 'delta', separate: 'each on its own bridge' };

export function machineLine({ discs, winding, magnets }: Design, { coils }: Results): string {
  const { layout } = winding;
  const wound = layout.kind === 'concentrated' ? many(coils.count, 'coil') : many(coils.count, 'serpentine ring');
  const joined = winding.phases === 1 ? '1 phase' : `${winding.phases} phases, ${connections[winding.connection]}`;
  return `${discs.poles} poles, ${arrangements[discs.arrangement]}, ${magnetWords(magnets.shape)}; ${wound} of ${many(winding.turns, 'turn')}, ${joined}.`;
}

function windingFacts({ winding }: Design, results: Results): [string, string][] {
  const { wire, layout } = winding;
  const { coils, stages } = results;
  const pegs = stages.winding.pegs;
  return [
    [layout.kind === 'concentrated' ? 'Coils' : 'Rings', String(coils.count)],
    ['Turns in each', String(winding.turns)],
    ['Wire', `${wire.metal}, ${wireMm(wire.conductorDiameter)} bare, ${wireMm(wire.overallDiameter)} over the covering`],
    ['Wires in hand', String(wire.inHand)],
    ...(pegs ? ([['Pegs', `${mm(pegs.distance)} between centres, ∅ ${bareMm(pegs.diameter)}`]] as [string, string][]) : []),
    [
      'Cut for each',
      `${wire.inHand === 1 ? '' : `${wire.inHand} × `}${metres(strandToCut(results))} (${metres(stages.wire.coilLength)} wound)`,
    ],
    ['Leads', `${metres(winding.leadLength)} per phase`],
    ['Wire in all', `${metres(coils.wireLength)}, ${kilograms(coils.wireMass)}`],
    ['Mean turn', mm(stages.winding.meanTurn)],
    ['Fill', `${percent(coils.fill)}${coils.fits ? '' : `: it does not fit; take out ${many(stages.wire.turnsTooMany, 'turn')}`}`],
  ];
}

function machineFacts({ discs, magnets }: Design, { gap }: Results): [string, string][] {
  return [
    ['Magnets', `${discs.poles} on a disc, ${magnetWords(magnets.shape)}${magnets.grade ? `, ${magnets.grade}` : ''}`],
    ['Pitch circle', `∅ ${mm(2 * discs.pitchRadius)}, ${Number((360 / discs.poles).toFixed(3))}° from magnet to magnet`],
    gapFact(discs.arrangement, gap.length),
    ['Field in the middle', `${teslas(gap.peak)} over a magnet’s centre`],
  ];
}

function gapFact(arrangement: Design['discs']['arrangement'], length: number): [string, string] {
  switch (arrangement) {
    case 'facing-pair':
      return ['Gap, magnet to magnet', mm(length)];
    case 'single-with-return':
      return ['Gap, magnet to plate', mm(length)];
    case 'single':
      return ['Magnet to the middle', `${mm(length / 2)} from its face to the middle of the copper`];
  }
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
    ['Phase when hot', `${digits(coils.phaseResistance)} Ω, ${digits(coils.phaseInductance * 1000)} mH`],
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
        { head: 'bears', share: 0.13, align: 'right' },
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
