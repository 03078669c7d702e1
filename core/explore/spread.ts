import type { Design } from '../design/schema';
import { quantileOf, type Quantile } from '../numeric/quantile';
import { createRandom } from '../numeric/random';
import { createBuilder } from './built';
import { readings, type Reading } from './readings';
import { drawnMachine, noDepartures, type Tolerances } from './tolerances';

/** Machines that are drawn and solved at a time: the seed of each batch follows from its number, so that any number of threads gives the same spread. */
export const BATCH = 100;

/** One number of the design as it comes out of many workshops. */
export interface Band {
  reading: Reading;
  /** Built just as drawn. */
  nominal: number;
  low: Quantile;
  middle: Quantile;
  high: Quantile;
}

export interface Spread {
  samples: number;
  bands: Band[];
  /** Share of the machines in which a disc rubs on the winding. */
  rubbing: number;
}

/** Readings of a batch of machines, machine by machine, and how many of them rub. */
export interface BatchReport {
  batch: number;
  values: Float64Array;
  rubbing: number;
}

/** 5–95 %. */
const LOW = 0.05;
const HIGH = 0.95;

export interface Spreader {
  /** Greatest error of the field's table, as a share. */
  fieldError: number;
  nominal: number[];
  run: (batch: number, count?: number) => BatchReport;
}

/** A design's spread, ready to be drawn batch by batch, on any number of threads. */
export function createSpread(design: Design, limits: Tolerances, seed: number): Spreader {
  const { build, error } = createBuilder(design, limits);
  const read = (departures: Parameters<typeof build>[0]) => {
    const built = build(departures);
    return { values: readings.map((reading) => reading.of(built, design)), rubs: built.clearance < 0 };
  };
  return {
    fieldError: error,
    nominal: read(noDepartures(design)).values,
    run(batch, count = BATCH) {
      // Seeds of neighbouring batches are far apart, not steps of one stream.
      const random = createRandom(Math.imul(batch + 1, 0x85ebca6b) ^ seed);
      const values = new Float64Array(count * readings.length);
      let rubbing = 0;
      for (let k = 0; k < count; k++) {
        const machine = read(drawnMachine(design, limits, random));
        values.set(machine.values, k * readings.length);
        if (machine.rubs) rubbing++;
      }
      return { batch, values, rubbing };
    },
  };
}

/** Sizes of the batches that make so many samples. */
export const batchesOf = (samples: number): number[] =>
  Array.from({ length: Math.ceil(samples / BATCH) }, (_, k) => Math.min(BATCH, samples - k * BATCH));

/** The bands of all machines drawn so far. */
export function bandsOf(nominal: readonly number[], reports: readonly BatchReport[]): Spread {
  const columns = readings.length;
  const samples = reports.reduce((sum, { values }) => sum + values.length / columns, 0);
  const bands = readings.map((reading, column): Band => {
    const sorted = new Float64Array(samples);
    let next = 0;
    for (const { values } of reports) for (let at = column; at < values.length; at += columns) sorted[next++] = values[at];
    sorted.sort();
    const quantile = (share: number) => quantileOf(sorted, share);
    return { reading, nominal: nominal[column], low: quantile(LOW), middle: quantile(0.5), high: quantile(HIGH) };
  });
  return { samples, bands, rubbing: reports.reduce((sum, report) => sum + report.rubbing, 0) / samples };
}

/** The whole spread on one thread. */
export function spreadOf(design: Design, limits: Tolerances, samples: number, seed: number): Spread {
  const spread = createSpread(design, limits, seed);
  return bandsOf(
    spread.nominal,
    batchesOf(samples).map((count, batch) => spread.run(batch, count)),
  );
}
