import type { BenchMachine } from './machine';
import { predicted, questionOf } from './predict';
import type { Diagnosis, Explanation } from './rank';
import type { Figure, Measurement } from './readings';

/** The reading that would best tell two explanations apart. */
export interface NextMeasurement {
  /** As in "AC volts across coil 3, meter to peak". */
  words: string;
  figure: Figure;
  /** [rad/s] where the shaft must turn. */
  speed?: number;
  /** What each would show. */
  expected: [Explanation, number][];
  /** Distance between the two, in standard deviations of one reading. */
  deviations: number;
}

/** A drill at a walking pace, where nothing was turned yet. [rad/s] Common practice, no source. */
const USUAL_SPEED = (2 * Math.PI * 150) / 60;
/** Less than this and the reading is not worth the walk. */
const WORTH_READING = 1.5;

const letter = (phase: number) => String.fromCharCode(64 + phase);

interface Candidate {
  words: string;
  measurement: Measurement;
}

/** Everything a builder could still read, with meters as good as those before. */
function candidates(machine: BenchMachine, like: Measurement | undefined): Candidate[] {
  const { coils, phases, roomTemperature } = machine;
  const value = like?.speed?.value ?? USUAL_SPEED;
  const speed = { value, accuracy: like?.speed?.accuracy ?? 0.01, isCommon: false };
  const base = { row: -1, value: 0, accuracy: like?.accuracy ?? 0.02, step: 0, temperature: roomTemperature, warmth: 0 };
  const ohms = (words: string, place: Measurement['place']): Candidate => ({
    words: `ohms ${words}`,
    measurement: { ...base, figure: 'ohms', place },
  });
  const volts = (words: string, place: Measurement['place'], meter: Measurement['meter'] = like?.meter ?? 'average'): Candidate => ({
    words: `AC volts ${words}${meter === 'peak' ? ', peak on a scope' : ''}`,
    measurement: { ...base, figure: 'acVolts', place, meter, speed },
  });
  const coilNumbers = coils.map((_, i) => i + 1);
  const phaseNumbers = Array.from({ length: phases }, (_, j) => j + 1);
  const runs = coilNumbers.flatMap((from) => {
    const { phase, path } = coils[from - 1];
    const next = coilNumbers.find((k) => k > from && coils[k - 1].phase === phase && coils[k - 1].path === path);
    return next === undefined ? [] : [{ from, to: next }];
  });
  return [
    ...coilNumbers.flatMap((coil) => [
      ohms(`across coil ${coil} by itself`, { on: 'coil', coil }),
      volts(`across coil ${coil} by itself`, { on: 'coil', coil }),
    ]),
    volts('across coil 1 by itself', { on: 'coil', coil: 1 }, 'peak'),
    ...runs.flatMap(({ from, to }) => [volts(`from coil ${from} to coil ${to} as joined, both counted`, { on: 'run', from, to })]),
    ...phaseNumbers.flatMap((phase) => [
      ohms(`of phase ${letter(phase)}`, { on: 'phase', phase }),
      volts(`of phase ${letter(phase)}`, { on: 'phase', phase }),
      ohms(`from terminal ${letter(phase)} to the next`, { on: 'line', phase }),
      volts(`from terminal ${letter(phase)} to the next`, { on: 'line', phase }),
    ]),
    {
      words: 'DC volts behind the bridge with nothing on it',
      measurement: { ...base, figure: 'dcVolts', dc: { emf: 0, resistance: 1e7 }, speed },
    },
  ];
}

/** The two that a further reading should tell apart: within the first suspect, or the first two; a healthy machine against what no reading has looked at. */
export function toTellApart({ suspects, verdict }: Diagnosis): [Explanation, Explanation] | undefined {
  if (verdict === 'fault' || suspects.length === 0) return undefined;
  const [first, second] = suspects;
  const [head, ...others] = first.explanations;
  const other = others.find(({ hypothesis }) => hypothesis.family !== head.hypothesis.family) ?? others[0];
  if (other) return [head, other];
  return second ? [head, second.explanations[0]] : undefined;
}

/**
 * The reading that best tells the top two explanations apart.
 *
 * @param machine    As planned. [-]
 * @param diagnosis  Of the readings so far. [-]
 * @param like       A reading whose meter and speed will do again. [-]
 * @returns          Reading and what each would show; undefined where no meter tells. [-]
 *
 * Source    greatest distance of the two predictions over the standard deviation of a reading.
 * Checked   tests/core/bench/next-measurement.test.ts
 */
export function nextMeasurement(machine: BenchMachine, diagnosis: Diagnosis, like?: Measurement): NextMeasurement | undefined {
  const pair = toTellApart(diagnosis);
  if (!pair) return undefined;
  let best: NextMeasurement | undefined;
  for (const { words, measurement } of candidates(machine, like)) {
    const shown = pair.map(({ machine: one, allowance }) => predicted(one, measurement, allowance));
    const question = questionOf(machine, { ...measurement, value: Math.min(...shown) });
    const deviations = Math.min(100, Math.abs(shown[0] - shown[1]) / question.sigma);
    if (deviations > WORTH_READING && deviations > 1.05 * (best?.deviations ?? 0))
      best = {
        words,
        figure: measurement.figure,
        ...(measurement.speed && { speed: measurement.speed.value }),
        expected: pair.map((explanation, i) => [explanation, shown[i]]),
        deviations,
      };
  }
  return best;
}
