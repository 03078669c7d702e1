import type { Caution } from '../problem';

/** Extra-low voltage: 50 V AC RMS, 120 V ripple-free DC. IEC 61140:2016, clause 4.2 (from memory). */
export const ELV = { ac: 50, dc: 120 };

/**
 * Whether a hand on the terminals can be hurt at any speed the wheel can reach.
 *
 * @param lineRms      Open-circuit AC between terminals, RMS over shaft speed. [V·s/rad]
 * @param dcPeak       Open-circuit rectified peak over shaft speed. [V·s/rad]
 * @param topSpeed     Run away in the greatest gust. [rad/s]
 * @returns            One caution, or none.
 *
 * Source    IEC 61140 extra-low voltage.
 * Checked   tests/core/controller/shock.test.ts
 */
export function shockCautions(lineRms: number, dcPeak: number, topSpeed: number): Caution[] {
  const rpm = (speed: number) => Math.round((speed * 60) / (2 * Math.PI));
  const from = Math.min(ELV.ac / lineRms, ELV.dc / dcPeak);
  if (!(from < topSpeed)) return [];
  return [
    {
      severity: 'danger',
      where: 'winding.turns',
      message: `Open circuit, the terminals pass 50 V AC or 120 V DC above ${rpm(from)} rpm, and the wheel can run away to ${rpm(topSpeed)} rpm: ${Math.round(lineRms * topSpeed)} V AC, ${Math.round(dcPeak * topSpeed)} V DC. Insulate, enclose, and let a licensed person connect it.`,
    },
  ];
}
