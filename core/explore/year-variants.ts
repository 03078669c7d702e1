import type { Design } from '../design/schema';

/** A design with one entry changed, whose year's energy is to be compared. */
export interface YearVariant {
  of: 'turns' | 'volts';
  value: number;
  design: Design;
}

/** Half to double, closest about the design itself. */
const FACTORS = [0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1, 1.05, 1.1, 1.25, 1.4, 1.65, 2];
const MOST_TURNS = 5000;

/** The design with other turns, and with another load voltage where its load has one: which lifts the year's energy is found by solving each. */
export function yearVariants(design: Design): YearVariant[] {
  const { winding, load } = design;
  const counts = FACTORS.map((factor) => Math.round(winding.turns * factor));
  const turns = [...new Set([...counts, winding.turns - 1, winding.turns + 1])]
    .filter((count) => count >= 1 && count <= MOST_TURNS)
    .sort((a, b) => a - b)
    .map((count): YearVariant => ({ of: 'turns', value: count, design: { ...design, winding: { ...winding, turns: count } } }));
  return [...turns, ...FACTORS.flatMap((factor) => atVolts(design, load, factor))];
}

function atVolts(design: Design, load: Design['load'], factor: number): YearVariant[] {
  if (load.kind === 'battery') {
    const voltage = load.voltage * factor;
    return [{ of: 'volts', value: voltage, design: { ...design, load: { ...load, voltage } } }];
  }
  if (load.kind === 'threshold') {
    const turnOn = load.turnOn * factor;
    return [{ of: 'volts', value: turnOn, design: { ...design, load: { ...load, turnOn } } }];
  }
  return [];
}

/** Energy of a year at each value. [J] */
export type YearCurve = { value: number; energy: number }[];

/** What a curve says of a design's own value. */
export interface YearAdvice {
  own: number;
  /** Of one more: of a turn, or of one per cent of the volts. [J] */
  oneMore: number;
  best: { value: number; energy: number };
}

/**
 * How the year's energy follows an entry, about the design's own value and at its best.
 *
 * @param curve  Energies at rising values, the design's own among them. [J]
 * @param own    The design's own value. [-, V]
 * @param step   What is called one more. [-, V]
 * @returns      Energy for one more, and where it is greatest; undefined where the own value is not on the curve. [J]
 *
 * Source    central difference of the neighbours, one-sided at an end.
 * Checked   tests/core/explore/year-variants.test.ts
 */
export function yearAdvice(curve: YearCurve, own: number, step: number): YearAdvice | undefined {
  const at = curve.findIndex(({ value }) => Math.abs(value - own) <= 1e-9 * Math.abs(own));
  if (at < 0 || curve.length < 2) return undefined;
  const [a, b] = [curve[Math.max(0, at - 1)], curve[Math.min(curve.length - 1, at + 1)]];
  const best = curve.reduce((top, each) => (each.energy > top.energy ? each : top));
  return { own: curve[at].energy, oneMore: (step * (b.energy - a.energy)) / (b.value - a.value), best };
}
