import { passing } from '../numeric/passing';
import type { Caution } from '../problem';
import { diversionLoad } from './diversion';
import { fuseRating } from './fuse';
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

type Battery = Extract<LoadSection, { kind: 'battery' }>;

/** Half of a 12 V battery, three lead cells or two of LiFePO4: batteries come in whole numbers of it. */
const HALVES = 2;

/**
 * What a battery is to be held to, by its chemistry.
 *
 * @param battery      Battery of the design. [V, A·h]
 * @param temperature  Of the battery. [°C]
 * @returns            Absorb, float and cut-off volts, usual and greatest current; undefined for a chemistry that is not in the presets. [V, A]
 *
 * Source    `batteryPresets`; compensation counts from 25 °C and leaves the cut-off alone.
 * Checked   tests/core/charging/battery.test.ts
 */
export function chargeLimits(battery: Battery, temperature: number) {
  const preset = batteryPresets.find(({ chemistry }) => chemistry.toLowerCase() === battery.chemistry.toLowerCase());
  if (!preset) return undefined;
  const twelves = Math.max(1, Math.round((HALVES * battery.voltage) / preset.charging)) / HALVES;
  const warmer = preset.temperatureCompensation * (temperature - 25);
  return {
    chemistry: preset.chemistry,
    nominal: 12 * twelves,
    absorb: twelves * (preset.absorb + warmer),
    float: twelves * (preset.float + warmer),
    cutOff: twelves * preset.cutOff,
    perKelvin: twelves * preset.temperatureCompensation,
    usualAmps: preset.usualRate * battery.capacity,
    greatestAmps: preset.greatestRate * battery.capacity,
  };
}

/**
 * Whether the battery stands the charge, and what belongs between it and the machine.
 *
 * @param battery  Battery of the design. [V, A·h]
 * @param amps     Charge current at rated wind. [A]
 * @param winds    Charge current at rising winds. [m/s, A]
 * @returns        A caution when it is too much, and notes of settings, fuse and diversion load; of settings none for an unknown chemistry.
 *
 * Source    `batteryPresets`, fuse.ts, diversion.ts.
 * Checked   tests/core/charging/battery.test.ts
 */
export function chargeCautions(battery: Battery, amps: number, winds: readonly { wind: number; dcAmps: number }[] = []): Caution[] {
  const limits = chargeLimits(battery, 25);
  const cautions: Caution[] = [];
  if (limits && amps > limits.greatestAmps)
    cautions.push({
      severity: 'warning',
      where: 'load.capacity',
      message: `${figure(amps)} A at rated wind is more than the ${figure(limits.greatestAmps)} A that ${battery.capacity} A·h of ${limits.chemistry} take: ${Math.ceil((amps / limits.greatestAmps) * battery.capacity)} A·h would do, or a controller that turns the rest away.`,
    });
  if (limits)
    cautions.push({
      severity: 'note',
      where: 'load.chemistry',
      message: `${limits.nominal} V of ${limits.chemistry} at 25 °C: absorb at ${limits.absorb.toFixed(1)} V, float at ${limits.float.toFixed(1)} V, cut off at ${limits.cutOff.toFixed(1)} V${limits.perKelvin ? `, and ${Math.abs(1000 * limits.perKelvin).toFixed(0)} mV less for each degree warmer` : ''}. Usual charge ${figure(limits.usualAmps)} A. The maker’s sheet goes before these.`,
    });
  const fuse = fuseRating(amps);
  if (amps > 0 && fuse) {
    const { watts, resistance } = diversionLoad(amps * battery.voltage, limits?.absorb ?? battery.voltage);
    const blows = passing(
      winds.map(({ wind }) => wind),
      winds.map(({ dcAmps }) => dcAmps),
      fuse,
    );
    const furl = blows
      ? ` Above ${blows.toFixed(1)} m/s more comes, and a blown fuse leaves the wheel without load: furl or brake before.`
      : '';
    cautions.push({
      severity: 'note',
      where: 'load',
      message: `At the battery a fuse of ${fuse} A for direct current, and no cable behind it that stands less.${furl} Without a controller that turns power away, a diversion load of at least ${figure(watts)} W and at most ${figure(resistance)} Ω.`,
    });
  }
  return cautions;
}

/** Three figures, whole numbers left whole. */
const figure = (value: number) => (value >= 100 ? value.toFixed(0) : String(Number(value.toPrecision(3))));
