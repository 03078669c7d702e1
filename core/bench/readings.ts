import { dcSideOf } from '../charging/loads';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import type { DcSide } from '../rectifier/steady-state';
import type { Place } from './circuit';
import type { MeterKind } from './meter';

export type Figure = 'ohms' | 'acVolts' | 'dcVolts' | 'dcAmps';

/** Shaft speed of a reading and what it is worth. */
export interface BenchSpeed {
  /** [rad/s] */
  value: number;
  /** Standard deviation, relative, of this reading's speed by itself. [-] */
  accuracy: number;
  /** Told by a drill's marking: off by the same share in all its readings. */
  isCommon: boolean;
}

/** One number that a meter showed, with all that decides what it should have been. */
export interface Measurement {
  /** Place of its line among the design's readings, from 0. */
  row: number;
  figure: Figure;
  value: number;
  /** Standard deviation of the meter, as a share of what it shows [-], and its last digit [Ω, V, A]. */
  accuracy: number;
  step: number;
  /** Of the copper. [°C] */
  temperature: number;
  /** Standard deviation, relative, of a resistance whose copper's temperature was not read. [-] */
  warmth: number;
  place?: Place;
  meter?: MeterKind;
  speed?: BenchSpeed;
  /** On the DC terminals, cable not counted. */
  dc?: DcSide;
}

/** A figure that says nothing to the bench, and why. */
export interface LeftOut {
  row: number;
  why: string;
}

/** What handheld instruments are good for, as standard deviations. Common practice, no source. */
export const METER_ACCURACY = 0.02;
export const HERTZ_ACCURACY = 0.003;
export const TACHOMETER_ACCURACY = 0.01;
/** Copper under load is warmer than the room by some tens of degrees. Common practice, no source. */
const UNKNOWN_WARMTH = 0.08;
/** A voltmeter's own resistance. [Ω] Common practice, no source. */
const METER_RESISTANCE = 1e7;

/** Why there is no such place on this machine, or nothing. */
export function strangePlace({ on, number, to = number }: Reading, { layout, phases }: Design['winding']): string | undefined {
  const coils = layout.kind === 'concentrated' ? layout.coils : phases;
  const [name, most, last] =
    on === 'coil' ? ['coil', coils, number] : on === 'run' ? ['coil', coils, Math.max(number, to)] : [on, phases, number];
  return on !== 'dc' && last > most ? `there is no ${name} ${last}: this machine has ${most}` : undefined;
}

/** Every usable number of the bench, and what could not be used. */
export function measurementsOf(design: Design): { measurements: Measurement[]; leftOut: LeftOut[] } {
  const measurements: Measurement[] = [];
  const leftOut: LeftOut[] = [];
  (design.bench ?? []).forEach((reading, row) => {
    const leave = (why: string) => leftOut.push({ row, why });
    const { on, accuracy = METER_ACCURACY } = reading;
    const strange = strangePlace(reading, design.winding);
    if (strange) {
      leave(strange);
      return;
    }
    const base = {
      row,
      accuracy,
      step: 0,
      temperature: reading.temperature ?? design.surroundings.airTemperature,
      warmth: on === 'dc' && reading.temperature === undefined ? UNKNOWN_WARMTH : 0,
    };
    const speed = speedOf(reading, design.discs.poles / 2);
    if (reading.ohms !== undefined && on !== 'dc') {
      const value = reading.ohms - (reading.leads ?? 0);
      if (value < 0) leave(`ohms of ${reading.ohms} are less than those of the leads, ${reading.leads}`);
      else measurements.push({ ...base, figure: 'ohms', value, step: reading.ohmsStep ?? 0, place: placeOf(reading) });
    }
    if (on === 'dc') {
      const loaded = reading.volts === undefined && reading.amps === undefined ? undefined : loadOf(reading, design);
      if (!loaded) return;
      if (reading.wind) {
        leave('read in the wind: held against the wheel below, too unsteady for the generator');
        return;
      }
      if (!speed) leave('without a speed or hertz, DC volts and amps are held against nothing');
      else if (!loaded.dc) leave(loaded.why);
      else {
        const { dc, tellsVolts } = loaded;
        if (reading.volts !== undefined && tellsVolts) measurements.push({ ...base, figure: 'dcVolts', value: reading.volts, speed, dc });
        if (reading.amps !== undefined) measurements.push({ ...base, figure: 'dcAmps', value: reading.amps, speed, dc });
      }
    } else if (reading.volts !== undefined) {
      if (reading.amps) leave('AC volts under load are held against nothing: read them with nothing connected');
      else if (!speed) leave('without a speed or hertz, volts are held against nothing');
      else
        measurements.push({
          ...base,
          figure: 'acVolts',
          value: reading.volts,
          speed,
          meter: reading.meter ?? 'average',
          place: placeOf(reading),
        });
    }
  });
  return { measurements, leftOut };
}

/** Where an AC meter or an ohmmeter stood. */
export function placeOf({ on, number, to }: Reading): Place {
  switch (on) {
    case 'coil':
      return { on, coil: number };
    case 'run':
      return { on, from: number, to: to ?? number };
    case 'phase':
      return { on, phase: number };
    default:
      return { on: 'line', phase: number };
  }
}

/** Hertz tell the speed best; then a tachometer; then a drill. */
export function speedOf({ speed, speedBy, hertz }: Reading, polePairs: number): BenchSpeed | undefined {
  if (hertz !== undefined && hertz > 0) return { value: (2 * Math.PI * hertz) / polePairs, accuracy: HERTZ_ACCURACY, isCommon: false };
  if (speed === undefined || speed === 0) return undefined;
  return { value: speed, accuracy: TACHOMETER_ACCURACY, isCommon: speedBy === 'drill' };
}

type Loaded = { dc: DcSide; tellsVolts: boolean } | { dc?: undefined; why: string };

/** What stood on the DC terminals. A battery's volts go their own way: where they were read they are taken as they were. */
function loadOf(reading: Reading, design: Design): Loaded {
  const kind = reading.load ?? (reading.amps === undefined ? 'none' : 'planned');
  const asRead = (emf: number): Loaded => ({ dc: { emf, resistance: 0 }, tellsVolts: false });
  switch (kind) {
    case 'none':
      return { dc: { emf: 0, resistance: METER_RESISTANCE }, tellsVolts: true };
    case 'resistor':
      if (!reading.loadResistance) return { why: 'a resistor as load needs its ohms' };
      return { dc: { emf: 0, resistance: reading.loadResistance }, tellsVolts: true };
    case 'battery':
      if (reading.volts !== undefined) return asRead(reading.volts);
      if (reading.loadVoltage === undefined) return { why: 'a battery as load needs its volts' };
      return { dc: { emf: reading.loadVoltage, resistance: reading.loadResistance ?? 0 }, tellsVolts: false };
    case 'planned': {
      const side = dcSideOf(design.load);
      if (side?.emf === 0) return { dc: side, tellsVolts: true };
      if (reading.volts !== undefined) return asRead(reading.volts);
      return side ? { dc: side, tellsVolts: false } : { why: 'this load sets its own volts: read volts beside the amps' };
    }
  }
}
