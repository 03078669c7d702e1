import type { Design, Reading, Results } from '../../../core';

/** Speeds of a hand, a slow and a fast drill. [rpm] */
export const benchSpeeds = [60, 200, 500] as const;

export type On = Reading['on'];

/** What the meter must read between two ends. Ohms at 20 °C, volts and hertz at 1000 rpm. */
export interface Expected {
  ohms20: number;
  voltsPer1000rpm: number;
}

export function expectedOn(on: On, design: Design, results: Results): Expected | undefined {
  const { coils, emf, stages } = results;
  switch (on) {
    case 'coil':
      return { ohms20: coils.coilResistance20, voltsPer1000rpm: stages.emf.coilRmsPer1000rpm };
    case 'phase':
      return { ohms20: coils.phaseResistance20, voltsPer1000rpm: emf.phaseRmsPer1000rpm };
    case 'line':
      return { ohms20: coils.phaseResistance20 * lineFactor(design), voltsPer1000rpm: emf.lineRmsPer1000rpm };
    case 'dc':
      return undefined;
  }
}

/** Phases met between two terminals: two in series in a star, one beside all the others in a delta ring. */
function lineFactor({ winding }: Design): number {
  if (winding.connection === 'star') return 2;
  return winding.connection === 'delta' ? (winding.phases - 1) / winding.phases : 1;
}

export interface Comparison {
  what: 'ohms' | 'volts' | 'hertz';
  measured: number;
  expected: number;
  /** Measured over expected, less one. */
  deviation: number;
}

/** Every figure of a reading beside what it should have been. */
export function compared(reading: Reading, design: Design, results: Results): Comparison[] {
  const expected = expectedOn(reading.on, design, results);
  if (!expected) return [];
  const thousands = reading.speed === undefined ? undefined : (reading.speed * 60) / (2 * Math.PI) / 1000;
  const pairs = [
    { what: 'ohms' as const, measured: reading.ohms, expected: expected.ohms20 },
    { what: 'volts' as const, measured: reading.volts, expected: thousands && expected.voltsPer1000rpm * thousands },
    { what: 'hertz' as const, measured: reading.hertz, expected: thousands && results.emf.hertzPer1000rpm * thousands },
  ];
  return pairs.flatMap(({ what, measured, expected: e }) => (measured !== undefined && e ? [{ what, measured, expected: e, deviation: measured / e - 1 }] : []));
}

const causes: Record<Comparison['what'], { low: string; high: string }> = {
  ohms: { low: 'too low: shorted turns, thicker wire or fewer turns', high: 'too high: a poor joint, a broken strand or thinner wire' },
  volts: { low: 'too low: a reversed or missing coil, a wider gap or fewer turns', high: 'too high: a narrower gap, more turns or a stronger magnet' },
  hertz: { low: 'too low: the shaft turned slower than written down', high: 'too high: the shaft turned faster than written down' },
};

/** A meter, a thermometer and a drill together are good to a few per cent. */
export function verdict({ what, deviation }: Comparison): { tone: 'good' | 'fair' | 'bad'; text: string } {
  const size = Math.abs(deviation);
  if (size <= 0.05) return { tone: 'good', text: 'as it should be' };
  const cause = causes[what][deviation < 0 ? 'low' : 'high'];
  return size <= 0.12 ? { tone: 'fair', text: `near; measure again. If it stays ${cause}` } : { tone: 'bad', text: cause };
}
