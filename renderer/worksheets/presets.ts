import { awgGauges, batteryPresets, diodePresets, magnetGrades, metricGauges, type Design } from '../../core';
import type { Preset, PresetTable } from '../parts/preset-picker';
import type { EntryGroup } from './worksheet';

type Table = NonNullable<EntryGroup['preset']>;

/** Rows of each table as the entries they fill. A grade fills in its least remanence: what the buyer can count on. */
const tables: Record<Table, (design: Design, sizes: 'metric' | 'awg') => PresetTable | undefined> = {
  grade: () => ({ label: 'Grade', presets: grades }),
  wire: (_design, sizes) => ({ label: 'Wire size', presets: sizes === 'awg' ? awg : metric }),
  diode: () => ({ label: 'Kind of diode', presets: diodes }),
  battery: ({ load }) => (load.kind === 'battery' ? { label: 'Kind of battery', presets: batteries } : undefined),
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

export function presetTable(table: Table, design: Design, sizes: 'metric' | 'awg'): PresetTable | undefined {
  return tables[table](design, sizes);
}
