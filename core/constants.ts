/** Magnetic constant μ₀. [H/m] CODATA 2018: 1.256 637 062 12e-6; the difference from 4π·1e-7 is 5e-10 relative. */
export const MU_0 = 1.25663706212e-6;

/**
 * Conductor metals. Resistivity at 20 °C [Ω·m], its temperature coefficient at 20 °C [1/K], density [kg/m³], specific heat [J/(kg·K)],
 * melting point [°C]: fixed points of the ITS-90.
 */
export const METALS = {
  // IEC 60028: 1/58 Ω·mm²/m, 0.00393 /K, 8890 kg/m³. Specific heat: 385 J/(kg·K), CRC Handbook (from memory).
  copper: { resistivity: 1e-6 / 58, temperatureCoefficient: 0.00393, density: 8890, specificHeat: 385, meltingPoint: 1084.62 },
  // IEC 60889 hard-drawn aluminium: 28.264 nΩ·m, 0.00403 /K, 2703 kg/m³ (from memory). Specific heat: 897 J/(kg·K), CRC Handbook (from memory).
  aluminium: { resistivity: 28.264e-9, temperatureCoefficient: 0.00403, density: 2703, specificHeat: 897, meltingPoint: 660.323 },
} as const;

/** An ohmmeter that shows no end of ohms is written down as this. [Ω] */
export const OPEN_OHMS = 1e6;
