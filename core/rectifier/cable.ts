import { wireResistance } from '../wire/resistance';
import type { CableSection } from './section';

/** Preferred conductor sections, mm². IEC 60228, table 1 (from memory). */
export const CABLE_SECTIONS = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300].map((mm2) => mm2 * 1e-6);

/**
 * Where the cable's resistance stands.
 *
 * @param cable           Side, length, section, metal. [m, m²]
 * @param airTemperature  Its temperature. [°C]
 * @returns               Of one line on the AC side, and there and back on the DC side; one of them 0. [Ω]
 *
 * Source    wire/resistance.ts.
 * Checked   tests/core/rectifier/open-circuit.test.ts
 */
export function cableResistance(cable: CableSection, airTemperature: number): { acLine: number; dc: number } {
  const oneWay = wireResistance(cable.metal, cable.length, cable.section, airTemperature);
  return cable.side === 'ac' ? { acLine: oneWay, dc: 0 } : { acLine: 0, dc: 2 * oneWay };
}
