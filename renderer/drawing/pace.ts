import { useEffect, useRef, useState } from 'react';

/** A value that follows once nothing has changed for a while; the first is there at once. */
export function useCalm<T>(value: T, milliseconds: number): T {
  const [calm, setCalm] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setCalm(value), milliseconds);
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return calm;
}

/**
 * A value that follows at once, but while it keeps changing only so often, and then right after a change: what is drawn from it is done before the next.
 */
export function usePaced<T>(value: T, milliseconds: number): T {
  const [paced, setPaced] = useState(value);
  const last = useRef(-Infinity);
  useEffect(() => {
    const follow = () => {
      last.current = performance.now();
      setPaced(value);
    };
    const isDue = performance.now() - last.current >= milliseconds;
    const timer = setTimeout(follow, isDue ? 0 : milliseconds);
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return paced;
}
