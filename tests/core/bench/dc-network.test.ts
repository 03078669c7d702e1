import { describe, expect, test } from 'vitest';
import { resistiveDcAmps } from '../../../core/bench/dc-network';
import { benchMachine, type BenchMachine } from '../../../core/bench/machine';
import { createRandom } from '../../../core/numeric/random';
import { steadyState } from '../../../core/rectifier/steady-state';
import { randomGeometry, randomWinding, woundOn } from './random-machines';

const chance = createRandom(3);
const random = () => chance.uniform();
const geometry = (() => {
  for (;;) {
    const made = randomGeometry(random);
    if (made.design.winding.phases === 3) return made;
  }
})();

/** A machine of sines alone: one coil a phase, no ohms worth the name. */
function sines(phases: number, connection: BenchMachine['connection'], ohms = 1e-3): BenchMachine {
  const { design, results } = woundOn(geometry, {});
  const plain = benchMachine(design, results);
  const angle = (j: number) => (2 * Math.PI * j) / phases;
  return {
    ...plain,
    polePairs: 1,
    phases,
    connection,
    orders: [1, 3],
    lineResistance: 0,
    leadResistance20: 0,
    warm: () => 1,
    bridge: { arrangement: 'bridge', threshold: 0, slope: 1e-4 },
    coils: Array.from({ length: phases }, (_, j) => ({
      ...plain.coils[0],
      emf: { cos: [Math.cos(angle(j)), 0], sin: [Math.sin(angle(j)), 0] },
      resistance20: ohms,
      phase: j + 1,
      path: 1,
      direction: 1 as const,
    })),
  };
}

const meter = { emf: 0, resistance: 1e7 };

describe('with nothing on it, in closed form', () => {
  test('three phases in star: 3√3/π of the phase’s peak', () => {
    expect(1e7 * resistiveDcAmps(sines(3, 'star'), meter, 100, 20)).toBeCloseTo((300 * Math.sqrt(3)) / Math.PI, 0);
  });

  test('three phases in delta: 3/π of the phase’s peak', () => {
    expect(1e7 * resistiveDcAmps(sines(3, 'delta'), meter, 100, 20)).toBeCloseTo(300 / Math.PI, 0);
  });

  test('one phase: 2/π of its peak, and with one diode dead half of that', () => {
    const one = sines(1, 'separate');
    expect(1e7 * resistiveDcAmps(one, meter, 100, 20)).toBeCloseTo(200 / Math.PI, 0);
    const dead: BenchMachine = { ...one, dead: [{ phase: 1, end: 'begin', rail: 'plus' }] };
    expect(
      resistiveDcAmps(dead, { emf: 0, resistance: 10 }, 100, 20) / resistiveDcAmps(one, { emf: 0, resistance: 10 }, 100, 20),
    ).toBeCloseTo(0.5, 2);
  });

  // Mean of the greater of two sines 120° apart: √3/π; of the least of three: 3√3/2π.
  test('one diode of six dead takes a sixth off', () => {
    const star = sines(3, 'star');
    const dead: BenchMachine = { ...star, dead: [{ phase: 2, end: 'begin', rail: 'minus' }] };
    expect(resistiveDcAmps(dead, meter, 100, 20) / resistiveDcAmps(star, meter, 100, 20)).toBeCloseTo(5 / 6, 2);
  });

  test('an open phase of a star leaves one line across the bridge', () => {
    const star = sines(3, 'star');
    const open: BenchMachine = { ...star, coils: star.coils.map((coil, j) => ({ ...coil, isOpen: j === 1 })) };
    expect(1e7 * resistiveDcAmps(open, meter, 100, 20)).toBeCloseTo((200 * Math.sqrt(3)) / Math.PI, -1);
  });
});

describe('against the full steady state with next to no inductance', () => {
  const arrangements = [
    ['star', 'bridge'],
    ['delta', 'bridge'],
    ['separate', 'bridges-in-parallel'],
    ['separate', 'bridges-in-series'],
  ] as const;
  test.each(arrangements)('%s, %s', (connection, arrangement) => {
    const { design, results } = woundOn(geometry, { ...randomWinding(random), connection });
    const plain = benchMachine({ ...design, rectifier: { ...design.rectifier, arrangement } }, results);
    const source = plain.plan.source(35);
    const stiff = { ...source, inductance: source.inductance.map((row) => row.map((l) => l * 1e-3)) };
    // Half of one phase’s peak: below the lines’ in every arrangement.
    const volts = Math.hypot(source.phaseEmf[0].sin[0], source.phaseEmf[0].cos[0]) * 15;
    for (const dc of [
      { emf: 0, resistance: 8 },
      { emf: volts, resistance: 0.1 },
    ]) {
      const full = steadyState(stiff, plain.bridge, dc, 30).dcAmps;
      expect(full).toBeGreaterThan(0);
      expect(Math.abs(resistiveDcAmps(plain, dc, 30, 35) / full - 1)).toBeLessThan(0.015);
    }
  });
});
