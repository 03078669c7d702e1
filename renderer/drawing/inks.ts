import type { Layer } from '../../core';

export type Mode = 'light' | 'dark';

export interface Ink {
  stroke: string;
  fill: string;
  /** Less than 1 where letters stand on the fill. */
  fillOpacity: number;
  /** px, whatever the zoom */
  width: number;
  dash?: string;
}

interface Pair {
  light: string;
  dark: string;
}

const ink: Pair = { light: '#1c2224', dark: '#e4e6e3' };
const soft: Pair = { light: '#5d6364', dark: '#a0a8a9' };

/** Phases and chart lines: hues that also differ in lightness, each with a dash of its own. */
const lines: { colour: Pair; dash?: string }[] = [
  { colour: { light: '#a63a12', dark: '#f09a6a' } },
  { colour: { light: '#0b5fa5', dark: '#7ab8f2' }, dash: '7 3' },
  { colour: { light: '#2f6f2a', dark: '#8fd080' }, dash: '2 3' },
  { colour: { light: '#75389b', dark: '#cf9bf0' }, dash: '9 3 2 3' },
  { colour: { light: '#7d5a00', dark: '#e2c25a' }, dash: '12 4' },
  { colour: { light: '#00696f', dark: '#63cdd0' }, dash: '4 3 1 3 1 3' },
];

export function lineInk(index: number, mode: Mode): { colour: string; dash: string | undefined } {
  const { colour, dash } = lines[index % lines.length] ?? { colour: ink };
  return { colour: colour[mode], dash };
}

/** Marks on the lines of other designs laid over a chart, one shape a design. */
const markShapes = ['square', 'triangle', 'diamond', 'cross'] as const;

export const otherMark = (design: number): (typeof markShapes)[number] => markShapes[design % markShapes.length] ?? 'square';

const layers: Record<Exclude<Layer, `phase-${number}`>, { stroke: Pair; fill: Pair; width: number; dash?: string }> = {
  'magnet-north': { stroke: { light: '#8c4a44', dark: '#d08f88' }, fill: { light: '#f1cfca', dark: '#5a302c' }, width: 1 },
  'magnet-south': { stroke: { light: '#4a668c', dark: '#8ba9d0' }, fill: { light: '#d3dff0', dark: '#2a3c57' }, width: 1 },
  disc: { stroke: soft, fill: { light: '#eceae4', dark: '#22282b' }, width: 1.25, dash: '6 3' },
  steel: { stroke: ink, fill: { light: '#cfd1d1', dark: '#3a4246' }, width: 1.5 },
  copper: { stroke: { light: '#96461a', dark: '#e79a63' }, fill: { light: '#e9bd97', dark: '#8a5630' }, width: 1.5 },
  former: { stroke: ink, fill: { light: '#efe6d2', dark: '#39362b' }, width: 1.25 },
  outline: { stroke: ink, fill: ink, width: 1.25 },
  construction: { stroke: soft, fill: soft, width: 0.9, dash: '8 3 2 3' },
  dimension: { stroke: soft, fill: soft, width: 0.9 },
  text: { stroke: ink, fill: ink, width: 0 },
};

/** How a layer of a drawing looks on screen. Magnets carry a letter and phases a letter and a dash, so that no drawing needs its colour. */
export function layerInk(layer: Layer, mode: Mode): Ink {
  if (isPhase(layer)) {
    const { colour, dash } = lineInk(Number(layer.slice(6)) - 1, mode);
    return { stroke: colour, fill: colour, fillOpacity: 0.3, width: 1.75, ...(dash && { dash }) };
  }
  const { stroke, fill, width, dash } = layers[layer];
  return { stroke: stroke[mode], fill: fill[mode], fillOpacity: 1, width, ...(dash && { dash }) };
}

const isPhase = (layer: Layer): layer is `phase-${1 | 2 | 3 | 4 | 5 | 6}` => layer.startsWith('phase-');
