import type { Layer } from '../sheet/drawing';

export interface LayerStyle {
  stroke: string;
  /** Of closed strokes that are filled. */
  fill: string;
  /** On paper. [mm] */
  width: number;
  /** Dashes and spaces on paper. [mm] */
  dash?: [number, number];
}

/** Inks that stay apart in grey: no drawing needs its colour to be understood. */
export const layerStyles: Record<Layer, LayerStyle> = {
  'magnet-north': { stroke: '#555555', fill: '#f3c9c4', width: 0.25 },
  'magnet-south': { stroke: '#555555', fill: '#dfe9f7', width: 0.25 },
  disc: { stroke: '#555555', fill: '#eeeeee', width: 0.3, dash: [3, 1.5] },
  steel: { stroke: '#222222', fill: '#d0d0d0', width: 0.5 },
  copper: { stroke: '#8a4b12', fill: '#f0d2b4', width: 0.5 },
  former: { stroke: '#222222', fill: '#efe6d2', width: 0.4 },
  outline: { stroke: '#000000', fill: '#000000', width: 0.45 },
  construction: { stroke: '#777777', fill: '#777777', width: 0.2, dash: [4, 1.5] },
  dimension: { stroke: '#000000', fill: '#000000', width: 0.2 },
  text: { stroke: '#000000', fill: '#000000', width: 0.2 },
  'phase-1': { stroke: '#b00020', fill: '#f6d5da', width: 0.5 },
  'phase-2': { stroke: '#0b4f9e', fill: '#d3e2f4', width: 0.5 },
  'phase-3': { stroke: '#1b7a2f', fill: '#d6ecda', width: 0.5 },
  'phase-4': { stroke: '#7a3fa0', fill: '#e8daf1', width: 0.5 },
  'phase-5': { stroke: '#946200', fill: '#f3e6c4', width: 0.5 },
  'phase-6': { stroke: '#00727a', fill: '#d0ebec', width: 0.5 },
};
