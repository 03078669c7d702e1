import { isOpenCircuit, placeWords, type BenchReport, type Compared, type Reading, type UnitKind } from '../../../core';
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

/** So much of a note fits beside a plot. */
const MOST_NOTE = 20;

/** One figure of a reading by name, as in "coil 3, ohms"; of a long note the beginning. */
export function figureWords(reading: Reading, figure: FigureName): string {
  const name = reading.label || placeWords(reading);
  return `${name.length > MOST_NOTE ? `${name.slice(0, MOST_NOTE - 1)}…` : name}, ${names[figure]}`;
}

/** What no end of ohms is compared as is no figure to show. */
export const shownMeasured = (compared: Compared, units: UnitPreferences): string =>
  isOpenCircuit(compared) ? 'open' : format(compared.measured, kindOf[compared.figure], units, 3);

export const rowsOf = (report: BenchReport | undefined, row: number) => (report?.compared ?? []).filter((c) => c.row === row);
