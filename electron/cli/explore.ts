import {
  bandsOf,
  defaultSearch,
  isPriced,
  marks,
  noStanding,
  takeIn,
  tolerancesOf,
  type Band,
  type Candidate,
  type Design,
  type Found,
  type UnitKind,
} from '../../core/index';
import { reportsOf } from './jobs';
import { figures, table } from './table';

/** Machines drawn for a spread; the same seed gives the same ones. */
const SAMPLES = 1000;
const SEED = 1;

/** The trade-off front of a design's search, best marks first. */
export async function searched(design: Design, asJson: boolean): Promise<string> {
  const standing = noStanding();
  for (const report of await reportsOf({ kind: 'search', of: { design } })) takeIn(standing, report);
  const { considered, solved, pruned } = standing;
  const found = standing.front.items;
  const { weights = {} } = design.search ?? defaultSearch(design);
  const marked = marks(
    found.map(({ objectives }) => objectives),
    weights,
  );
  const front = found
    .map((each, i) => ({ ...each, mark: marked[i]! }))
    .sort((a, b) => b.mark - a.mark || a.candidate.turns - b.candidate.turns);
  if (asJson) return `${JSON.stringify({ considered, solved, pruned, front }, null, 2)}\n`;
  const ruledOut = pruned.frame + pruned.fit + pruned.reel;
  return [
    `${considered} machines: ${ruledOut} cannot be built, ${solved} worked out, ${front.length} that no other within the limits beats in every respect`,
    '',
    ...table('Front', front, {
      'mark %': ({ mark }) => Math.round(100 * mark),
      ...differing(found),
      'cut-in m/s': ({ objectives }) => objectives.cutInWind,
      'kWh a year': ({ objectives }) => objectives.yearEnergy / 3.6e6,
      'K below limit': ({ objectives }) => objectives.temperatureMargin,
      'controller %': ({ objectives }) => 100 * objectives.controllerMargin,
      [isPriced(design.shelf ?? []) ? 'wire price' : 'wire kg']: ({ objectives }) => objectives.cost,
    }),
  ].join('\n');
}

/** Those of a machine's choices in which the found ones differ, and always what it is wound with. */
function differing(found: readonly Found[]) {
  const always = ['turns', 'in hand'];
  const choices: Record<string, (candidate: Candidate) => number | string> = {
    wire: ({ reel }) => reel.label,
    'in hand': ({ inHand }) => inHand,
    turns: ({ turns }) => turns,
    connection: ({ connection }) => connection,
    layout: ({ layout }) => layout,
    poles: ({ poles }) => poles,
    coils: ({ coils }) => coils,
    phases: ({ phases }) => phases,
    paths: ({ parallelPaths }) => parallelPaths,
    'pitch mm': ({ pitchRadius }) => pitchRadius * 1000,
    'thick mm': ({ thickness }) => thickness * 1000,
    'clear mm': ({ runningClearance }) => runningClearance * 1000,
  };
  const kept = Object.entries(choices).filter(
    ([name, of]) => always.includes(name) || new Set(found.map(({ candidate }) => of(candidate))).size > 1,
  );
  return Object.fromEntries(kept.map(([name, of]) => [name, ({ candidate }: Found) => of(candidate)]));
}

const units: Partial<Record<UnitKind, [unit: string, si: number]>> = {
  voltage: ['V', 1],
  rpm: ['rpm', 1],
  windSpeed: ['m/s', 1],
  current: ['A', 1],
  power: ['W', 1],
  temperature: ['°C', 1],
  energy: ['kWh', 3.6e6],
  resistance: ['Ω', 1],
};

/** 5–95 % bands of the headlines and of the meter's readings, from the design's tolerances. */
export async function spreadOut(design: Design, asJson: boolean): Promise<string> {
  const limits = tolerancesOf(design);
  const reports = await reportsOf({ kind: 'spread', of: { design, limits, seed: SEED, samples: SAMPLES } });
  const [{ nominal }] = reports as [(typeof reports)[number]];
  const { samples, rubbing, bands } = bandsOf(
    nominal,
    reports.toSorted((a, b) => a.batch - b.batch),
  );
  if (asJson) {
    const plain = bands.map(({ reading: { id, label, kind }, nominal, low, middle, high }) => ({
      id,
      label,
      kind,
      nominal,
      low,
      middle,
      high,
    }));
    return `${JSON.stringify({ samples, seed: SEED, rubbing, bands: plain }, null, 2)}\n`;
  }
  const rows = (kind: string) => bands.filter(({ reading }) => reading.kind === kind);
  const columns = {
    '': ({ reading }: Band) => `${reading.label}, ${units[reading.unit]?.[0] ?? ''}`,
    'as drawn': told(({ nominal }) => nominal),
    '5 %': told(({ low }) => low.value),
    '50 %': told(({ middle }) => middle.value),
    '95 %': told(({ high }) => high.value),
  };
  return [
    `${samples} machines drawn within the tolerances and worked out; in ${figures(100 * rubbing)} % of them a disc rubs on the winding`,
    '',
    ...table('Headlines', rows('headline'), columns),
    ...table('Meter readings; volts AC, no load, at 1000 rpm', rows('meter'), columns),
  ].join('\n');
}

const told =
  (of: (band: Band) => number) =>
  (band: Band): number =>
    of(band) / (units[band.reading.unit]?.[1] ?? 1);
