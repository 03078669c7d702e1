import type { BenchReport, Compared, Reading, UnitKind } from '../../../core';
import { format, type UnitPreferences } from '../../units';

export type FigureName = Compared['figure'];

export const kindOf: Record<FigureName, UnitKind> = {
  ohms: 'resistance',
  acVolts: 'voltage',
  dcVolts: 'voltage',
  dcAmps: 'current',
  hertz: 'frequency',
};

const names: Record<FigureName, string> = { ohms: 'ohms', acVolts: 'volts', dcVolts: 'DC volts', dcAmps: 'DC amps', hertz: 'hertz' };

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

/** So much of a note fits beside a plot. */
const MOST_NOTE = 20;

/** One figure of a reading by name, as in "coil 3, ohms"; of a long note the beginning. */
export function figureWords(reading: Reading, figure: FigureName): string {
  const name = reading.label || placeWords(reading);
  return `${name.length > MOST_NOTE ? `${name.slice(0, MOST_NOTE - 1)}…` : name}, ${names[figure]}`;
}

/** Within two standard deviations of meter, speed and winding a figure is as it should be; beyond three it is not. */
const AS_IT_SHOULD_BE = 2;
const WRONG = 3;

export type Tone = 'good' | 'warn' | 'bad';

export const toneOf = (deviations: number): Tone => {
  const size = Math.abs(deviations);
  return size <= AS_IT_SHOULD_BE ? 'good' : size <= WRONG ? 'warn' : 'bad';
};

export const deviationsOf = ({ measured, planned, sigma }: Compared) => (sigma > 0 ? (measured - planned) / sigma : 0);

const words: Record<Tone, string> = { good: 'as it should be', warn: 'near; read again', bad: 'not as planned' };

export const toneWords = (tone: Tone) => words[tone];

/** What no end of ohms is compared as is no figure to show. */
export function shownMeasured({ figure, measured, planned }: Compared, units: UnitPreferences): string {
  return figure === 'ohms' && measured > 19 * planned ? 'open' : format(measured, kindOf[figure], units, 3);
}

/** To a tenth of a per cent: a meter tells no more. */
export function percentOff({ figure, measured, planned }: Compared): string {
  if (planned === 0 || (figure === 'ohms' && measured > 19 * planned)) return '–';
  const off = Math.round(1000 * (measured / planned - 1)) / 10;
  return `${off < 0 ? '−' : off > 0 ? '+' : ''}${Math.abs(off).toFixed(1)} %`;
}

export const rowsOf = (report: BenchReport | undefined, row: number) => (report?.compared ?? []).filter((c) => c.row === row);
