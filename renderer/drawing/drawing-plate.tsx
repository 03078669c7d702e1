import Box from '@mui/material/Box';
import { useTheme } from '@mui/material/styles';
import { useMemo, type ReactNode } from 'react';
import type { Drawing } from '../../core';
import { useUnits } from '../parts/unit-preferences';
import { Handles, type Handle } from './handles';
import { usePanZoom } from './pan-zoom';
import { Plate, Tool } from './plate';
import { Strokes } from './strokes';
import { fitted } from './view-box';

interface DrawingPlateProps {
  drawing: Drawing;
  /** What is seen, for those who do not see it. */
  description: string;
  /** Greatest height, px. */
  height?: number;
  /** Black on white in any theme, as it comes out of the printer. */
  paper?: boolean;
  /** Its lengths are in the user's unit. */
  inUserUnit?: boolean;
  note?: ReactNode;
  handles?: readonly Handle[];
  onDrag?: (path: string, value: number) => void;
  onSettle?: () => void;
}

/** A drawing of the core on screen, to be magnified and moved. */
export function DrawingPlate({
  drawing,
  description,
  height = 460,
  paper = false,
  inUserUnit = false,
  note,
  handles,
  onDrag,
  onSettle,
}: DrawingPlateProps) {
  const { palette } = useTheme();
  const whole = useMemo(() => fitted(drawing.bounds), [drawing.bounds]);
  const { length } = useUnits();
  // What is printed and cut is in one unit.
  const unit = inUserUnit ? 'inches' : 'mm';
  const saysUnit = length !== 'mm' && (inUserUnit || paper);
  const { view, isMoved, magnify, reduce, reset, frame } = usePanZoom(whole);
  const tools = (
    <>
      {isMoved && (
        <Tool label={`${drawing.title}: show all`} onClick={reset}>
          Show all
        </Tool>
      )}
      <Tool label={`${drawing.title}: smaller`} onClick={reduce}>
        −
      </Tool>
      <Tool label={`${drawing.title}: larger`} onClick={magnify}>
        +
      </Tool>
    </>
  );
  return (
    <Plate
      title={drawing.title}
      tools={tools}
      note={
        saysUnit ? (
          <>
            {note} Lengths in the drawing are in {unit}.
          </>
        ) : (
          note
        )
      }
    >
      <Box sx={{ p: 1, ...(paper && { bgcolor: '#ffffff' }) }}>
        <Box
          {...frame}
          tabIndex={0}
          role="group"
          aria-label={`${drawing.title}: plus and minus magnify, arrows move, 0 shows all`}
          sx={{
            cursor: isMoved ? 'grab' : 'default',
            touchAction: isMoved ? 'none' : 'auto',
            userSelect: 'none',
            '&:active': { cursor: isMoved ? 'grabbing' : 'default' },
            '& .named:hover path:first-of-type': { strokeWidth: 3 },
          }}
        >
          <Box
            component="svg"
            role="img"
            aria-label={description}
            viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
            sx={{ display: 'block', width: '100%', aspectRatio: `${whole.width} / ${whole.height}`, maxHeight: height }}
          >
            <Strokes drawing={drawing} mode={paper ? 'light' : palette.mode} />
            {handles && onDrag && onSettle && <Handles handles={handles} onDrag={onDrag} onSettle={onSettle} />}
          </Box>
        </Box>
      </Box>
    </Plate>
  );
}
