import { METALS } from '../constants';
import type { EmfResult } from '../emf/stage';
import { adiabaticSeconds } from '../heat/brake';
import type { Caution } from '../problem';
import type { Metal } from '../wire/section';
import type { WireResult } from '../wire/stage';
import type { Plant } from './operating-point';

/** How long a winding shorted to brake the wheel stands it, from the rated point, all heat kept in the metal. */
export function brakeCautions(
  plant: Plant,
  emf: EmfResult,
  wire: WireResult,
  metal: Metal,
  limit: number,
  speed: number,
  temperature: number,
): Caution[] {
  if (speed <= 0 || temperature >= limit) return [];
  const { resistance, polePairs } = plant.sourceAt(temperature);
  const reactance = polePairs * speed * emf.phaseInductance;
  const amps = (emf.peakPerRadPerSecond * speed) / Math.SQRT2 / Math.hypot(resistance, reactance);
  const loss = emf.phaseEmf.length * amps ** 2 * resistance;
  if (!(loss > 0)) return [];
  const { specificHeat, temperatureCoefficient } = METALS[metal];
  const perKelvin = temperatureCoefficient / (1 + temperatureCoefficient * (temperature - 20));
  const seconds = adiabaticSeconds(loss, wire.wireMass * specificHeat, temperature, limit, perKelvin);
  return [
    {
      severity: 'note',
      where: 'site.ratedWind',
      message: `Shorted as a brake at rated speed the coils carry ${amps.toFixed(0)} A and reach their limit in about ${seconds < 10 ? seconds.toFixed(1) : seconds.toFixed(0)} s if the wheel does not stop.`,
    },
  ];
}
