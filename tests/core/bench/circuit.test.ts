import { describe, expect, test } from 'vitest';
import { branchAt, comparedOhms, phaseBranch, runOf } from '../../../core/bench/circuit';
import { rms } from '../../../core/emf/waveform';
import { demoMachine } from './fixture';

const star = demoMachine('hill-cabin');
const coil = star.coils[0].resistance20;
const lead = star.leadResistance20;

describe('nine coils in star', () => {
  test('a phase is three coils and its leads, a line two phases', () => {
    expect(branchAt(star, { on: 'phase', phase: 1 }).resistance20).toBeCloseTo(3 * coil + lead, 9);
    expect(branchAt(star, { on: 'line', phase: 1 }).resistance20).toBeCloseTo(2 * (3 * coil + lead), 9);
    expect(rms(branchAt(star, { on: 'line', phase: 1 }).emf) / rms(branchAt(star, { on: 'phase', phase: 1 }).emf)).toBeCloseTo(
      Math.sqrt(3),
      1,
    );
  });

  test('with a phase joined finish for start two lines fall from √3 of it to 1', () => {
    const swapped = { ...star, swapped: [2] };
    const phase = rms(branchAt(star, { on: 'phase', phase: 1 }).emf);
    const lines = [1, 2, 3].map((j) => rms(branchAt(swapped, { on: 'line', phase: j }).emf) / phase);
    expect(lines[0]).toBeCloseTo(1, 1);
    expect(lines[1]).toBeCloseTo(1, 1);
    expect(lines[2]).toBeCloseTo(Math.sqrt(3), 1);
  });

  test('a run is the coils between two of one path, and nothing across two', () => {
    const own = star.coils.flatMap(({ phase }, i) => (phase === 1 ? [i + 1] : []));
    expect(runOf(star, own[0], own[1])).toHaveLength(2);
    expect(branchAt(star, { on: 'run', from: own[0], to: own[2] }).resistance20).toBeCloseTo(3 * coil, 9);
    const other = star.coils.findIndex(({ phase }) => phase === 2) + 1;
    expect(branchAt(star, { on: 'run', from: own[0], to: other }).resistance20).toBe(Infinity);
  });
});

describe('the same in delta', () => {
  const delta = { ...star, connection: 'delta' as const };
  const phase = phaseBranch(delta, 1).resistance20;

  test('a line is one phase beside the other two', () => {
    expect(branchAt(delta, { on: 'line', phase: 1 }).resistance20).toBeCloseTo((2 * phase) / 3, 9);
  });

  test('with one phase open its line is the other two, and so are its volts', () => {
    const open = { ...delta, coils: delta.coils.map((c) => ({ ...c, isOpen: c.phase === 1 })) };
    expect(branchAt(open, { on: 'line', phase: 1 }).resistance20).toBeCloseTo(2 * phase, 9);
    expect(branchAt(open, { on: 'line', phase: 2 }).resistance20).toBeCloseTo(phase, 9);
    expect(rms(branchAt(open, { on: 'line', phase: 1 }).emf) / rms(phaseBranch(delta, 1).emf)).toBeCloseTo(1, 1);
  });

  test('third harmonics do not show between its corners', () => {
    const third = delta.orders.indexOf(3 * delta.polePairs);
    const { cos, sin } = branchAt(delta, { on: 'line', phase: 2 }).emf;
    expect(Math.hypot(cos[third], sin[third])).toBeLessThan(1e-9);
  });
});

test('two paths side by side: the worse is fed by the better', () => {
  const single = demoMachine('hill-cabin');
  const two = {
    ...single,
    leadResistance20: 0,
    coils: single.coils.map((c, i) => ({
      ...c,
      phase: 1,
      path: (i % 2) + 1,
      direction: 1 as const,
      emf: { cos: [0], sin: [i % 2] },
      resistance20: 1,
    })),
    orders: [6],
  };
  // Five coils of nothing beside four of 1 V·s/rad each, 5 Ω beside 4 Ω: Millman's theorem.
  const { emf, resistance20 } = phaseBranch(two, 1);
  expect(resistance20).toBeCloseTo(1 / (1 / 5 + 1 / 4), 9);
  expect(emf.sin[0]).toBeCloseTo(4 / 4 / (1 / 5 + 1 / 4), 9);
});

test('no end of ohms is a number, and always the same', () => {
  expect(comparedOhms(1e6, 2)).toBe(40);
  expect(comparedOhms(5000, 2)).toBe(40);
  expect(comparedOhms(2.1, 2)).toBe(2.1);
});
