import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { UnitKind } from '../quantities';
import { temperatureFactor } from '../wire/resistance';
import type { Built } from './built';

/** A number whose spread is told. */
export interface Reading {
  id: string;
  label: string;
  unit: UnitKind;
  /** A headline of the design, or what the meter reads on the finished winding. */
  kind: 'headline' | 'meter';
  of(built: Built, design: Design): number;
}

const headline = (id: string, label: string, unit: UnitKind, of: (results: Results) => number | null): Reading => ({
  id,
  label,
  unit,
  kind: 'headline',
  of: ({ results }) => of(results) ?? Infinity,
});

/** Ohms as a meter reads them in a room at the design's air temperature. */
const ohms = (id: string, label: string, of: (built: Built) => number): Reading => ({
  id,
  label,
  unit: 'resistance',
  kind: 'meter',
  of: (built, { surroundings, winding }) => of(built) * temperatureFactor(winding.wire.metal, surroundings.airTemperature),
});

const volts = (id: string, label: string, of: (built: Built) => number): Reading => ({ id, label, unit: 'voltage', kind: 'meter', of });

/** The registry of readings: what the strip of headlines shows and what the winding sheet asks the meter for. Volts are AC, open circuit, at 1000 rpm. */
export const readings: readonly Reading[] = [
  headline('lineVolts', 'Volts at 1000 rpm', 'voltage', ({ emf }) => emf.lineRmsPer1000rpm),
  headline('cutInRpm', 'Cut-in speed', 'rpm', ({ cutIn }) => cutIn.rpm),
  headline('cutInWind', 'Cut-in wind', 'windSpeed', ({ cutIn }) => cutIn.wind),
  headline('ratedAmps', 'Rated amps', 'current', ({ rated }) => rated.dcAmps),
  headline('ratedWatts', 'Rated watts', 'power', ({ rated }) => rated.dcWatts),
  headline('coilTemperature', 'Coil temperature', 'temperature', ({ rated }) => rated.coilTemperature),
  headline('yearEnergy', 'Energy a year', 'energy', ({ year }) => year.energy),
  ohms('coilOhms', 'One coil alone', ({ results, coilShare }) => results.coils.coilResistance20 * coilShare),
  ohms('phaseOhms', 'One phase', ({ results }) => results.coils.phaseResistance20),
  volts('coilVolts', 'One coil alone', ({ results, coilShare }) => results.stages.emf.coilRmsPer1000rpm * coilShare),
  volts('phaseVolts', 'One phase', ({ results }) => results.emf.phaseRmsPer1000rpm),
  volts('lineVoltsRead', 'Line: terminal to next', ({ results }) => results.emf.lineRmsPer1000rpm),
];
