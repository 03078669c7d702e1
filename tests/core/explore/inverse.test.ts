import { describe, expect, test, vi } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { thinnestWire, turnsForCutIn, widestClearance, type Answer } from '../../../core/explore/inverse';
import { metricGauges } from '../../../core/wire/gauges';
import { demo } from '../../demo';

/** A machine that is busy with other things may take long. */
vi.setConfig({ testTimeout: 60_000 });

const shed = demo('shed-light');
const refusal = <T>(answer: Answer<T>) => (answer.ok ? 'there is an answer' : answer.message);

describe('turns for a cut-in wind', () => {
  const wish = solve(shed).cutIn.wind! * 1.02;

  test('are enough, and one fewer is not', () => {
    const answer = turnsForCutIn(shed, wish);
    if (!answer.ok) throw new Error(answer.message);
    const windAt = (turns: number) => solve({ ...shed, winding: { ...shed.winding, turns } }).cutIn.wind!;
    expect(answer.design.winding.turns).toBe(answer.value);
    expect(windAt(answer.value)).toBeLessThanOrEqual(wish);
    expect(windAt(answer.value - 1)).toBeGreaterThan(wish);
  });

  test('a wind too light for any says how early it could be', () => {
    expect(refusal(turnsForCutIn(shed, 0.2))).toMatch(
      /^No number of turns cuts in at 0\.2 m\/s\. The earliest is [\d.]+ m\/s, with about \d+ turns\.$/,
    );
  });
});

describe('thinnest wire below a temperature', () => {
  test('stays below, and the next thinner does not', () => {
    const limit = solve(shed).rated.coilTemperature + 5;
    const answer = thinnestWire(shed, limit);
    if (!answer.ok) throw new Error(answer.message);
    const sizes = metricGauges.filter(({ grade }) => grade === 2);
    const at = sizes.findIndex(({ label }) => label === answer.value.label);
    const { conductorDiameter, overallDiameter } = sizes[at - 1];
    const { winding } = shed;
    const thinner = solve({ ...shed, winding: { ...winding, wire: { ...winding.wire, conductorDiameter, overallDiameter } } });
    expect(answer.results.rated.coilTemperature).toBeLessThanOrEqual(limit);
    expect(thinner.rated.coilTemperature).toBeGreaterThan(limit);
  });

  test('a temperature that none stays below is told with the coolest', () => {
    expect(refusal(thinnestWire(shed, -40))).toContain('still settles at');
  });
});

describe('widest clearance that still gives the volts', () => {
  test('gives them, and a hundredth of a millimetre more does not', () => {
    const volts = solve(shed).emf.lineRmsPer1000rpm * 0.95;
    const answer = widestClearance(shed, volts);
    if (!answer.ok) throw new Error(answer.message);
    const voltsAt = (runningClearance: number) => solve({ ...shed, discs: { ...shed.discs, runningClearance } }).emf.lineRmsPer1000rpm;
    expect(answer.value).toBeGreaterThan(shed.discs.runningClearance);
    expect(voltsAt(answer.value)).toBeGreaterThanOrEqual(volts);
    expect(voltsAt(answer.value + 1e-5)).toBeLessThan(volts);
  });

  test('volts that no gap gives are told with the most there are', () => {
    expect(refusal(widestClearance(shed, 1e4))).toMatch(/gives only [\d.]+ V/);
  });
});
