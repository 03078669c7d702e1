import { useRef, type MouseEvent, type PointerEvent } from 'react';

export interface StepKeys {
  shiftKey: boolean;
  altKey: boolean;
}

/** Screen pixels to a step. */
const PIXELS = 4;

/**
 * Handlers for a label that is dragged sideways to step its number; a click without a drag stays a click.
 *
 * @param step  Steps from a value, sized as for `base`, and returns where that came to.
 */
export function useScrub(
  value: number | undefined,
  step: (from: number, steps: number, keys: StepKeys, base: number) => number,
  onSettle: () => void,
) {
  const drag = useRef<{ x: number; base: number; at: number; moved: boolean } | null>(null);
  const end = () => {
    if (drag.current?.moved) onSettle();
  };
  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      const canStep = event.button === 0 && value !== undefined;
      drag.current = canStep ? { x: event.clientX, base: value, at: value, moved: false } : null;
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      const { current } = drag;
      if (!current || event.buttons !== 1) return;
      const steps = Math.trunc((event.clientX - current.x) / PIXELS);
      if (steps === 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      drag.current = { ...current, x: current.x + steps * PIXELS, at: step(current.at, steps, event, current.base), moved: true };
    },
    onPointerUp: end,
    onPointerCancel: end,
    onClick(event: MouseEvent) {
      if (drag.current?.moved) event.preventDefault();
      drag.current = null;
    },
  };
}

export type ScrubHandlers = ReturnType<typeof useScrub>;
