import Box from '@mui/material/Box';
import NativeSelect from '@mui/material/NativeSelect';
import { useTheme } from '@mui/material/styles';
import { useState, type PointerEvent } from 'react';
import type { Design, Found, ObjectiveId, Objectives } from '../../../core';
import { axisLabel } from '../../drawing/chart';
import { Plate, Tool } from '../../drawing/plate';
import { scaleFor, type Scale } from '../../drawing/scale';
import { boxStyle } from '../../parts/box-style';
import { useUnits } from '../../parts/unit-preferences';
import { format, inEntryUnit, type UnitPreferences } from '../../units';
import { nameOf, objectiveOf, weighedBy } from './machine-words';

/** A rectangle on the chart in two objectives, SI. */
export interface Brush {
  x: { id: ObjectiveId; from: number; to: number };
  y: { id: ObjectiveId; from: number; to: number };
}

export const isBrushed = ({ objectives: values }: Found, { x, y }: Brush): boolean =>
  [x, y].every(({ id, from, to }) => values[id] >= from && values[id] <= to);

interface Props {
  design: Design;
  found: readonly Found[];
  /** Where the design on screen stands. */
  own: Objectives | null;
  brush: Brush | null;
  onBrush: (brush: Brush | null) => void;
  onOpen: (found: Found) => void;
}

const WIDTH = 900;
const HEIGHT = 300;
const INSET = { left: 58, right: 12, top: 10, bottom: 38 };
/** A pointer that moves less than this has clicked; a dot nearer than this is meant. In the drawing's units. */
const CLICK = 4;
const NEAR = 12;

/** The best machines found, two of their respects against one another. Dragging picks out a part of them; a click on one opens it. */
export function FrontChart({ design, found, own, brush, onBrush, onOpen }: Props) {
  const { tones } = useTheme().palette;
  const units = useUnits();
  const [x, setX] = useState<ObjectiveId>('cutInWind');
  const [y, setY] = useState<ObjectiveId>('yearEnergy');
  const [drag, setDrag] = useState<{ from: Place; to: Place } | null>(null);
  const [near, setNear] = useState<number | null>(null);
  const across = axisOf(x, design, found, own, units, [INSET.left, WIDTH - INSET.right]);
  const up = axisOf(y, design, found, own, units, [HEIGHT - INSET.bottom, INSET.top]);
  const places = found.map(({ objectives: values }): Place => [across.at(values[x]), up.at(values[y])]);
  const dots = (isIn: (one: Found) => boolean) =>
    places
      .flatMap(([px, py], i) => (Number.isFinite(px + py) && isIn(found[i] as Found) ? `M${px.toFixed(1)} ${py.toFixed(1)}h0` : []))
      .join('');
  const isShown = (one: Found) => brush === null || isBrushed(one, brush);
  const choose = (set: (id: ObjectiveId) => void) => (id: ObjectiveId) => {
    set(id);
    onBrush(null);
  };

  const begin = (event: PointerEvent<SVGSVGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeOf(event);
    setDrag({ from: at, to: at });
  };
  const move = (event: PointerEvent<SVGSVGElement>) => {
    const at = placeOf(event);
    if (drag) setDrag({ from: drag.from, to: at });
    else setNear(nearest(places, at));
  };
  const end = () => {
    if (!drag) return;
    const { from, to } = drag;
    setDrag(null);
    const one = found[nearest(places, to) ?? -1];
    if (distance(from, to) >= CLICK) onBrush({ x: { id: x, ...across.span(from[0], to[0]) }, y: { id: y, ...up.span(from[1], to[1]) } });
    else if (one) onOpen(one);
    else onBrush(null);
  };
  const box = drag ? { from: drag.from, to: drag.to } : brush && brush.x.id === x && brush.y.id === y ? boxOf(brush, across, up) : null;
  const told = near === null ? undefined : found[near];

  return (
    <Plate
      title="The best machines found"
      tools={
        brush && (
          <Tool label="Clear the part picked out" onClick={() => onBrush(null)}>
            Clear
          </Tool>
        )
      }
      note={
        told
          ? `${nameOf(told.candidate)}: ${weighedBy(design)
              .map((o) => `${o.label.toLowerCase()} ${format(told.objectives[o.id], o.unit, units, 3)}`)
              .join(', ')}.`
          : 'Each dot is a machine that no other beats in every respect. Drag to pick out a part of them; click a dot to open that machine. The ring is the design on screen.'
      }
    >
      <Box sx={{ display: 'flex', gap: 2, px: 1.25, pt: 1, fontSize: 12.5, color: 'text.secondary', flexWrap: 'wrap' }}>
        <AxisChoice label="Upright" design={design} value={y} onChange={choose(setY)} />
        <AxisChoice label="Across" design={design} value={x} onChange={choose(setX)} />
      </Box>
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={`${found.length} machines: ${objectiveOf(y, design).label} against ${objectiveOf(x, design).label}`}
        style={{
          display: 'block',
          width: '100%',
          touchAction: 'none',
          cursor: near === null ? 'crosshair' : 'pointer',
          userSelect: 'none',
        }}
        onPointerDown={begin}
        onPointerMove={move}
        onPointerUp={end}
        onPointerCancel={() => setDrag(null)}
        onPointerLeave={() => setNear(null)}
      >
        <g stroke={tones.rule} strokeWidth={0.75}>
          {across.scale.ticks.map((tick) => (
            <line key={tick} x1={across.place(tick)} x2={across.place(tick)} y1={INSET.top} y2={HEIGHT - INSET.bottom} />
          ))}
          {up.scale.ticks.map((tick) => (
            <line key={tick} x1={INSET.left} x2={WIDTH - INSET.right} y1={up.place(tick)} y2={up.place(tick)} />
          ))}
        </g>
        <g fill={tones.ink} fontSize={11.5}>
          {across.scale.ticks.map((tick) => (
            <text key={tick} x={across.place(tick)} y={HEIGHT - INSET.bottom + 15} textAnchor="middle">
              {tickText(tick)}
            </text>
          ))}
          {up.scale.ticks.map((tick) => (
            <text key={tick} x={INSET.left - 6} y={up.place(tick) + 4} textAnchor="end">
              {tickText(tick)}
            </text>
          ))}
        </g>
        <g fill={tones.faint} fontSize={11.5} textAnchor="middle">
          <text x={(INSET.left + WIDTH - INSET.right) / 2} y={HEIGHT - 5}>
            {across.label}
          </text>
          <text transform={`translate(12 ${(INSET.top + HEIGHT - INSET.bottom) / 2}) rotate(-90)`}>{up.label}</text>
        </g>
        <g fill="none" strokeLinecap="round">
          <path d={dots((one) => !isShown(one))} stroke={tones.edge} strokeWidth={4} opacity={0.45} />
          <path d={dots(isShown)} stroke={tones.accent} strokeWidth={6} />
          {own && Number.isFinite(across.at(own[x]) + up.at(own[y])) && (
            <circle cx={across.at(own[x])} cy={up.at(own[y])} r={7} stroke={tones.ink} strokeWidth={1.5} />
          )}
          {near !== null && places[near] && <circle cx={places[near][0]} cy={places[near][1]} r={6} stroke={tones.ink} />}
        </g>
        {box && (
          <rect
            x={Math.min(box.from[0], box.to[0])}
            y={Math.min(box.from[1], box.to[1])}
            width={Math.abs(box.to[0] - box.from[0])}
            height={Math.abs(box.to[1] - box.from[1])}
            fill={tones.accent}
            fillOpacity={0.1}
            stroke={tones.accent}
            strokeDasharray="4 3"
          />
        )}
      </svg>
    </Plate>
  );
}

interface AxisChoiceProps {
  label: string;
  design: Design;
  value: ObjectiveId;
  onChange: (id: ObjectiveId) => void;
}

function AxisChoice({ label, design, value, onChange }: AxisChoiceProps) {
  return (
    <Box component="label" sx={{ display: 'flex', alignItems: 'center', gap: 1 }}>
      {label}
      <NativeSelect
        value={value}
        disableUnderline
        onChange={(event) => onChange(event.target.value as ObjectiveId)}
        inputProps={{ 'aria-label': `${label} axis` }}
        sx={[boxStyle as object, { width: 150 }]}
      >
        {weighedBy(design).map((each) => (
          <option key={each.id} value={each.id}>
            {each.label}
          </option>
        ))}
      </NativeSelect>
    </Box>
  );
}

type Place = readonly [x: number, y: number];

interface Axis {
  label: string;
  scale: Scale;
  /** Of a value in the entry unit, as ticks are. */
  place: (shown: number) => number;
  /** Of a value in SI. */
  at: (value: number) => number;
  /** Values in SI between two places. */
  span: (one: number, other: number) => { from: number; to: number };
}

function axisOf(
  id: ObjectiveId,
  design: Design,
  found: readonly Found[],
  own: Objectives | null,
  units: UnitPreferences,
  [start, end]: readonly [number, number],
): Axis {
  const { label, unit: kind } = objectiveOf(id, design);
  const shown = (value: number) => inEntryUnit(value, kind, units);
  const values = [...found.map(({ objectives: each }) => shown(each[id])), ...(own ? [shown(own[id])] : [])];
  const scale = scaleFor(values, { count: start < end ? 8 : 5 });
  const place = (value: number) => start + ((value - scale.min) / (scale.max - scale.min)) * (end - start);
  // Every unit here is in proportion or shifted: two values tell the way back.
  const [zero, one] = [shown(0), shown(1)];
  const back = (at: number) => (scale.min + ((at - start) / (end - start)) * (scale.max - scale.min) - zero) / (one - zero);
  const span = (a: number, b: number) => ({ from: Math.min(back(a), back(b)), to: Math.max(back(a), back(b)) });
  return { label: axisLabel({ label, kind }, units), scale, place, at: (value) => place(shown(value)), span };
}

const boxOf = ({ x, y }: Brush, across: Axis, up: Axis): { from: Place; to: Place } => ({
  from: [across.at(x.from), up.at(y.from)],
  to: [across.at(x.to), up.at(y.to)],
});

const distance = (a: Place, b: Place) => Math.hypot(a[0] - b[0], a[1] - b[1]);

function nearest(places: readonly Place[], at: Place): number | null {
  let [best, least]: [number | null, number] = [null, NEAR];
  places.forEach((place, i) => {
    const away = distance(place, at);
    if (away < least) [best, least] = [i, away];
  });
  return best;
}

function placeOf({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>): Place {
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  return [((clientX - left) / width) * WIDTH, ((clientY - top) / height) * HEIGHT];
}

const tickText = (tick: number) => String(tick).replace('-', '−');
