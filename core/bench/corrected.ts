import type { Design } from '../design/schema';
import { crossing } from '../numeric/crossing';
import { isOff, type Fitted } from './fit';
import type { BenchMachine } from './machine';

/** What was measured over what was planned. */
export interface Measured {
  field?: Fitted;
  resistance?: Fitted;
  /** Power coefficient over that of the plan's curve. */
  coefficient?: Fitted;
}

/** Whether a field other than planned is put down to the magnets or to the gap. */
export type FieldCause = 'magnets' | 'gap';

const LEAST_CLEARANCE = 0.1e-3;
const MOST_CLEARANCE = 0.02;
/** A running clearance lies on each side of the copper. */
const SIDES = 2;
const MOST_NOTES = 20_000;

const percent = ({ value, low, high }: Fitted) =>
  `${(100 * value).toFixed(1)} % of plan (95 % between ${(100 * low).toFixed(1)} and ${(100 * high).toFixed(1)})`;
const moved = (name: string, from: number, to: number, unit: string, digits: number) =>
  `${name} ${from.toFixed(digits)} → ${to.toFixed(digits)} ${unit}`;
const within = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/**
 * The design as it was measured, with what was changed and why at the head of its notes.
 *
 * @param design    As planned. [-]
 * @param machine   Its machine on the bench. [-]
 * @param measured  Factors. [-]
 * @param cause     What a field other than planned is put down to. [-]
 * @returns         The entries changed, by path, and the notes. [-] Entries stay in their own ranges, and those that may well be as planned stay so.
 *
 * Omits     resistance other than the wire's: all of it goes into the conductor's diameter.
 * Source    B ∝ Br; widening of the gap as in machine.ts; R ∝ 1/d².
 * Checked   tests/core/bench/corrected.test.ts
 */
export function correctedEntries(design: Design, machine: BenchMachine, measured: Measured, cause: FieldCause): Record<string, unknown> {
  const { magnets, discs, winding, turbine } = design;
  const changes: Record<string, unknown> = {};
  const history: string[] = [];
  const [field, resistance, coefficient] = [measured.field, measured.resistance, measured.coefficient].map((fitted) =>
    fitted && isOff(fitted) ? fitted : undefined,
  );
  if (field && cause === 'magnets') {
    const remanence = within(magnets.remanence * field.value, 0.05, 1.6);
    changes['magnets.remanence'] = remanence;
    history.push(`field ${percent(field)}: ${moved('remanence', magnets.remanence, remanence, 'T', 3)}`);
  } else if (field) {
    const factor = (more: number) => machine.plan.widened(more)[0];
    const [least, most] = [LEAST_CLEARANCE, MOST_CLEARANCE].map((clearance) => SIDES * (clearance - discs.runningClearance));
    const more = within(
      crossing((x) => field.value - factor(x), least, most),
      least,
      most,
    );
    const clearance = within(discs.runningClearance + more / SIDES, LEAST_CLEARANCE, MOST_CLEARANCE);
    changes['discs.runningClearance'] = clearance;
    history.push(`field ${percent(field)}: ${moved('running clearance', 1000 * discs.runningClearance, 1000 * clearance, 'mm', 2)}`);
  }
  if (resistance) {
    const { conductorDiameter, overallDiameter } = winding.wire;
    const diameter = within(conductorDiameter / Math.sqrt(resistance.value), 0.05e-3, overallDiameter);
    changes['winding.wire.conductorDiameter'] = diameter;
    history.push(`resistance ${percent(resistance)}: ${moved('conductor', 1000 * conductorDiameter, 1000 * diameter, 'mm', 3)}`);
  }
  if (coefficient && !turbine.curve) {
    const peak = within(turbine.peakCp * coefficient.value, 0.01, 0.66);
    changes['turbine.peakCp'] = peak;
    history.push(`power coefficient ${percent(coefficient)}: ${moved('best', turbine.peakCp, peak, '', 3).trim()}`);
  }
  if (history.length === 0) return {};
  const notes = [`Measured on the bench: ${history.join('; ')}.`, design.notes ?? ''].filter(Boolean).join('\n');
  return { ...changes, notes: notes.slice(0, MOST_NOTES) };
}
