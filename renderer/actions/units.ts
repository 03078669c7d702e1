import { setView, viewStore } from '../state/view';
import { always, type Action } from './action';

export const lengthUnit: Action = {
  id: 'length-unit',
  label: () => (viewStore.getState().length === 'mm' ? 'Lengths in inches' : 'Lengths in millimetres'),
  shortcut: 'Alt+L',
  group: 'View',
  enabled: always,
  perform: () => setView({ length: viewStore.getState().length === 'mm' ? 'in' : 'mm' }),
};

export const wireSizes: Action = {
  id: 'wire-sizes',
  label: () => (viewStore.getState().wire === 'metric' ? 'Wire table: AWG' : 'Wire table: metric'),
  shortcut: 'Alt+W',
  group: 'View',
  enabled: always,
  perform: () => setView({ wire: viewStore.getState().wire === 'metric' ? 'awg' : 'metric' }),
};

export const temperatureUnit: Action = {
  id: 'temperature-unit',
  label: () => (viewStore.getState().temperature === 'C' ? 'Temperatures in °F' : 'Temperatures in °C'),
  shortcut: 'Alt+F',
  group: 'View',
  enabled: always,
  perform: () => setView({ temperature: viewStore.getState().temperature === 'C' ? 'F' : 'C' }),
};
