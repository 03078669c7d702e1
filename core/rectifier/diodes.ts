/** A diode as threshold and slope. [V, Ω] */
export interface DiodePreset {
  label: string;
  threshold: number;
  slope: number;
}

/** Straight lines through typical data-sheet curves at working current. Common practice, no source; the part's own sheet rules. */
export const diodePresets: DiodePreset[] = [
  { label: 'Silicon bridge, 35 A', threshold: 0.75, slope: 0.01 },
  { label: 'Silicon bridge, 10 A', threshold: 0.75, slope: 0.025 },
  { label: 'Schottky, 20 A', threshold: 0.35, slope: 0.012 },
  { label: 'Schottky, 5 A', threshold: 0.3, slope: 0.03 },
  { label: 'Ideal-diode controller', threshold: 0.02, slope: 0.005 },
];
