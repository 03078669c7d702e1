import type { Caution } from '../problem';

export interface MagnetsResult {
  /** Remanence at the magnets' temperature. [T] */
  remanence: number;
  /** Intrinsic coercivity at the magnets' temperature, where the grade gives one. [A/m] */
  intrinsicCoercivity?: number;
  cautions: Caution[];
}
