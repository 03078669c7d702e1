import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { expect, test, vi } from 'vitest';
import { searchAll } from '../../core/explore/search';
import { solve } from '../../core/index';
import { demo } from '../demo';

/** Threads of their own, on a machine that may be busy. */
vi.setConfig({ testTimeout: 120_000 });

const file = path.resolve('assets/shed-light.gapwright');
const design = demo('shed-light');

function gapwright(...args: string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.resolve('dist/cli/main.cjs'), ...args], {
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return stdout;
}

test('search gives the front that core finds on one thread, best marks first', () => {
  const { front, ...counts } = JSON.parse(gapwright('search', file, '--json')) as {
    considered: number;
    solved: number;
    front: { candidate: unknown; objectives: unknown; mark: number }[];
  };
  const whole = searchAll(design);
  expect(counts).toEqual({ considered: whole.considered, solved: whole.solved, pruned: whole.pruned });
  const texts = (all: readonly { candidate: unknown; objectives: unknown }[]) =>
    all.map(({ candidate, objectives }) => JSON.stringify({ candidate, objectives })).sort();
  expect(texts(front)).toEqual(texts(whole.front.items));
  expect(front.map(({ mark }) => mark)).toEqual(front.map(({ mark }) => mark).sort((a, b) => b - a));
  expect(gapwright('search', file)).toMatch(/^304 machines: .*\n\nFront\n +mark % .*turns .*cut-in m\/s.* wire kg\n/);
});

test('spread gives bands about the design as drawn', () => {
  const { samples, bands } = JSON.parse(gapwright('spread', file, '--json')) as {
    samples: number;
    bands: { id: string; nominal: number; low: { value: number }; middle: { value: number }; high: { value: number } }[];
  };
  expect(samples).toBe(1000);
  const results = solve(design);
  const of = (id: string) => bands.find((band) => band.id === id)!;
  // The field comes from a table about the drawing here.
  expect(of('lineVolts').nominal / results.emf.lineRmsPer1000rpm).toBeCloseTo(1, 3);
  expect(of('phaseOhms').nominal).toBeGreaterThan(0);
  for (const { low, middle, high } of bands) {
    expect(low.value).toBeLessThan(middle.value);
    expect(middle.value).toBeLessThan(high.value);
  }
  expect(of('lineVolts').low.value).toBeLessThan(results.emf.lineRmsPer1000rpm);
  expect(of('lineVolts').high.value).toBeGreaterThan(results.emf.lineRmsPer1000rpm);
});
