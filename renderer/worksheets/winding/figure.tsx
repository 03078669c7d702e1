import { useMemo } from 'react';
import { coilDrawing, connectionDrawing, planDrawing } from '../../../core';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { Plates, Wide } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { bareLength } from '../../units';
import { coilHandles, dragging } from '../handles';
import type { FigureProps } from '../worksheet';

export function Figure({ design, results }: FigureProps) {
  const units = useUnits();
  const plan = useMemo(() => planDrawing(design, results, bareLength(units)), [design, results, units]);
  const coil = useMemo(() => coilDrawing(design, results, bareLength(units)), [design, results, units]);
  const connections = useMemo(() => connectionDrawing(design, results), [design, results]);
  const { phases, connection } = design.winding;
  return (
    <Plates of="drawings">
      <DrawingPlate
        drawing={plan}
        description={`${results.coils.count} coils in ${phases} phases in their places; numbers and phase letters stand outside them`}
        inUserUnit
        handles={coilHandles(design)}
        {...dragging}
      />
      <DrawingPlate drawing={coil} description="One coil with its sizes, sense of winding, start and finish" inUserUnit />
      <Wide>
        <DrawingPlate
          drawing={connections}
          description={`Every coil between its terminals, joined in ${connection === 'separate' ? 'separate phases' : connection}`}
        />
      </Wide>
    </Plates>
  );
}
