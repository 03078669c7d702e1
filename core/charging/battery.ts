import type { Caution } from '../problem';
import type { LoadSection } from './section';

/** What a kind of battery wants, for each 12 V of nominal voltage. Common practice, no source: the maker's sheet rules. */
export interface BatteryPreset {
  chemistry: string;
  /** [V] for 12 V nominal. */
  charging: number;
  absorb: number;
  float: number;
  cutOff: number;
  /** Volts per kelvin away from 25 °C, for 12 V nominal. */
  temperatureCompensation: number;
  /** Charge current over capacity. [1/h] */
  usualRate: number;
  greatestRate: number;
}

export const batteryPresets: BatteryPreset[] = [
  {
    chemistry: 'flooded',
    charging: 12.7,
    absorb: 14.6,
    float: 13.4,
    cutOff: 11.8,
    temperatureCompensation: -0.03,
    usualRate: 0.1,
    greatestRate: 0.2,
  },
  {
    chemistry: 'AGM',
    charging: 12.8,
    absorb: 14.4,
    float: 13.6,
    cutOff: 11.8,
    temperatureCompensation: -0.024,
    usualRate: 0.2,
    greatestRate: 0.3,
  },
  {
    chemistry: 'gel',
    charging: 12.8,
    absorb: 14.1,
    float: 13.5,
    cutOff: 11.8,
    temperatureCompensation: -0.024,
    usualRate: 0.15,
    greatestRate: 0.2,
  },
  {
    chemistry: 'LiFePO4',
    charging: 13.2,
    absorb: 14.2,
    float: 13.5,
    cutOff: 11.6,
    temperatureCompensation: 0,
    usualRate: 0.3,
    greatestRate: 0.5,
  },
];

/**
 * Whether the battery stands the charge.
 *
 * @param battery  Battery of the design. [V, A·h]
 * @param amps     Greatest charge current. [A]
 * @returns        A caution, or none; none for a chemistry that is not in the presets.
 *
 * Source    `batteryPresets`.
 * Checked   tests/core/charging/battery.test.ts
 */
export function chargeCautions(battery: Extract<LoadSection, { kind: 'battery' }>, amps: number): Caution[] {
  const preset = batteryPresets.find(({ chemistry }) => chemistry.toLowerCase() === battery.chemistry.toLowerCase());
  const most = preset && preset.greatestRate * battery.capacity;
  if (!most || amps <= most) return [];
  return [
    {
      severity: 'warning',
      where: 'load.capacity',
      message: `${amps.toFixed(0)} A at rated wind is more than the ${most.toFixed(0)} A that ${battery.capacity} A·h of ${preset.chemistry} take: ${Math.ceil(amps / preset.greatestRate)} A·h would do, or a controller that turns the rest away.`,
    },
  ];
}
