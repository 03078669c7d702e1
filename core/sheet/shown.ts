import type { UnitKind } from '../quantities';
import { digits, nb } from './figures';

/** Unit of each kind on paper and what one of it is in SI. */
const units: Record<Exclude<UnitKind, 'price' | 'word'>, [text: string, si: number]> = {
  length: ['mm', 1e-3],
  wireDiameter: ['mm', 1e-3],
  area: ['mm²', 1e-6],
  longLength: ['m', 1],
  angle: ['°', Math.PI / 180],
  count: ['', 1],
  ratio: ['', 1],
  percent: ['%', 0.01],
  temperature: ['°C', 1],
  temperatureDifference: ['K', 1],
  temperatureCoefficient: ['%/K', 0.01],
  fluxDensity: ['T', 1],
  fieldStrength: ['kA/m', 1e3],
  voltage: ['V', 1],
  current: ['A', 1],
  resistance: ['Ω', 1],
  inductance: ['mH', 1e-3],
  power: ['W', 1],
  energy: ['kWh', 3.6e6],
  charge: ['A·h', 1],
  mass: ['kg', 1],
  speed: ['rpm', (2 * Math.PI) / 60],
  rpm: ['rpm', 1],
  windSpeed: ['m/s', 1],
  frequency: ['Hz', 1],
  currentDensity: ['A/mm²', 1e6],
  density: ['kg/m³', 1],
  emfConstant: ['V per 1000 rpm', 60 / (1000 * 2 * Math.PI)],
  resistivity: ['Ω·mm²/m', 1e-6],
  flux: ['mWb', 1e-3],
  fluxPerLength: ['mWb/m', 1e-3],
  thermalConductance: ['W/K', 1],
  duration: ['h', 3600],
  time: ['s', 1],
  heatCapacity: ['J/K', 1],
};

/** A quantity as it is written in the report: four figures and its unit, which an engineer's reckoner takes as it stands. SI in, text out. */
export function shown(value: number, kind: UnitKind): string {
  if (kind === 'price' || kind === 'word') return digits(value, 4);
  const [unit, si] = units[kind];
  const number = value / si;
  const text =
    kind === 'count' ? String(Number(number.toPrecision(9))).replace('-', '−') : Math.abs(number) < 5e-7 ? '0' : digits(number, 4);
  return unit === '' ? text : unit === '°' ? `${text}°` : `${text}${nb}${unit}`;
}
