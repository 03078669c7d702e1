/** Kinds of quantity; the renderer's `units.ts` knows how each is shown. */
export type UnitKind =
  | 'length'
  | 'wireDiameter'
  | 'area'
  | 'longLength'
  | 'angle'
  | 'count'
  | 'ratio'
  | 'percent'
  | 'temperature'
  | 'temperatureCoefficient'
  | 'fluxDensity'
  | 'fieldStrength'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'inductance'
  | 'power'
  | 'energy'
  | 'charge'
  | 'mass'
  | 'speed'
  | 'windSpeed'
  | 'frequency'
  | 'currentDensity'
  | 'density'
  | 'emfConstant'
  | 'time'
  | 'price';

export interface Quantity {
  label: string;
  symbol?: string;
  unit: UnitKind;
  /** One line for whoever hovers the label. */
  meaning: string;
}
