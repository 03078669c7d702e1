import type { Quantity, Reading } from '../../../core';

type Numbers = {
  [K in keyof Reading]-?: NonNullable<Reading[K]> extends number ? K : never;
}[keyof Reading];

export interface NumberEntry {
  key: Numbers;
  quantity: Quantity;
  range: { min: number; max: number; whole?: 'any' };
}

interface ChoiceEntry {
  key: 'speedBy' | 'meter' | 'load';
  label: string;
  choices: Record<string, string>;
}

const entry = (key: Numbers, label: string, unit: Quantity['unit'], max: number, meaning: string, min = 0, whole?: 'any'): NumberEntry => ({
  key,
  quantity: { label, unit, meaning },
  range: { min, max, ...(whole && { whole }) },
});

const DC = ['dc'];
const AC = ['coil', 'run', 'phase', 'line'];

/** In the table itself, by what the meter was on. */
export const columns: (NumberEntry & { on: readonly string[] })[] = [
  { ...entry('number', 'No.', 'count', 120, 'Number of the coil or phase', 1, 'any'), on: AC },
  { ...entry('to', 'to', 'count', 120, 'Last coil of a run', 1, 'any'), on: ['run'] },
  { ...entry('speed', 'Speed', 'speed', 2000, 'Of the shaft; empty where it is not known'), on: [...AC, ...DC] },
  { ...entry('hertz', 'Read', 'frequency', 5000, 'Of the generator; tells the speed best'), on: [...AC, ...DC] },
  { ...entry('ohms', 'Read', 'resistance', 1e6, 'An open circuit is 1 MΩ'), on: AC },
  { ...entry('volts', 'Read', 'voltage', 5000, 'AC as the meter shows it; DC on the DC side'), on: [...AC, ...DC] },
  { ...entry('amps', 'Read', 'current', 2000, 'Into the load'), on: DC },
];

/** Below the line, when it is opened. */
export const moreNumbers: (NumberEntry & { on: readonly string[] })[] = [
  {
    ...entry('temperature', 'Copper', 'temperature', 200, 'Of the coils when they were read; the room’s where empty', -60),
    on: [...AC, ...DC],
  },
  {
    ...entry('accuracy', 'Meter good to', 'percent', 0.5, 'Two thirds of its readings lie this near; 2 % where empty', 0.0005),
    on: [...AC, ...DC],
  },
  {
    ...entry('leads', 'Leads touching', 'resistance', 100, 'What the ohmmeter shows with its leads touching, still in the reading'),
    on: AC,
  },
  { ...entry('ohmsStep', 'Last digit', 'resistance', 100, 'Of the ohmmeter: 0.1 Ω on many'), on: AC },
  { ...entry('loadResistance', 'Load resistance', 'resistance', 1e6, 'Of the resistor, or inside the battery'), on: DC },
  { ...entry('loadVoltage', 'Battery volts', 'voltage', 2000, 'Without current'), on: DC },
  { ...entry('wind', 'Wind', 'windSpeed', 60, 'Mean, while the rest was read'), on: [...AC, ...DC] },
  { ...entry('windSpread', 'Wind up and down by', 'windSpeed', 30, 'How far it went up and down about the mean'), on: DC },
  { ...entry('frameRate', 'Film, frames a second', 'count', 2000, 'Of a film on which the blades looked still', 1), on: [...AC, ...DC] },
  { ...entry('alike', 'Blades alike', 'count', 24, 'Blades that look alike on the film; 3 where empty', 1, 'any'), on: [...AC, ...DC] },
];

export const moreChoices: (ChoiceEntry & { on: readonly string[] })[] = [
  { key: 'speedBy', label: 'Speed told by', choices: { tachometer: 'tachometer', drill: 'drill’s marking' }, on: [...AC, ...DC] },
  { key: 'meter', label: 'Volts by', choices: { average: 'plain meter', rms: 'true-RMS meter', peak: 'scope, zero to peak' }, on: AC },
  {
    key: 'load',
    label: 'On the DC side',
    choices: { planned: 'the planned load', none: 'nothing', resistor: 'a resistor', battery: 'a battery' },
    on: DC,
  },
];
