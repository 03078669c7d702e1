import { gaussLegendre } from '../numeric/integrate';
import { METALS } from '../constants';

/** Heat made and heat carried away, both at a temperature of the copper. */
export interface HeatBalance {
  /** [°C → W] */
  lossAt: (temperature: number) => number;
  /** To the air. [°C → W/K] */
  conductance: (temperature: number) => number;
  airTemperature: number;
}

const surplusOf =
  ({ lossAt, conductance, airTemperature }: HeatBalance) =>
  (temperature: number) =>
    lossAt(temperature) - conductance(temperature) * (temperature - airTemperature);

/** Unfilled polyester or epoxy resin. Density [kg/m³], specific heat [J/(kg·K)]. Handbook ranges 1100–1250, 1000–1200 (from memory). */
const RESIN = { density: 1200, specificHeat: 1100 };

/**
 * Heat that warms the winding by one kelvin.
 *
 * @param metal        Of the wire. [-]
 * @param metalMass    [kg]
 * @param resinVolume  Resin that warms with it, 0 where there is no time for that. [m³]
 * @returns            Heat capacity. [J/K]
 *
 * Source    mass times specific heat.
 * Checked   tests/core/heat/network.test.ts
 */
export function heatCapacity(metal: keyof typeof METALS, metalMass: number, resinVolume: number): number {
  return METALS[metal].specificHeat * metalMass + RESIN.specificHeat * RESIN.density * resinVolume;
}

const PANELS = 24;
const NODES = 4;

/**
 * Time to warm from one temperature to a higher one.
 *
 * @param balance   Loss and conductance over temperature. [W, W/K, °C]
 * @param capacity  Heat capacity, C. [J/K]
 * @param from      [°C]
 * @param to        [°C]
 * @returns         ∫ C dT / (loss − conductance · rise), 0 when already there, undefined when it never gets there. [s]
 *
 * Omits     the winding's inside being warmer than its mean.
 * Source    one thermal mass; Gauss–Legendre over the temperature.
 * Checked   tests/core/heat/network.test.ts
 */
export function secondsToReach(balance: HeatBalance, capacity: number, from: number, to: number): number | undefined {
  if (from >= to) return 0;
  const surplus = surplusOf(balance);
  if (surplus(to) <= 0) return undefined;
  let seconds = 0;
  for (let panel = 0; panel < PANELS; panel++) {
    const { nodes, weights } = gaussLegendre(NODES, from + ((to - from) * panel) / PANELS, from + ((to - from) * (panel + 1)) / PANELS);
    for (let i = 0; i < NODES; i++) {
      const heating = surplus(nodes[i]);
      if (heating <= 0) return undefined;
      seconds += (weights[i] * capacity) / heating;
    }
  }
  return seconds;
}
