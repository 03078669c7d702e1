import type { Caution } from '../problem';
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
 * Checked   tests/core/rectifier/cable.test.ts
 */
export function cableResistance(cable: CableSection, airTemperature: number): { acLine: number; dc: number } {
  const oneWay = wireResistance(cable.metal, cable.length, cable.section, airTemperature);
  return cable.side === 'ac' ? { acLine: oneWay, dc: 0 } : { acLine: 0, dc: 2 * oneWay };
}

/** Share of what enters the cable that may stay in it. Common practice, no source. */
const MOST_DROP = 0.05;

/**
 * Volts lost on the way, as a share of those at its beginning.
 *
 * @param lost       Heat in the cable. [W]
 * @param delivered  What leaves it. [W]
 * @returns          Share, 0 where nothing flows. [-]
 *
 * Valid     exact for direct current; on the AC side the share of power, of which the share of volts is the in-phase part.
 * Source    the same amps at both ends.
 * Checked   tests/core/rectifier/cable.test.ts
 */
export function cableDrop(lost: number, delivered: number): number {
  return lost > 0 ? lost / (lost + delivered) : 0;
}

/** One section a cable could have. */
export interface CableChoice {
  /** [m²] */
  section: number;
  /** Share of what enters it. [-] */
  drop: number;
  /** [W] */
  lost: number;
  /** No more than may stay in it. */
  enough: boolean;
}

/** So many preferred sections thinner and thicker than the least that would do are worth a look. */
const THINNER = 2;
const THICKER = 2;

/**
 * Preferred sections about the least that would do, and the cable's own.
 *
 * @param cable      Its section. [m²]
 * @param lost       Heat in it. [W]
 * @param delivered  What leaves it. [W]
 * @returns          Sections rising, with what each would keep of the same amps; none where nothing flows. [m², W]
 *
 * Omits     the amps changing with the drop; whether the cable stands them without getting hot.
 * Source    loss inverse to the section at the same amps; IEC 60228 (from memory).
 * Checked   tests/core/rectifier/cable.test.ts
 */
export function cableChoices({ section: own }: Pick<CableSection, 'section'>, lost: number, delivered: number): CableChoice[] {
  if (!(lost > 0 && delivered > 0)) return [];
  const least = CABLE_SECTIONS.findIndex((section) => cableDrop((lost * own) / section, delivered) <= MOST_DROP);
  const middle = least < 0 ? CABLE_SECTIONS.length - 1 : least;
  const near = CABLE_SECTIONS.slice(Math.max(0, middle - THINNER), middle + THICKER + 1);
  return [...near.filter((section) => Math.abs(section - own) > 1e-6 * own), own]
    .sort((a, b) => a - b)
    .map((section) => {
      const kept = (lost * own) / section;
      const drop = cableDrop(kept, delivered);
      return { section, drop, lost: kept, enough: drop <= MOST_DROP };
    });
}

/**
 * Whether the cable eats too much.
 *
 * @param cable      Its section. [m²]
 * @param lost       Heat in it. [W]
 * @param delivered  What leaves it. [W]
 * @returns          A caution with the least preferred section that would do, or none. [m²]
 *
 * Source    loss inverse to the section at the same amps; five parts in a hundred are common practice, no source.
 * Checked   tests/core/rectifier/cable.test.ts
 */
export function cableCautions(cable: Pick<CableSection, 'section'>, lost: number, delivered: number): Caution[] {
  const drop = cableDrop(lost, delivered);
  if (drop <= MOST_DROP) return [];
  const wanted = (cable.section * lost * (1 - MOST_DROP)) / (MOST_DROP * delivered);
  const section = CABLE_SECTIONS.find((each) => each >= wanted);
  const cure = section
    ? `${Number((section * 1e6).toPrecision(4))} mm² would keep it below ${100 * MOST_DROP} %`
    : 'No usual cable would do: take a higher voltage';
  return [
    {
      severity: 'warning',
      where: 'cable.section',
      message: `At rated wind the cable keeps ${(100 * drop).toFixed(0)} % of the volts and ${lost.toFixed(0)} W for itself. ${cure}, or a shorter way.`,
    },
  ];
}
