import { describe, expect, test } from 'vitest';
import { speedCandidates, type SpeedWitness } from '../../../core/bench/speed';
import type { Reading } from '../../../core/design/readings';

const rpm = (speed: number) => (speed * 60) / (2 * Math.PI);
const fromRpm = (value: number) => (value * 2 * Math.PI) / 60;
const witness: SpeedWitness = { polePairs: 6, radius: 1, tipSpeedRatio: 5.5, runawayRatio: 10, top: fromRpm(1000) };
const reading: Reading = { label: '', on: 'phase', number: 1 };

// Common practice, no source: a wheel with one mark looks still at multiples of 60·F rpm, three like blades at 20·F, two rows of three set 60° apart and alike at 10·F.
describe.each([24, 25, 30, 50, 60])('a film of %i frames a second', (frames) => {
  test.each([
    [1, 60],
    [3, 20],
    [6, 10],
  ])('with %i alike looks still at every multiple of %i times the frames', (alike, times) => {
    const first = times * frames;
    const top = fromRpm(3.5 * first);
    const found = speedCandidates({ ...reading, frameRate: frames, alike }, { ...witness, top });
    expect(
      found
        .map(({ speed }) => rpm(speed))
        .sort((a, b) => a - b)
        .map((x) => Math.round(x)),
    ).toEqual([first, 2 * first, 3 * first]);
    // With nothing else known none is likelier than another.
    expect(new Set(found.map(({ plausibility }) => plausibility.toFixed(6))).size).toBe(1);
  });
});

test('hertz pick the one still speed that they agree with', () => {
  const [best, second] = speedCandidates({ ...reading, frameRate: 25, alike: 6, hertz: 50 }, witness);
  expect(rpm(best.speed)).toBeCloseTo(500, 6);
  expect(best.plausibility).toBeGreaterThan(0.999);
  expect(best.agrees.join()).toContain('Hz');
  expect(second.disagrees.join()).toContain('Hz');
});

test('a tip-speed ratio beyond run-away speaks against the fast ones', () => {
  const found = speedCandidates({ ...reading, frameRate: 30, alike: 3, wind: 4 }, { ...witness, top: fromRpm(2000) });
  const slow = found.filter(({ tipSpeedRatio = 0 }) => tipSpeedRatio < 11);
  expect(slow.length).toBe(0);
  // Even the slowest, 600 rpm on a wheel of 2 m in 4 m/s, is past run-away: none agrees, and each says so.
  expect(found.every(({ disagrees }) => disagrees.length === 1)).toBe(true);
});

test('volts leave two still speeds a builder can tell between', () => {
  const found = speedCandidates({ ...reading, frameRate: 24, alike: 6, volts: 12 }, { ...witness, byVolts: fromRpm(250) });
  expect(rpm(found[0].speed)).toBeCloseTo(240, 6);
  expect(found[0].plausibility).toBeGreaterThan(0.9);
});

test('hertz that fit no still speed are said to', () => {
  const found = speedCandidates({ ...reading, frameRate: 25, alike: 6, hertz: 58 }, witness);
  expect(found.flatMap(({ disagrees }) => disagrees).join()).toContain('creep 32 %');
});

test('without anything read there is no speed', () => {
  expect(speedCandidates(reading, witness)).toEqual([]);
});

test('a written speed that hertz contradict is less plausible than theirs', () => {
  const [best, other] = speedCandidates({ ...reading, speed: fromRpm(300), speedBy: 'tachometer', hertz: 25 }, witness);
  expect([best.by, other.by]).toContain('hertz');
  expect(best.disagrees.length).toBe(1);
});
