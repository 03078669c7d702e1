import { fluxLinesOf, type Design } from '../../../core';
import { fieldMap, type FieldMap } from './field-map';

export interface Question {
  design: Design;
  innerRadius: number;
  outerRadius: number;
}

export interface Answer {
  map: FieldMap;
  /** Of one pole, along the pitch circle and along the axle. [m] */
  flux: ReturnType<typeof fluxLinesOf>;
}

const LINES = 18;

self.onmessage = ({ data: { design, innerRadius, outerRadius } }: MessageEvent<Question>) => {
  self.postMessage({ map: fieldMap(design, innerRadius, outerRadius), flux: fluxLinesOf(design, LINES) } satisfies Answer);
};
