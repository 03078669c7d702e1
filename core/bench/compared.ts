import type { Results } from '../chain/results';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import { benchMachine } from './machine';
import { questionOf, type Question } from './predict';
import { measurementsOf, type Figure } from './readings';

/** One figure beside what it should have been. */
export interface Compared {
  row: number;
  figure: Figure | 'hertz';
  measured: number;
  planned: number;
  /** Standard deviation of measured about planned. */
  sigma: number;
}

export type Tone = 'good' | 'warn' | 'bad';

/** Within two standard deviations of meter, speed and winding a figure is as it should be; beyond three it is not. */
const AS_IT_SHOULD_BE = 2;
const WRONG = 3;

export const deviationsOf = ({ measured, planned, sigma }: Compared): number => (sigma > 0 ? (measured - planned) / sigma : 0);

export function toneOf(deviations: number): Tone {
  const size = Math.abs(deviations);
  return size <= AS_IT_SHOULD_BE ? 'good' : size <= WRONG ? 'warn' : 'bad';
}

const words: Record<Tone, string> = { good: 'as it should be', warn: 'near; read again', bad: 'not as planned' };

export const toneWords = (tone: Tone): string => words[tone];

/** An open circuit is compared as a finite many times the plan's ohms: circuit.ts. */
export const isOpenCircuit = ({ figure, measured, planned }: Compared): boolean => figure === 'ohms' && measured > 19 * planned;

/** To a tenth of a per cent: a meter tells no more. */
export function percentOff(compared: Compared): string {
  const { measured, planned } = compared;
  if (planned === 0 || isOpenCircuit(compared)) return '–';
  const off = Math.round(1000 * (measured / planned - 1)) / 10;
  return `${off < 0 ? '−' : off > 0 ? '+' : ''}${Math.abs(off).toFixed(1)} %`;
}

const letter = (phase: number) => String.fromCharCode(64 + phase);

/** Where the meter was, as in "coil 3" or "A to next". */
export function placeWords({ on, number, to }: Reading): string {
  switch (on) {
    case 'coil':
      return `coil ${number}`;
    case 'run':
      return `coils ${number} to ${to ?? number}`;
    case 'phase':
      return `phase ${letter(number)}`;
    case 'line':
      return `${letter(number)} to next`;
    case 'dc':
      return 'DC side';
  }
}

/** Every usable figure of the bench beside its plan, without a word on what it means. */
export function comparedReadings(design: Design, results: Results): Compared[] {
  const machine = benchMachine(design, results);
  const { measurements } = measurementsOf(design);
  return comparedOf(
    measurements.map((measurement) => questionOf(machine, measurement)),
    design.bench ?? [],
    machine.polePairs,
  );
}

export const comparedOf = (questions: readonly Question[], readings: readonly Reading[], polePairs: number): Compared[] =>
  [
    ...questions.map(({ measurement: { row, figure }, value, planned, sigma }) => ({ row, figure, measured: value, planned, sigma })),
    ...hertzOf(readings, polePairs),
  ].sort((a, b) => a.row - b.row);

/** Hertz tell the speed where no other does; beside a written speed they are held against it. */
function hertzOf(readings: readonly Reading[], polePairs: number): Compared[] {
  return readings.flatMap(({ hertz, speed, speedBy }, row) => {
    if (!hertz || !speed) return [];
    const planned = (polePairs * speed) / (2 * Math.PI);
    return [{ row, figure: 'hertz' as const, measured: hertz, planned, sigma: (speedBy === 'drill' ? 0.06 : 0.011) * planned }];
  });
}
