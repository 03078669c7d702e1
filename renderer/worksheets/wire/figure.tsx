import { useMemo } from 'react';
import { coilDrawing } from '../../../core';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { Plates } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { bareLength, format } from '../../units';
import type { FigureProps } from '../worksheet';
import { legDrawing } from './leg-drawing';

export function Figure({ design, results }: FigureProps) {
  const units = useUnits();
  const leg = useMemo(() => legDrawing(design, results), [design, results]);
  const coil = useMemo(() => coilDrawing(design, results, bareLength(units)), [design, results, units]);
  const { layout, thickness } = design.winding;
  const window = `${format(layout.legWidth, 'length', units)} wide, ${format(thickness, 'length', units)} high`;
  const fill = format(results.coils.fill, 'percent', units, 3);
  const { turnsTooMany } = results.stages.wire;
  const words = results.coils.fits
    ? `Window ${window}, ${fill} of it covered wire. The wires are drawn spread evenly; by hand they lie less evenly.`
    : `Window ${window}: ${fill} would have to be covered wire. Take out ${turnsTooMany} ${turnsTooMany === 1 ? 'turn' : 'turns'}, or give it more room.`;
  return (
    <Plates of="drawings">
      <DrawingPlate
        drawing={leg.drawing}
        description={`${leg.strandsIn} wires in a window ${window}${leg.strandsOut > 0 ? `; ${leg.strandsOut} do not go in` : ''}`}
        height={340}
        note={words}
      />
      <DrawingPlate drawing={coil} description="One coil with its sizes, sense of winding, start and finish" height={400} inUserUnit />
    </Plates>
  );
}
