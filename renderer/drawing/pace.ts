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

/** A value that follows at once, but while it keeps changing only so often. */
export function usePaced<T>(value: T, milliseconds: number): T {
  const [paced, setPaced] = useState(value);
  const last = useRef(-Infinity);
  useEffect(() => {
    const follow = () => {
      last.current = performance.now();
      setPaced(value);
    };
    const timer = setTimeout(follow, Math.max(0, last.current + milliseconds - performance.now()));
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return paced;
}
