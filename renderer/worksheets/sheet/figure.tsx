import { useMemo } from 'react';
import { coilDrawing, connectionDrawing, planDrawing, sectionDrawing } from '../../../core';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { Plates } from '../../drawing/plate';
import type { FigureProps } from '../worksheet';
import { Preview } from './preview';

/** The sheet, and its drawings to look at closely. */
export function Figure({ design, results }: FigureProps) {
  const drawings = useMemo(
    () => [coilDrawing, connectionDrawing, planDrawing, sectionDrawing].map((make) => make(design, results)),
    [design, results],
  );
  return (
    <>
      <Preview design={design} results={results} />
      <Plates of="drawings">
        {drawings.map((drawing) => (
          <DrawingPlate key={drawing.title} drawing={drawing} description={`${drawing.title}, as printed on the sheet`} paper />
        ))}
      </Plates>
    </>
  );
}
