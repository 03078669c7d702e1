import type { Braking } from '../controller/braking';
import type { Demands } from '../controller/check';
import type { ControllerVerdict } from '../controller/stage';
import type { EmfResult } from '../emf/stage';
import type { FieldResult } from '../field/stage';
import type { MagnetsResult } from '../magnets/stage';
import type { Caution } from '../problem';
import type { WindingResult } from '../winding/stage';
import type { WireResult } from '../wire/stage';
import type { Gust } from './gust';

/** The generator at one shaft speed, coil temperature settled. */
export interface CurvePoint {
  rpm: number;
  dcVolts: number;
  dcAmps: number;
  dcAmpsRms: number;
  dcWatts: number;
  phaseAmps: number;
  copperLoss: number;
  diodeLoss: number;
  cableLoss: number;
  eddyLoss: number;
  bearingLoss: number;
  shaftWatts: number;
  coilTemperature: number;
}

/** Turbine and generator together at one wind speed: the generator's side, and what the wind makes of it. */
export interface MatchPoint extends CurvePoint {
  wind: number;
  tipSpeedRatio: number;
  state: 'still' | 'idling' | 'charging' | 'stalled' | 'limited';
  /** Every speed at which wheel and generator balance, rising; at an unstable one the least push tips it over. */
  balances: { rpm: number; stable: boolean }[];
}

export interface Rated {
  wind: number;
  rpm: number;
  dcVolts: number;
  dcAmps: number;
  dcWatts: number;
  /** A/m² in the metal of one turn. */
  currentDensity: number;
  /** The metal's melting point where it runs away. */
  coilTemperature: number;
  /** The coils settle at no temperature: thermal runaway. */
  runsAway: boolean;
  limitTemperature: number;
}

/** What any load and controller have to stand. */
type OpenDemands = Pick<Demands, 'gustVolts' | 'ratedOpenVolts' | 'lightVolts' | 'greatestWatts'>;

/** Everything `solve` works out. The keys of DESIGN's `solve --json` and, beside them, what the worksheets and the sheet draw. */
export interface Results {
  gap: { length: number; peak: number; fundamental: number; plate?: number };
  coils: {
    count: number;
    wireLength: number;
    wireMass: number;
    fill: number;
    fits: boolean;
    coilResistance20: number;
    phaseResistance20: number;
    phaseResistance: number;
    phaseInductance: number;
    pegDistance?: number;
    connections: { coil: number; phase: number; direction: 1 | -1 }[];
  };
  emf: {
    peakPerRadPerSecond: number;
    phaseRmsPer1000rpm: number;
    lineRmsPer1000rpm: number;
    distortion: number;
    hertzPer1000rpm: number;
  };
  /** null where the load is never reached: an open machine, or a speed past run-away. */
  cutIn: { rpm: number | null; wind: number | null };
  curve: CurvePoint[];
  match: MatchPoint[];
  rated: Rated;
  year: { energy: number };
  controller: ControllerVerdict[];
  cautions: Caution[];
  stages: {
    magnets: MagnetsResult;
    field: FieldResult;
    winding: WindingResult;
    wire: WireResult;
    emf: EmfResult;
    rated: CurvePoint;
    demands: OpenDemands;
    /** At rated wind. */
    balances: MatchPoint['balances'];
    gust: Gust;
    braking?: Braking;
    /** Least wind that starts the wheel from standstill, null when none does. [m/s] */
    start: { wind: number | null };
  };
}
