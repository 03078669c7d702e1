import { entryAt, type Design, type Point, type Results } from '../../core';
import type { Handle } from '../drawing/handles';
import { designStore, editEntry, settleEntry } from '../state/design';
import { unitPreferences, viewStore } from '../state/view';
import { quantityAt } from '../words';
import { stepName } from './step-name';

/** Steps in which a drawing is dragged: a tenth of a millimetre, five thousandths of an inch. [m] */
const STEP = { mm: 1e-4, in: 0.005 * 0.0254 };

/** What a drawing with handles does when one is dragged: the entry follows in steps, within its range, as one step to undo. */
export const dragging = {
  onDrag: (path: string, value: number) => {
    const range = entryAt(path, designStore.getState().design)?.number;
    if (!range) return;
    const step = STEP[unitPreferences(viewStore.getState()).length];
    const stepped = Math.round(value / step) * step;
    editEntry(path, Number(Math.min(range.max, Math.max(range.min, stepped)).toPrecision(8)), stepName, true);
  },
  onSettle: settleEntry,
};

const handle = (path: string, value: number, at: Point, along: Point, perMm = 1e-3): Handle => ({
  path,
  label: quantityAt(path).label,
  at,
  along,
  perMm,
  value,
});

const polar = (radius: number, angle: number): Point => [1000 * radius * Math.cos(angle), 1000 * radius * Math.sin(angle)];
const outward = (angle: number): Point => [Math.cos(angle), Math.sin(angle)];

/** The pitch circle, on the magnet next to the first; magnets that are drawn about the axle have none. */
export function pitchHandles({ discs, magnets }: Design): Handle[] {
  if (magnets.shape.kind === 'sector') return [];
  const angle = (2 * Math.PI) / discs.poles;
  return [handle('discs.pitchRadius', discs.pitchRadius, polar(discs.pitchRadius, angle), outward(angle))];
}

/** Hole and leg of the first coil, or ends and width of a ring's first leg. */
export function coilHandles({ winding: { layout }, discs: { poles } }: Design): Handle[] {
  const path = (key: string) => `winding.layout.${key}`;
  const { legWidth } = layout;
  if (layout.kind === 'concentrated') {
    const { holeInnerRadius, holeOuterRadius } = layout;
    return [
      handle(path('holeInnerRadius'), holeInnerRadius, polar(holeInnerRadius, 0), [1, 0]),
      handle(path('holeOuterRadius'), holeOuterRadius, polar(holeOuterRadius, 0), [1, 0]),
      handle(path('legWidth'), legWidth, polar(holeOuterRadius + legWidth, 0), [1, 0]),
    ];
  }
  const { innerRadius, outerRadius } = layout;
  const angle = Math.PI / poles;
  const across: Point = [-Math.sin(angle), Math.cos(angle)];
  const [x, y] = polar((innerRadius + outerRadius) / 2, angle);
  const edge: Point = [x + 500 * legWidth * across[0], y + 500 * legWidth * across[1]];
  return [
    handle(path('innerRadius'), innerRadius, polar(innerRadius, angle), outward(angle)),
    handle(path('outerRadius'), outerRadius, polar(outerRadius, angle), outward(angle)),
    handle(path('legWidth'), legWidth, edge, across, 2e-3),
  ];
}

/** The face of a magnet, which the clearance moves, and the top of the copper. */
export function gapHandles({ discs, winding }: Design, { gap, stages }: Results): Handle[] {
  const pitch = (2000 * Math.PI * discs.pitchRadius) / discs.poles;
  const { copperHeight } = stages.winding;
  const side = discs.arrangement === 'single' ? -1 : 1;
  return [
    handle('discs.runningClearance', discs.runningClearance, [pitch, side * 500 * gap.length], [0, side]),
    handle('winding.thickness', winding.thickness, [0, 500 * copperHeight], [0, 1], (2e-3 * winding.thickness) / copperHeight),
  ];
}
