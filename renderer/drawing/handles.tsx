import Box from '@mui/material/Box';
import { useRef, type PointerEvent } from 'react';
import type { Point } from '../../core';
import { useUnits } from '../parts/unit-preferences';
import { format } from '../units';

/** A place in a drawing that is dragged along a line to change a length. */
export interface Handle {
  /** Path of the entry it changes. */
  path: string;
  label: string;
  at: Point;
  /** Direction in which the entry grows, of length one. */
  along: Point;
  /** What the entry gains by a millimetre of the drawing. [m] */
  perMm: number;
  value: number;
}

interface Props {
  handles: readonly Handle[];
  onDrag: (path: string, value: number) => void;
  onSettle: () => void;
}

/** For the pointer alone: by keyboard the entry's own box does the same. */
export function Handles({ handles, ...events }: Props) {
  return (
    <g>
      {handles.map((handle) => (
        <HandleShape key={handle.path} handle={handle} {...events} />
      ))}
    </g>
  );
}

function HandleShape({ handle, onDrag, onSettle }: { handle: Handle } & Omit<Props, 'handles'>) {
  const { path, label, at, along, perMm, value } = handle;
  const units = useUnits();
  // The drawing takes its size from what it shows, so it may change under the pointer: what counts is its scale as the drag began.
  const drag = useRef<{ x: number; y: number; from: number; toMm: DOMMatrix } | null>(null);
  const start = (event: PointerEvent<SVGGElement>) => {
    const toScreen = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (event.button !== 0 || !toScreen) return;
    event.stopPropagation();
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    drag.current = { x: event.clientX, y: event.clientY, from: value, toMm: toScreen.inverse() };
  };
  const move = (event: PointerEvent<SVGGElement>) => {
    const { current } = drag;
    if (!current) return;
    event.stopPropagation();
    const { a, d } = current.toMm;
    const [dx, dy] = [(event.clientX - current.x) * a, -(event.clientY - current.y) * d];
    onDrag(path, current.from + (dx * along[0] + dy * along[1]) * perMm);
  };
  const end = () => {
    if (drag.current) onSettle();
    drag.current = null;
  };
  const dot = `M${at[0]} ${-at[1]} h0.001`;
  return (
    <Box
      component="g"
      data-handle={path}
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
      sx={(t) => ({
        cursor: Math.abs(along[0]) > Math.abs(along[1]) ? 'ew-resize' : 'ns-resize',
        touchAction: 'none',
        '& path': { fill: 'none', strokeLinecap: 'round', vectorEffect: 'non-scaling-stroke' },
        '& .reach': { stroke: 'transparent', strokeWidth: 22 },
        '& .rim': { stroke: t.palette.tones.accent, strokeWidth: 11 },
        '& .eye': { stroke: t.palette.tones.well, strokeWidth: 6 },
        '&:hover .eye': { strokeWidth: 0 },
      })}
    >
      <title>{`${label} ${format(value, 'length', units)}: drag to change`}</title>
      <path className="rim" d={dot} />
      <path className="eye" d={dot} />
      <path className="reach" d={dot} />
    </Box>
  );
}
