/** One phase over a turn of the shaft: volts per rad/s in even steps, ohms as warm as they are, and inductance. */
export interface SteppedPhase {
  wave: Float64Array;
  ohms: number;
  inductance: number;
}

interface Diode {
  threshold: number;
  slope: number;
}

/** Where a falling function passes through zero. */
function falling(f: (x: number) => number, low: number, high: number): number {
  for (let pass = 0; pass < 34; pass++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Mean current of a star (or of one phase across a bridge) into a resistor, stepped through a stretch to settle and one period by the backward Euler rule: another way
 * to what the bench works out, with inductance in its place.
 */
export function steppedDcAmps(
  phases: readonly SteppedPhase[],
  diode: Diode,
  resistance: number,
  speed: number,
  dead?: { phase: number; rail: 'plus' | 'minus' },
  period = phases[0].wave.length,
): number {
  const samples = phases[0].wave.length;
  const step = (2 * Math.PI) / samples / speed;
  // One phase stands across the bridge by both its ends: the second is a phase without EMF.
  const legs = phases.length > 1 ? phases : [phases[0], { wave: new Float64Array(samples), ohms: 1e-6, inductance: 0 }];
  const currents = legs.map(() => 0);
  const peak = Math.max(...legs.map(({ wave }) => wave.reduce((most, v) => Math.max(most, Math.abs(v)), 0))) * speed;
  const lives = (j: number, rail: 'plus' | 'minus') => !(dead?.phase === j + 1 && dead.rail === rail);
  /** Current out of a leg whose EMF and memory push to `potential` over the minus rail, plus rail at `plus`. */
  const out = (j: number, potential: number, plus: number) => {
    const { ohms, inductance } = legs[j];
    const r = ohms + inductance / step + diode.slope;
    if (lives(j, 'plus') && potential > plus + diode.threshold) return (potential - plus - diode.threshold) / r;
    if (lives(j, 'minus') && potential < -diode.threshold) return (potential + diode.threshold) / r;
    return 0;
  };
  let total = 0;
  const settle = Math.min(period, 96);
  for (let i = 0; i < settle + period; i++) {
    const push = legs.map(({ wave, inductance }, j) => wave[i % samples] * speed + (inductance / step) * currents[j]);
    const star = (plus: number) => -falling((n) => legs.reduce((sum, _, j) => sum + out(j, push[j] - n, plus), 0), -4 * peak, 4 * peak);
    const direct = (plus: number, at: number) => legs.reduce((sum, _, j) => sum + Math.max(0, out(j, push[j] + at, plus)), 0);
    const plus = falling((p) => direct(p, star(p)) - p / resistance, 0, 3 * peak);
    const at = star(plus);
    legs.forEach((_, j) => (currents[j] = out(j, push[j] + at, plus)));
    if (i >= settle) total += plus / resistance;
  }
  return total / period;
}
