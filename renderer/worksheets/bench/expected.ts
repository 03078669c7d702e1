import { expectedReadings, type Design, type Reading, type Results } from '../../../core';

export type On = Reading['on'];

export interface Comparison {
  what: 'ohms' | 'volts' | 'hertz';
  measured: number;
  expected: number;
  /** Measured over expected, less one. */
  deviation: number;
}

/** Every figure of a reading beside what it should have been. */
export function compared(reading: Reading, design: Design, results: Results): Comparison[] {
  const { on, temperature = design.surroundings.airTemperature, speed } = reading;
  if (on === 'dc' || on === 'run') return [];
  const room = { ...design, surroundings: { ...design.surroundings, airTemperature: temperature } };
  const expected = expectedReadings(room, results);
  const turning = speed === undefined ? undefined : atSpeed(expected, speed);
  const pairs = [
    { what: 'ohms' as const, measured: reading.ohms, expected: expected.ohms[on] },
    { what: 'volts' as const, measured: reading.volts, expected: turning?.[on] },
    { what: 'hertz' as const, measured: reading.hertz, expected: turning?.hertz },
  ];
  return pairs.flatMap(({ what, measured, expected: e }) =>
    measured !== undefined && e ? [{ what, measured, expected: e, deviation: measured / e - 1 }] : [],
  );
}

/** Volts and hertz go with the speed. [rad/s] */
function atSpeed(
  { speeds }: ReturnType<typeof expectedReadings>,
  speed: number,
): { coil: number; phase: number; line: number; hertz: number } | undefined {
  const one = speeds[0];
  if (!one) return undefined;
  const times = (speed * 60) / (2 * Math.PI) / one.rpm;
  return { coil: one.coil * times, phase: one.phase * times, line: one.line * times, hertz: one.hertz * times };
}

const causes: Record<Comparison['what'], { low: string; high: string }> = {
  ohms: { low: 'too low: shorted turns, thicker wire or fewer turns', high: 'too high: a poor joint, a broken strand or thinner wire' },
  volts: {
    low: 'too low: a reversed or missing coil, a wider gap or fewer turns',
    high: 'too high: a narrower gap, more turns or a stronger magnet',
  },
  hertz: { low: 'too low: the shaft turned slower than written down', high: 'too high: the shaft turned faster than written down' },
};

/** A meter, a thermometer and a drill together are good to a few per cent. */
export function verdict({ what, deviation }: Comparison): { tone: 'good' | 'fair' | 'bad'; text: string } {
  const size = Math.abs(deviation);
  if (size <= 0.05) return { tone: 'good', text: 'as it should be' };
  const cause = causes[what][deviation < 0 ? 'low' : 'high'];
  return size <= 0.12 ? { tone: 'fair', text: `near; measure again. If it stays, ${cause}` } : { tone: 'bad', text: cause };
}
