import type { Drawing } from '../../core';

/** The part of a drawing in view; y runs down, as SVG has it. [mm] */
export interface ViewBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

const MOST_MAGNIFIED = 60;

export function fitted({ minX, minY, maxX, maxY }: Drawing['bounds']): ViewBox {
  return { x: minX, y: -maxY, width: maxX - minX, height: maxY - minY };
}

/** Magnified about a point that stays where it is; never farther out than the whole drawing. */
export function zoomed(view: ViewBox, whole: ViewBox, factor: number, at = centre(view)): ViewBox {
  const width = Math.min(whole.width, Math.max(whole.width / MOST_MAGNIFIED, view.width / factor));
  const scale = width / view.width;
  return within({ x: at.x - (at.x - view.x) * scale, y: at.y - (at.y - view.y) * scale, width, height: view.height * scale }, whole);
}

export function panned(view: ViewBox, whole: ViewBox, dx: number, dy: number): ViewBox {
  return within({ ...view, x: view.x + dx, y: view.y + dy }, whole);
}

export const centre = ({ x, y, width, height }: ViewBox) => ({ x: x + width / 2, y: y + height / 2 });

/** Something of the drawing is always in the middle of the view. */
function within(view: ViewBox, whole: ViewBox): ViewBox {
  if (view.width >= whole.width * (1 - 1e-9)) return whole;
  const held = (from: number, low: number, size: number, span: number) => Math.min(low + size - span / 2, Math.max(low - span / 2, from));
  return { ...view, x: held(view.x, whole.x, whole.width, view.width), y: held(view.y, whole.y, whole.height, view.height) };
}

/** Millimetres of the drawing to a pixel of a box that shows it whole. */
export const mmPerPixel = (view: ViewBox, box: { width: number; height: number }): number =>
  Math.max(view.width / Math.max(1, box.width), view.height / Math.max(1, box.height));
