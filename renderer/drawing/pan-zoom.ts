import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { mmPerPixel, panned, zoomed, type ViewBox } from './view-box';

const STEP = 1.3;

/**
 * What part of a drawing is in view, moved by pointer, wheel and keys. The wheel magnifies with Ctrl or ⌘ held, or once the drawing has been
 * clicked, so that scrolling the page does not stop at every drawing.
 */
export function usePanZoom(whole: ViewBox) {
  const frame = useRef<HTMLDivElement>(null);
  const [moved, setMoved] = useState<ViewBox | null>(null);
  const view = moved ?? whole;
  const change = (next: (view: ViewBox) => ViewBox) =>
    setMoved((now) => {
      const result = next(now ?? whole);
      return result === whole ? null : result;
    });

  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey && document.activeElement !== element) return;
      event.preventDefault();
      const box = element.getBoundingClientRect();
      setMoved((now) => {
        const from = now ?? whole;
        const scale = mmPerPixel(from, box);
        const at = {
          x: from.x + from.width / 2 + (event.clientX - box.left - box.width / 2) * scale,
          y: from.y + from.height / 2 + (event.clientY - box.top - box.height / 2) * scale,
        };
        const next = zoomed(from, whole, Math.exp(-event.deltaY * 0.0016), at);
        return next === whole ? null : next;
      });
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [whole]);

  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    if (event.buttons !== 1 || moved === null) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const scale = mmPerPixel(view, event.currentTarget.getBoundingClientRect());
    change((now) => panned(now, whole, -event.movementX * scale, -event.movementY * scale));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const next = keyMove(event.key, view, whole);
    if (!next || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    change(() => next);
  };
  return {
    view,
    isMoved: moved !== null,
    magnify: () => change((now) => zoomed(now, whole, STEP)),
    reduce: () => change((now) => zoomed(now, whole, 1 / STEP)),
    reset: () => setMoved(null),
    frame: { ref: frame, onPointerMove, onKeyDown },
  };
}

function keyMove(key: string, view: ViewBox, whole: ViewBox): ViewBox | undefined {
  const step = view.width / 10;
  switch (key) {
    case '+':
    case '=':
      return zoomed(view, whole, STEP);
    case '-':
      return zoomed(view, whole, 1 / STEP);
    case '0':
      return whole;
    case 'ArrowLeft':
      return panned(view, whole, -step, 0);
    case 'ArrowRight':
      return panned(view, whole, step, 0);
    case 'ArrowUp':
      return panned(view, whole, 0, -step);
    case 'ArrowDown':
      return panned(view, whole, 0, step);
    default:
      return undefined;
  }
}
