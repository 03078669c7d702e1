import { describe, expect, test } from 'vitest';
import { netlist } from '../../../core/rectifier/netlist';
import type { Bridge, Source } from '../../../core/rectifier/steady-state';
import { balancedSource } from './source';

const dc = { emf: 24, resistance: 0.05 };
const written = (source: Source, arrangement: Bridge['arrangement'] = 'bridge', speed = 200, title = 'Mill') =>
  netlist(source, { arrangement, threshold: 0.7, slope: 0.02 }, dc, speed, title).split('\n');
const named = (lines: string[], start: RegExp) => lines.filter((line) => start.test(line));

describe('parts of the circuit', () => {
  test.each([
    ['star', 'bridge', 3, 6],
    ['delta', 'bridge', 5, 10],
    ['separate', 'bridges-in-parallel', 3, 12],
    ['separate', 'bridges-in-series', 2, 8],
    ['star', 'bridge', 1, 4],
  ] as const)('%s, %s, %i phases: %i diodes, each with threshold and slope', (connection, arrangement, phases, diodes) => {
    const lines = written(balancedSource(connection, phases), arrangement);
    expect(named(lines, /^D/)).toHaveLength(diodes);
    expect(named(lines, /^Vt/)).toHaveLength(diodes);
    expect(named(lines, /^Rd/)).toHaveLength(diodes);
    expect(named(lines, /^L/)).toHaveLength(phases);
  });

  test('every harmonic is a source of its own, and every pair of coupled phases a coupling', () => {
    const lines = written(balancedSource('star', 3, { shares: { 1: 1, 5: 0.05, 7: 0 }, inductance: 2e-3, mutual: -4e-4 }));
    expect(named(lines, /^V1h/).map((line) => line.split(' ')[0])).toEqual(['V1h1', 'V1h5']);
    expect(named(lines, /^K/)).toHaveLength(3);
    expect(named(lines, /^K1x2/)[0]).toContain('-2.000000000e-1');
  });

  test('a cable on the AC side stands in every line', () => {
    expect(named(written(balancedSource('star', 3, { line: 0.1 })), /^Rline/)).toHaveLength(3);
    expect(named(written(balancedSource('star', 3)), /^Rline/)).toHaveLength(0);
  });
});

describe('text a simulator takes', () => {
  test('the first line is the title, in one line, and says so when there is none', () => {
    expect(written(balancedSource('star', 3), 'bridge', 200, 'Two\nlines')[0]).toBe('* Two lines');
    expect(written(balancedSource('star', 3), 'bridge', 200, '')[0]).toBe('* Untitled machine');
    expect(written(balancedSource('star', 3)).at(-2)).toBe('.end');
  });

  test.each([
    ['at rest', balancedSource('star', 3), 0],
    ['without magnets', balancedSource('delta', 3, { peak: 0, shares: { 1: 1, 3: 0.1 } }), 200],
    ['without inductance', balancedSource('star', 3, { inductance: 0 }), 200],
  ] as const)('%s: numbers stay finite and no phase is left open', (_, source, speed) => {
    const lines = written(source, 'bridge', speed);
    expect(lines.join('\n')).not.toMatch(/NaN|Infinity|undefined/);
    expect(named(lines, /^V1h1 p1s0 /)).toHaveLength(1);
  });
});
