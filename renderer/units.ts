import type { UnitKind, Words } from '../core';

/** What each user chooses; all else follows from it. */
export interface UnitPreferences {
  length: 'mm' | 'in';
  wire: 'metric' | 'awg';
  temperature: 'C' | 'F';
}

/** si = shown · factor + offset */
export interface Unit {
  factor: number;
  offset?: number;
}

interface Kind {
  /** Every unit understood in an entry, first the spelling shown. */
  units: Record<string, Unit>;
  /** The unit of an entry box. */
  entry: (preferences: UnitPreferences) => string;
  /** Units of a result from small to large; the largest that leaves a number of at least one is used. */
  results: (preferences: UnitPreferences) => string[];
}

const inch = 0.0254;
const rpm = (2 * Math.PI) / 60;
const lengths: Record<string, Unit> = {
  mm: { factor: 1e-3 },
  in: { factor: inch },
  m: { factor: 1 },
  cm: { factor: 1e-2 },
  µm: { factor: 1e-6 },
  μm: { factor: 1e-6 },
  um: { factor: 1e-6 },
  '"': { factor: inch },
  inch: { factor: inch },
  thou: { factor: inch / 1000 },
  ft: { factor: 12 * inch },
  "'": { factor: 12 * inch },
  km: { factor: 1000 },
};
const winds: Record<string, Unit> = {
  'm/s': { factor: 1 },
  'km/h': { factor: 1 / 3.6 },
  mph: { factor: 0.44704 },
  kn: { factor: 1852 / 3600 },
  'ft/s': { factor: 12 * inch },
};

/** `milli` and `kilo` forms of one SI unit, spelled as in `mV`. */
const prefixed = (unit: string, ...more: string[]): Record<string, Unit> =>
  Object.fromEntries(
    [unit, ...more].flatMap((name) => [
      [name, { factor: 1 }],
      [`m${name}`, { factor: 1e-3 }],
      [`k${name}`, { factor: 1e3 }],
      [`µ${name}`, { factor: 1e-6 }],
      [`u${name}`, { factor: 1e-6 }],
      [`M${name}`, { factor: 1e6 }],
    ]),
  );

const only = (name: string, units: Record<string, Unit>, results: string[] = [name]): Kind => ({
  units,
  entry: () => name,
  results: () => results,
});

const kinds: Record<UnitKind, Kind> = {
  length: { units: lengths, entry: (p) => p.length, results: (p) => [p.length] },
  wireDiameter: { units: lengths, entry: (p) => p.length, results: (p) => [p.length] },
  area: only('mm²', {
    'mm²': { factor: 1e-6 },
    mm2: { factor: 1e-6 },
    'cm²': { factor: 1e-4 },
    'm²': { factor: 1 },
    'in²': { factor: inch * inch },
    in2: { factor: inch * inch },
  }),
  longLength: {
    units: lengths,
    entry: (p) => (p.length === 'in' ? 'ft' : 'm'),
    results: (p) => [p.length === 'in' ? 'ft' : 'm'],
  },
  angle: only('°', { '°': { factor: Math.PI / 180 }, deg: { factor: Math.PI / 180 }, rad: { factor: 1 } }),
  count: only('', { '': { factor: 1 } }),
  ratio: only('', { '': { factor: 1 }, '%': { factor: 0.01 } }),
  percent: only('%', { '%': { factor: 0.01 } }),
  temperature: {
    units: {
      '°C': { factor: 1 },
      '°F': { factor: 5 / 9, offset: -160 / 9 },
      C: { factor: 1 },
      F: { factor: 5 / 9, offset: -160 / 9 },
      K: { factor: 1, offset: -273.15 },
    },
    entry: (p) => `°${p.temperature}`,
    results: (p) => [`°${p.temperature}`],
  },
  temperatureDifference: {
    units: { K: { factor: 1 }, '°C': { factor: 1 }, '°F': { factor: 5 / 9 } },
    entry: (p) => (p.temperature === 'F' ? '°F' : 'K'),
    results: (p) => [p.temperature === 'F' ? '°F' : 'K'],
  },
  temperatureCoefficient: only('%/K', { '%/K': { factor: 0.01 }, '%/°C': { factor: 0.01 }, '1/K': { factor: 1 } }),
  fluxDensity: only('T', { T: { factor: 1 }, mT: { factor: 1e-3 }, G: { factor: 1e-4 }, kG: { factor: 0.1 } }),
  fieldStrength: only('kA/m', {
    'kA/m': { factor: 1e3 },
    'A/m': { factor: 1 },
    kOe: { factor: 1e6 / (4 * Math.PI) },
    Oe: { factor: 1e3 / (4 * Math.PI) },
  }),
  voltage: only('V', prefixed('V'), ['mV', 'V']),
  current: only('A', prefixed('A'), ['mA', 'A']),
  resistance: only('Ω', prefixed('Ω', 'ohm', 'Ω'), ['mΩ', 'Ω', 'kΩ']),
  inductance: only('mH', prefixed('H'), ['µH', 'mH', 'H']),
  power: only('W', prefixed('W'), ['W', 'kW']),
  energy: only('kWh', { kWh: { factor: 3.6e6 }, Wh: { factor: 3600 }, J: { factor: 1 }, MJ: { factor: 1e6 } }),
  charge: only('A·h', { 'A·h': { factor: 1 }, Ah: { factor: 1 } }),
  mass: {
    units: { kg: { factor: 1 }, g: { factor: 1e-3 }, lb: { factor: 0.45359237 }, oz: { factor: 0.45359237 / 16 } },
    entry: (p) => (p.length === 'in' ? 'lb' : 'kg'),
    results: (p) => (p.length === 'in' ? ['oz', 'lb'] : ['g', 'kg']),
  },
  speed: only('rpm', { rpm: { factor: rpm }, 'rad/s': { factor: 1 } }),
  rpm: only('rpm', { rpm: { factor: 1 }, 'rad/s': { factor: 1 / rpm } }),
  windSpeed: only('m/s', winds),
  frequency: only('Hz', prefixed('Hz'), ['Hz']),
  currentDensity: only('A/mm²', { 'A/mm²': { factor: 1e6 }, 'A/mm2': { factor: 1e6 }, 'A/m²': { factor: 1 } }),
  density: only('kg/m³', { 'kg/m³': { factor: 1 }, 'kg/m3': { factor: 1 } }),
  emfConstant: only('V per 1000 rpm', { 'V per 1000 rpm': { factor: 1 / (1000 * rpm) } }, ['V per 1000 rpm']),
  resistivity: only('Ω·mm²/m', { 'Ω·mm²/m': { factor: 1e-6 } }),
  flux: only('mWb', prefixed('Wb'), ['µWb', 'mWb']),
  fluxPerLength: only('mWb/m', { 'mWb/m': { factor: 1e-3 } }),
  thermalConductance: only('W/K', { 'W/K': { factor: 1 } }),
  duration: only('h', { h: { factor: 3600 } }),
  time: only('s', { s: { factor: 1 }, min: { factor: 60 }, h: { factor: 3600 } }, ['s', 'min', 'h']),
  heatCapacity: only('J/K', { 'J/K': { factor: 1 } }),
  price: only('', { '': { factor: 1 } }),
  word: only('', { '': { factor: 1 } }),
};

/** Every unit understood in an entry of a kind, by its spellings. */
export const unitsOf = (kind: UnitKind): Record<string, Unit> => kinds[kind].units;

const factorOf = (kind: UnitKind, name: string): Unit => kinds[kind].units[name] ?? { factor: 1 };
const fromSi = (value: number, unit: Unit) => (value - (unit.offset ?? 0)) / unit.factor;

export const entryUnit = (kind: UnitKind, preferences: UnitPreferences): string => kinds[kind].entry(preferences);

/** An SI number in the unit of an entry box, as charts draw it. */
export const inEntryUnit = (value: number, kind: UnitKind, preferences: UnitPreferences): number =>
  fromSi(value, factorOf(kind, entryUnit(kind, preferences)));

/** A number as digits: `significant` of them, never in exponent form, "–" when there is none. */
export function digits(value: number, significant = 4, keepZeros = true, mostPlaces = 15): string {
  if (!Number.isFinite(value)) return '–';
  if (value === 0) return '0';
  const places = Math.min(mostPlaces, Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(value)))));
  const fixed = value.toFixed(places);
  if (Number(fixed) === 0) return '0';
  const text = keepZeros || !fixed.includes('.') ? fixed : fixed.replace(/\.?0+$/, '');
  return text.replace('-', '−');
}

/** A result smaller than this many places is nothing. */
const MOST_RESULT_PLACES = 6;

export interface Shown {
  text: string;
  unit: string;
}

/** A result in the user's unit. */
export function shown(value: number | null | undefined, kind: UnitKind, preferences: UnitPreferences, significant = 4): Shown {
  const names = kinds[kind].results(preferences);
  if (value === null || value === undefined || !Number.isFinite(value)) return { text: '–', unit: names.at(-1) ?? '' };
  const name = names.findLast((n) => Math.abs(fromSi(value, factorOf(kind, n))) >= 1) ?? names[value === 0 ? names.length - 1 : 0] ?? '';
  const number = fromSi(value, factorOf(kind, name));
  if (kind === 'count') return { text: digits(number, 9, false), unit: name };
  if (kind === 'temperature') return { text: digits(number, Math.abs(number) >= 100 ? 4 : 3), unit: name };
  return { text: digits(number, significant, true, MOST_RESULT_PLACES), unit: name };
}

/** The same in one string, as in "12.30 V". */
export function format(value: number | null | undefined, kind: UnitKind, preferences: UnitPreferences, significant = 4): string {
  const { text, unit } = shown(value, kind, preferences, significant);
  return unit === '' || text === '–' ? text : unit === '°' ? `${text}${unit}` : `${text} ${unit}`;
}

/** How drawings write lengths, without the unit: a tenth of a millimetre, or a thousandth of an inch. */
export const bareLength =
  ({ length }: UnitPreferences) =>
  (metres: number): string =>
    String(Number(fromSi(metres, factorOf('length', length)).toFixed(length === 'in' ? 3 : 1))).replace('-', '−');

/** A difference in the user's unit, signed; an offset between two temperature scales does not count. */
export function formatDifference(difference: number, kind: UnitKind, preferences: UnitPreferences): string {
  const offset = kind === 'temperature' ? (factorOf(kind, entryUnit(kind, preferences)).offset ?? 0) : 0;
  const text = format(difference + offset, kind, preferences, 3);
  return text.startsWith('−') || text === '–' ? text : `+${text}`;
}

/** A stored value as it is put into an entry box: as few digits as say it exactly, or five where a conversion leaves no end of them. */
export function entryText(value: number, kind: UnitKind, preferences: UnitPreferences): string {
  const number = fromSi(value, factorOf(kind, entryUnit(kind, preferences)));
  const isShort = Math.abs(Number(number.toPrecision(8)) - number) <= 1e-12 * Math.abs(number);
  return digits(number, isShort ? 8 : 5, false);
}

/** The step of one arrow key: one in the second digit shown, one whole number for a count. SI. */
export function entryStep(value: number, kind: UnitKind, preferences: UnitPreferences): number {
  if (kind === 'count') return 1;
  const unit = factorOf(kind, entryUnit(kind, preferences));
  const size = Math.abs(fromSi(value, unit));
  return unit.factor * (size === 0 ? 0.1 : 10 ** (Math.floor(Math.log10(size)) - 1));
}

/** A message of the core with the numbers in it in the user's units. */
export function told({ message, parts }: Words, preferences: UnitPreferences): string {
  if (!parts) return message;
  return parts
    .map((part) => {
      if (typeof part === 'string') return part;
      const unit = entryUnit(part.unit, preferences);
      return `${digits(inEntryUnit(part.value, part.unit, preferences), 4, false)} ${unit}`;
    })
    .join('');
}
