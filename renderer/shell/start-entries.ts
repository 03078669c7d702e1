import { awgGauges, batteryPresets, magnetGrades, metricGauges, type InHand, type Quantity } from '../../core';
import type { NumberRange } from '../parts/quantity-text';
import { choiceWord, quantityAt } from '../words';

/** A question of the start: a number or a choice, at its path of what is in hand. */
export interface Question {
  path: string;
  quantity: Quantity;
  range?: NumberRange;
  choices?: { value: string; word: string }[];
}

const number = (path: string, quantity: Quantity, min: number, max: number, whole?: 'any'): Question => ({
  path,
  quantity,
  range: { min, max, ...(whole && { whole }) },
});
const choice = (path: string, quantity: Quantity, choices: Question['choices']): Question => ({ path, quantity, choices });
const words = (values: readonly string[]) => values.map((value) => ({ value, word: choiceWord(value) }));

export const firstAnswers: InHand = {
  wheelDiameter: 2,
  meanWind: 4.5,
  battery: { inSeries: 2, chemistry: 'flooded', capacity: 200 },
  magnets: { shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 }, grade: 'N42', count: 24 },
  wire: { metal: 'copper', conductorDiameter: 0.0014, overallDiameter: 0.001502, mass: 5 },
};

/** Sizes to begin with when the kind of magnet changes. */
export const magnetShapes: Record<InHand['magnets']['shape']['kind'], InHand['magnets']['shape']> = {
  block: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 },
  cylinder: { kind: 'cylinder', diameter: 0.03, axial: 0.01 },
};

/** The path whose answer is a row of the wire table. */
export const WIRE_SIZE = 'wire.size';

/** The path of the question that a problem is about: a row of the wire table answers for both diameters. */
export const questionAt = (where: string): string => (/^wire\.\w+Diameter$/.test(where) ? WIRE_SIZE : where);

export const gaugesOf = (sizes: 'metric' | 'awg') => (sizes === 'awg' ? awgGauges : metricGauges.filter(({ grade }) => grade === 2));

/** What is asked, in the order of the power's way. */
export function questionsOf(shape: InHand['magnets']['shape'], sizes: 'metric' | 'awg'): { title: string; questions: Question[] }[] {
  const sides = shape.kind === 'block' ? ['radial', 'tangential', 'axial'] : ['diameter', 'axial'];
  return [
    {
      title: 'Wind and wheel',
      questions: [number('meanWind', quantityAt('site.meanWind'), 1, 15), number('wheelDiameter', quantityAt('turbine.diameter'), 0.5, 8)],
    },
    {
      title: 'Battery',
      questions: [
        choice(
          'battery.inSeries',
          { label: 'Voltage', unit: 'word', meaning: 'Batteries of 12 V in series' },
          [1, 2, 4].map((n) => ({ value: String(n), word: `${12 * n} V` })),
        ),
        choice('battery.chemistry', quantityAt('load.chemistry'), words(batteryPresets.map(({ chemistry }) => chemistry))),
        number('battery.capacity', quantityAt('load.capacity'), 1, 1e5),
      ],
    },
    {
      title: 'Magnets in hand',
      questions: [
        choice('magnets.shape.kind', quantityAt('magnets.shape'), words(['block', 'cylinder'])),
        ...sides.map((side) => number(`magnets.shape.${side}`, quantityAt(`magnets.shape.${side}`), 2e-3, 0.2)),
        choice('magnets.grade', quantityAt('magnets.grade'), words(magnetGrades.map(({ name }) => name))),
        number(
          'magnets.count',
          { label: 'How many', unit: 'count', meaning: 'All that are in hand, for both discs together' },
          1,
          400,
          'any',
        ),
      ],
    },
    {
      title: 'Wire in hand',
      questions: [
        choice('wire.metal', quantityAt('winding.wire.metal'), words(['copper', 'aluminium'])),
        choice(
          WIRE_SIZE,
          { label: 'Wire size', unit: 'word', meaning: 'Bare diameter, with the usual covering' },
          words(gaugesOf(sizes).map(({ label }) => label)),
        ),
        number('wire.mass', { label: 'How much', unit: 'mass', meaning: 'Metal on all reels of it' }, 0.05, 1000),
      ],
    },
  ];
}
