import { memo } from 'react';
import type { Drawing, Layer, Point, Stroke } from '../../core';
import { layerInk, type Mode } from './inks';

/** Cap height over font size of Roboto: 1456 of 2048 units. */
const CAP_HEIGHT = 1456 / 2048;

/** The strokes of a drawing as SVG elements, y turned down. */
export const Strokes = memo(function Strokes({ drawing, mode }: { drawing: Drawing; mode: Mode }) {
  return (
    <g fontFamily="Roboto, system-ui, sans-serif">
      {drawing.strokes.map((stroke, i) => (
        <StrokeShape key={i} stroke={stroke} mode={mode} />
      ))}
    </g>
  );
});

function StrokeShape({ stroke, mode }: { stroke: Stroke; mode: Mode }) {
  if (stroke.kind === 'text') {
    const [x, y] = [stroke.at[0], -stroke.at[1]];
    return (
      <text
        x={x}
        y={y}
        fontSize={stroke.size / CAP_HEIGHT}
        textAnchor={stroke.anchor}
        fill={layerInk(stroke.layer, mode).fill}
        {...(stroke.angle && { transform: `rotate(${(-stroke.angle * 180) / Math.PI} ${x} ${y})` })}
      >
        {stroke.text}
      </text>
    );
  }
  const look = paint(stroke.layer, 'filled' in stroke && stroke.filled === true, mode);
  if (!stroke.name) return <path d={pathOf(stroke)} {...look} pointerEvents="none" />;
  return (
    <g className="named">
      <title>{stroke.name}</title>
      <path d={pathOf(stroke)} {...look} />
      <path d={pathOf(stroke)} fill="none" stroke="transparent" strokeWidth={9} vectorEffect="non-scaling-stroke" />
    </g>
  );
}

function paint(layer: Layer, filled: boolean, mode: Mode) {
  const { stroke, fill, fillOpacity, width, dash } = layerInk(layer, mode);
  return {
    fill: filled ? fill : 'none',
    fillOpacity,
    stroke,
    strokeWidth: width,
    strokeDasharray: dash,
    strokeLinejoin: 'round',
    vectorEffect: 'non-scaling-stroke',
  } as const;
}

const xy = ([x, y]: Point) => `${round(x)} ${round(-y)}`;
const round = (value: number) => Number(value.toFixed(4)) || 0;

/** The line of a stroke as SVG path data. */
export function pathOf(stroke: Exclude<Stroke, { kind: 'text' }>): string {
  switch (stroke.kind) {
    case 'polyline':
      return `M${stroke.points.map(xy).join(' L')}${stroke.closed ? ' Z' : ''}`;
    case 'circle': {
      const [x, y] = stroke.centre;
      const r = round(stroke.radius);
      return `M${xy([x - r, y])} a${r} ${r} 0 1 0 ${2 * r} 0 a${r} ${r} 0 1 0 ${-2 * r} 0 Z`;
    }
    case 'arc': {
      const { centre, radius, start, sweep } = stroke;
      const at = (angle: number): Point => [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
      const flags = `${Math.abs(sweep) > Math.PI ? 1 : 0} ${sweep > 0 ? 0 : 1}`;
      return `M${xy(at(start))} A${round(radius)} ${round(radius)} 0 ${flags} ${xy(at(start + sweep))}`;
    }
  }
}
