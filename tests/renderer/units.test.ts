import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankDesign, readDesign, type UnitKind } from '../../core';
import { digits, entryText, entryUnit, format, formatDifference, shown, told, type UnitPreferences } from '../../renderer/units';
import { parse } from '../../renderer/reading';

const metric: UnitPreferences = { length: 'mm', wire: 'metric', temperature: 'C' };
const imperial: UnitPreferences = { length: 'in', wire: 'awg', temperature: 'F' };

function value(text: string, kind: UnitKind, preferences = metric): number {
  const parsed = parse(text, kind, preferences);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
}

describe('reading', () => {
  test.each([
    ['1.2mm', 0.0012],
    ['1.2', 0.0012],
    ['1,2', 0.0012],
    ['3/8 in', 0.009525],
    ['1 3/8 in', 0.034925],
    ['12+0.5', 0.0125],
    ['12 + 0.5 in', 12.5 * 0.0254],
    ['10 mm + 1 in', 0.0354],
    ['20 - 2', 0.018],
    ['2*3', 0.006],
    ['25.4/2', 0.0127],
    ['½', NaN],
    ['1"', 0.0254],
    ['50 µm', 5e-5],
    ['−3', -0.003],
  ])('%s is a length of %d m', (text, metres) => {
    const parsed = parse(text, 'length', metric);
    if (Number.isNaN(metres)) expect(parsed.ok).toBe(false);
    else expect(parsed).toEqual({ ok: true, value: expect.closeTo(metres, 12) as number });
  });

  test('a value reads in the file as it was typed', () => {
    expect(1.3 * 0.001).not.toBe(0.0013);
    expect(value('1.3', 'length')).toBe(0.0013);
  });

  test.each(['', '  ', 'abc', '1 2', '1..2', '5 furlongs', '--3', '1e999', '3/0', '12 mm mm'])('“%s” is refused with a reason', (text) => {
    const parsed = parse(text, 'length', metric);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.message).toMatch(/\w+ .*\.$/);
  });

  test('a number with two points is called no number, not one of a strange unit', () => {
    expect(parse('1.2.3', 'length', metric)).toEqual({ ok: false, message: '“1.2.3” is not a number.' });
  });

  test('the unit of the box is taken when none is written', () => {
    expect(value('1', 'length', imperial)).toBeCloseTo(0.0254, 12);
    expect(value('212', 'temperature', imperial)).toBeCloseTo(100, 9);
    expect(value('212 °F', 'temperature')).toBeCloseTo(100, 9);
    expect(value('100 C', 'temperature', imperial)).toBeCloseTo(100, 9);
  });

  test('a sum of two temperature scales is refused', () => {
    expect(parse('20 °C + 5 °F', 'temperature', metric).ok).toBe(false);
  });

  test('electrical and mechanical units carry their prefixes', () => {
    expect(value('30 mΩ', 'resistance')).toBeCloseTo(0.03, 12);
    expect(value('30 mohm', 'resistance')).toBeCloseTo(0.03, 12);
    expect(value('1.5 kW', 'power')).toBe(1500);
    expect(value('12.8 kG', 'fluxDensity')).toBeCloseTo(1.28, 12);
    expect(value('12 kOe', 'fieldStrength')).toBeCloseTo(954_930, -1);
    expect(value('25 mph', 'windSpeed')).toBeCloseTo(11.176, 9);
    expect(value('60', 'speed')).toBeCloseTo(2 * Math.PI, 12);
  });
});

describe('a wire gauge', () => {
  // ASTM B258, table 1: 14 AWG is 0.0641 in, 18 AWG is 0.0403 in, 10 AWG is 0.1019 in. From memory.
  test.each([
    ['14 AWG', 0.0641],
    ['awg 18', 0.0403],
    ['10awg', 0.1019],
  ])('%s is a bare wire of %d in', (text, inches) => {
    expect(value(text, 'wireDiameter') / 0.0254).toBeCloseTo(inches, 4);
  });

  test('that is not in the table is refused, and so is one where no bare wire is meant', () => {
    expect(parse('99 AWG', 'wireDiameter', metric)).toMatchObject({ ok: false, message: expect.stringContaining('AWG to') as string });
    expect(parse('14 AWG + 1', 'wireDiameter', metric).ok).toBe(false);
    expect(parse('14 AWG', 'length', metric).ok).toBe(false);
  });
});

describe('a message of the core', () => {
  const words = { message: 'must be more than 40 mm; received 30 mm', parts: ['must be more than ', at(0.04), '; received ', at(0.03)] };
  function at(value: number) {
    return { value, unit: 'length' as const, text: `${value * 1000} mm` };
  }

  test('tells its numbers in the user’s units', () => {
    expect(told(words, metric)).toBe(words.message);
    expect(told(words, imperial)).toBe('must be more than 1.575 in; received 1.181 in');
  });

  test('without numbers is told as it stands', () => {
    expect(told({ message: 'as it stands' }, imperial)).toBe('as it stands');
  });

  test('about geometry is the same in either way of telling where millimetres are used', () => {
    const design = blankDesign();
    const { layout } = design.winding;
    if (layout.kind !== 'concentrated') throw new Error('the blank design has separate coils');
    const read = readDesign({ ...design, winding: { ...design.winding, layout: { ...layout, holeOuterRadius: layout.holeInnerRadius } } });
    const problem = read.ok ? undefined : read.problems[0];
    expect(problem?.parts?.length).toBeGreaterThan(1);
    expect(problem && told(problem, metric)).toBe(problem?.message);
    expect(problem && told(problem, imperial)).toMatch(/ in; received .* in$/);
  });
});

describe('writing', () => {
  test('a value that is no number is shown as a dash and never as NaN', () => {
    for (const none of [NaN, Infinity, -Infinity, null, undefined]) expect(format(none, 'voltage', metric)).toBe('–');
    expect(digits(NaN)).toBe('–');
  });

  test('results choose a unit that leaves a readable number', () => {
    expect(format(0.0035, 'resistance', metric)).toBe('3.500 mΩ');
    expect(format(1520, 'power', metric)).toBe('1.520 kW');
    expect(format(0.0121, 'length', metric)).toBe('12.10 mm');
    expect(format(0.0127, 'length', imperial)).toBe('0.5000 in');
    expect(format(8e6, 'currentDensity', metric)).toBe('8.000 A/mm²');
    expect(format(3.6e9, 'energy', metric)).toBe('1000 kWh');
    expect(format(1.33e-15, 'percent', metric)).toBe('0 %');
    expect(shown(0, 'voltage', metric)).toEqual({ text: '0', unit: 'V' });
  });

  test('a temperature difference does not carry the offset of its scale', () => {
    expect(formatDifference(10, 'temperature', imperial)).toBe('+18.0 °F');
    expect(formatDifference(-10, 'temperature', metric)).toBe('−10.0 °C');
  });

  const kinds: UnitKind[] = ['length', 'wireDiameter', 'area', 'angle', 'temperature', 'fieldStrength', 'voltage', 'mass', 'speed'];
  test.each(kinds)('what an entry box shows of a %s reads back as that value to five digits', (kind) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), fc.constantFrom(metric, imperial), (x, preferences) => {
        const back = value(entryText(x, kind, preferences), kind, preferences);
        const offset = kind === 'temperature' ? 40 : 0;
        expect(Math.abs(back - x)).toBeLessThanOrEqual(5.1e-5 * (Math.abs(x) + offset));
      }),
    );
  });

  test.each(kinds)('the unit a %s box shows is one it reads', (kind) => {
    for (const preferences of [metric, imperial]) expect(parse(`1 ${entryUnit(kind, preferences)}`, kind, preferences).ok).toBe(true);
  });
});
