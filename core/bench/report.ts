import { plantOf } from '../chain/plant';
import type { Results } from '../chain/results';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import { turbineStage, type TurbineResult } from '../turbine/stage';
import { branchAt } from './circuit';
import { comparedOf, type Compared } from './compared';
import { correctedEntries, type FieldCause } from './corrected';
import { coefficientFit, fieldTest, type FieldTest } from './field-test';
import { fit, type Fitted, type Residual } from './fit';
import type { FamilyName } from './hypotheses';
import { benchMachine, type BenchMachine } from './machine';
import { meterReading } from './meter';
import { nextMeasurement, toTellApart, type NextMeasurement } from './next-measurement';
import { questionOf } from './predict';
import { diagnosis, type Diagnosis } from './rank';
import { measurementsOf, placeOf, strangePlace, type LeftOut } from './readings';
import { speedCandidates, type SpeedCandidate } from './speed';
import { headline, told, type Told } from './verdict';

/** All that the bench says, plain enough to cross to another thread. */
export interface BenchReport {
  verdict: Diagnosis['verdict'];
  headline: string;
  suspects: Told[];
  next?: Omit<NextMeasurement, 'expected'> & { expected: { words: string; value: number }[] };
  /** What to look at where no meter tells the first two apart. */
  looks: string[];
  compared: Compared[];
  leftOut: LeftOut[];
  fit: { field?: Fitted; resistance?: Fitted; degrees: number; residuals: Residual[] };
  speeds: { row: number; candidates: SpeedCandidate[] }[];
  tests: FieldTest[];
  coefficient?: Fitted;
  /** Entries of the measured machine, by what a field other than planned is put down to; empty where nothing is to be changed. */
  corrections: { magnets: Record<string, unknown>; gap: Record<string, unknown> };
  /** Why there are none: a fault to be mended first, readings that nothing explains, or nothing that is surely off. */
  kept?: 'faulty' | 'unexplained' | 'as-planned';
}

/** Everything the bench makes of a design's readings. */
export function benchReport(design: Design, results: Results): BenchReport {
  const machine = benchMachine(design, results);
  const { measurements, leftOut } = measurementsOf(design);
  const questions = measurements.map((measurement) => questionOf(machine, measurement));
  const said = diagnosis(machine, questions);
  const next = nextMeasurement(machine, said, measurements.findLast(({ figure }) => figure === 'acVolts') ?? measurements.at(-1));
  // A machine with a fault is fitted as what it is, and to be mended before a design is made of it.
  const [likeliest] = said.suspects.flatMap(({ explanations }) => explanations);
  const isWhole = !likeliest || said.suspects[0].explanations.some(({ hypothesis }) => WHOLE.includes(hypothesis.family));
  const made = isWhole ? machine : likeliest.machine;
  const fitted = fit(made, questions);
  const readings = design.bench ?? [];
  const wheel = turbineStage(design.turbine, design.site);
  const { stages } = results;
  const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
  const tests = readings.flatMap((reading, row) => fieldTest(reading, row, design, plant, wheel) ?? []);
  const coefficient = coefficientFit(tests);
  const { field, resistance } = fitted;
  const measured = { ...(field && { field }), ...(resistance && { resistance }), ...(coefficient && { coefficient }) };
  const isUsable = isWhole && said.verdict !== 'unexplained';
  const correct = (cause: FieldCause) => (isUsable ? correctedEntries(design, machine, measured, cause) : {});
  const magnets = correct('magnets');
  const pair = next ? undefined : toTellApart(said);
  return {
    verdict: said.verdict,
    headline: headline(said, fitted),
    suspects: said.suspects
      .filter(({ weight }) => weight > LEAST_TOLD)
      .slice(0, MOST_TOLD)
      .map(told),
    ...(next && { next: { ...next, expected: next.expected.map(([{ hypothesis }, value]) => ({ words: hypothesis.words, value })) } }),
    looks: pair ? pair.map(({ hypothesis }) => hypothesis.check).filter(Boolean) : [],
    compared: comparedOf(questions, readings, machine.polePairs),
    leftOut,
    fit: { ...(field && { field }), ...(resistance && { resistance }), degrees: fitted.degrees, residuals: fitted.residuals },
    speeds: readings.flatMap((reading, row) => {
      if (![reading.speed, reading.hertz, reading.frameRate].some(Boolean) && !(reading.volts && reading.on !== 'dc')) return [];
      const candidates = speedCandidates(reading, { ...witnessOf(reading, made, wheel, design), polePairs: machine.polePairs });
      return candidates.length ? [{ row, candidates }] : [];
    }),
    tests,
    ...(coefficient && { coefficient }),
    corrections: { magnets, gap: correct('gap') },
    ...(Object.keys(magnets).length === 0 && {
      kept: said.verdict === 'unexplained' ? 'unexplained' : isWhole ? 'as-planned' : 'faulty',
    }),
  };
}

/** What concerns the whole machine alike, so that two factors tell it. */
const WHOLE: FamilyName[] = ['healthy', 'thinner-wire', 'thicker-wire', 'wider-gap', 'weaker-magnets', 'stronger-field', 'misaligned'];
const LEAST_TOLD = 0.002;
const MOST_TOLD = 6;

/** What the volts and the wheel say of a reading's speed. AC volts without load go in proportion to it, whatever it was; no others do. */
function witnessOf(reading: Reading, machine: BenchMachine, wheel: TurbineResult, { site, winding }: Design) {
  const { radius } = wheel.wheel;
  const { on, volts, wind, meter = 'average' } = reading;
  const isProportional = on !== 'dc' && volts && !strangePlace(reading, winding);
  const { emf } = isProportional ? branchAt(machine, placeOf(reading)) : { emf: undefined };
  const perSpeed = emf ? meterReading({ orders: machine.orders, ...emf }, meter) : 0;
  return {
    ...(perSpeed > 0 && volts && { byVolts: volts / perSpeed }),
    radius,
    tipSpeedRatio: wheel.best.tipSpeedRatio,
    runawayRatio: wheel.runawayRatio,
    top: (BEYOND_RUNAWAY * wheel.runawayRatio * (wind ?? site.gustWind)) / radius,
  };
}

/** Speeds are looked for to a little beyond the free-running wheel's. */
const BEYOND_RUNAWAY = 1.2;
