import type { Design } from '../../../core';
import { fieldMap, type FieldMap } from './field-map';

export interface Question {
  design: Design;
  innerRadius: number;
  outerRadius: number;
}

self.onmessage = ({ data: { design, innerRadius, outerRadius } }: MessageEvent<Question>) => {
  self.postMessage(fieldMap(design, innerRadius, outerRadius) satisfies FieldMap);
};
