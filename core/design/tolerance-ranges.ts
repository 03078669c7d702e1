/** How roughly a workshop builds: what a careful amateur keeps to, and the most that can be entered. Common practice, no source, but for the wire. */
export const toleranceRanges = {
  gap: { usual: 0.5e-3, most: 5e-3 },
  runOut: { usual: 0.5e-3, most: 5e-3 },
  remanence: { usual: 0.03, most: 0.2 },
  magnetPlace: { usual: 1e-3, most: 10e-3 },
  turns: { usual: 1, most: 20 },
  /** IEC 60317-0-1 allows the conductor ± 1 % from 0.3 mm up (from memory). */
  wire: { usual: 0.01, most: 0.1 },
  airTemperature: { usual: 10, most: 50 },
  magnetTemperature: { usual: 10, most: 60 },
  wind: { usual: 0.1, most: 0.5 },
} as const;
