import type { Results } from '../chain/results';
import { METALS } from '../constants';
import type { Design } from '../design/schema';
import { effectiveConnection } from './joins';
import { type Bands, passBands } from './tolerances';

export interface ExpectedReadings {
  /** The room's temperature. [°C] */
  temperature: number;
  /** At that temperature. [Ω] */
  ohms: { coil: number; phase: number; line: number };
  /** Open circuit. [rpm, Hz, V RMS] */
  speeds: { rpm: number; hertz: number; coil: number; phase: number; line: number }[];
  /** Half-widths within which a reading passes, as shares of it. */
  bands: Bands;
}

/** By hand, on a slow drill and on a drill. [rpm] */
const SPEEDS = [60, 150, 300];

/**
 * Resistance between two neighbouring terminals of a balanced winding.
 *
 * @param phase       Resistance of one phase. [Ω]
 * @param phases      Phases, m. [-]
 * @param connection  Star, delta or separate. [-]
 * @returns           Star 2 R; delta R beside the other m − 1 in series, R (m − 1)/m; separate R. [Ω]
 *
 * Omits     contact resistance of the meter's leads.
 * Source    Kirchhoff's laws.
 * Checked   tests/core/sheet/expected-readings.test.ts
 */
export function lineResistance(phase: number, phases: number, connection: Design['winding']['connection']): number {
  switch (effectiveConnection(connection, phases)) {
    case 'star':
      return 2 * phase;
    case 'delta':
      return (phase * (phases - 1)) / phases;
    case 'separate':
      return phase;
  }
}

/** What a meter must show on the finished winding before it meets its load. */
export function expectedReadings(design: Design, results: Results): ExpectedReadings {
  const { coils, emf, stages } = results;
  const temperature = design.surroundings.airTemperature;
  const warm = 1 + METALS[design.winding.wire.metal].temperatureCoefficient * (temperature - 20);
  const phase = coils.phaseResistance20 * warm;
  return {
    temperature,
    ohms: { coil: coils.coilResistance20 * warm, phase, line: lineResistance(phase, design.winding.phases, design.winding.connection) },
    speeds: SPEEDS.map((rpm) => ({
      rpm,
      hertz: (emf.hertzPer1000rpm * rpm) / 1000,
      coil: (stages.emf.coilRmsPer1000rpm * rpm) / 1000,
      phase: (emf.phaseRmsPer1000rpm * rpm) / 1000,
      line: (emf.lineRmsPer1000rpm * rpm) / 1000,
    })),
    bands: passBands(design, results),
  };
}
