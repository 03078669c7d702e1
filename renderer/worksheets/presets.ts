import { awgGauges, batteryPresets, diodePresets, magnetGrades, magnetSizes, metricGauges, type Design } from '../../core';
import type { Preset, PresetTable } from '../parts/preset-picker';
import { valueAt } from '../path';
import type { OwnPreset, Table } from '../state/own-presets';
import { entryText, entryUnit, type UnitPreferences } from '../units';

interface TableMaker {
  label: string;
  /** Where the numbers of the table come from, told under it. */
  source: (units: UnitPreferences) => string;
  /** What a row of the user's own keeps. */
  paths: string[];
  presets: (units: UnitPreferences) => Preset[];
  /** The kind of load it is for. */
  load?: Design['load']['kind'];
}

/** Rows of each table as the entries they fill. A grade fills in its least remanence: what the buyer can count on. */
const tables: Record<Table, TableMaker> = {
  magnet: {
    label: 'Magnet size',
    source: () => 'Sizes often in stock: common practice, no source.',
    paths: ['magnets.shape'],
    presets: (units) => magnetSizes.map((shape) => ({ name: sizeOf(shape, units), changes: { 'magnets.shape': shape } })),
  },
  grade: {
    label: 'Grade',
    source: () => 'Class values as in IEC 60404-8-1 (from memory); the maker’s sheet rules.',
    paths: [
      'magnets.grade',
      'magnets.remanence',
      'magnets.remanenceTempCoefficient',
      'magnets.intrinsicCoercivity',
      'magnets.recoilPermeability',
      'magnets.maxTemperature',
    ],
    presets: () => grades,
  },
  wire: {
    label: 'Wire size',
    source: ({ wire }) => (wire === 'awg' ? 'ASTM B258; covering as the nearest metric size, common practice.' : 'IEC 60317-0-1, grade 2.'),
    paths: ['winding.wire.metal', 'winding.wire.conductorDiameter', 'winding.wire.overallDiameter'],
    presets: ({ wire }) => (wire === 'awg' ? awg : metric),
  },
  diode: {
    label: 'Kind of diode',
    source: () => 'Typical data sheets: common practice, no source; the part’s own sheet rules.',
    paths: ['rectifier.diode.threshold', 'rectifier.diode.slope'],
    presets: () => diodes,
  },
  battery: {
    label: 'Kind of battery',
    source: () => 'Common practice, no source; the maker’s sheet rules.',
    paths: ['load.chemistry', 'load.voltage', 'load.resistance', 'load.capacity'],
    presets: () => batteries,
    load: 'battery',
  },
};

const grades: Preset[] = magnetGrades.map((grade) => ({
  name: grade.name,
  changes: {
    'magnets.grade': grade.name,
    'magnets.remanence': grade.remanence[0],
    'magnets.remanenceTempCoefficient': grade.remanenceTempCoefficient,
    'magnets.intrinsicCoercivity': grade.intrinsicCoercivity,
    'magnets.recoilPermeability': grade.recoilPermeability,
    'magnets.maxTemperature': grade.maxTemperature,
  },
}));

const wires = (gauges: readonly { label: string; conductorDiameter: number; overallDiameter: number }[]): Preset[] =>
  gauges.map(({ label, conductorDiameter, overallDiameter }) => ({
    name: label,
    changes: { 'winding.wire.conductorDiameter': conductorDiameter, 'winding.wire.overallDiameter': overallDiameter },
  }));
const metric = wires(metricGauges);
const awg = wires(awgGauges);

const diodes: Preset[] = diodePresets.map(({ label, threshold, slope }) => ({
  name: label,
  changes: { 'rectifier.diode.threshold': threshold, 'rectifier.diode.slope': slope },
}));

/** Each chemistry as one, two or four batteries of 12 V in series. */
const batteries: Preset[] = [1, 2, 4].flatMap((inSeries) =>
  batteryPresets.map(({ chemistry, charging }) => ({
    name: `${12 * inSeries} V, ${chemistry}`,
    changes: { 'load.chemistry': chemistry, 'load.voltage': Number((charging * inSeries).toFixed(2)) },
  })),
);

/** As in "46 × 30 × 10 mm", "⌀ 30 × 10 mm". */
function sizeOf(shape: Design['magnets']['shape'], units: UnitPreferences): string {
  const { kind, ...sides } = shape;
  const text = Object.values(sides)
    .map((side) => entryText(side, 'length', units))
    .join(' × ');
  return `${kind === 'cylinder' ? '⌀ ' : ''}${text} ${entryUnit('length', units)}`;
}

/** A table with the user's own rows; none where the design has not what it is of. */
export function presetTable(
  id: Table,
  loadKind: Design['load']['kind'],
  own: readonly OwnPreset[],
  units: UnitPreferences,
): PresetTable | undefined {
  const { label, source, presets, load } = tables[id];
  if (load && load !== loadKind) return undefined;
  return { id, label, source: source(units), presets: presets(units), own: own.filter((preset) => preset.table === id) };
}

/** The design's present entries as a row of the user's own. */
export function ownPreset(table: Table, name: string, design: Design): OwnPreset {
  const values = tables[table].paths.map((path) => [path, valueAt(design, path)] as const);
  return { table, name, changes: Object.fromEntries(values.filter(([, value]) => value !== undefined)) };
}
