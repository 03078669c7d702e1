import { useEffect, useState } from 'react';

/** A value that follows once nothing has changed for a while; the first is there at once. */
export function useCalm<T>(value: T, milliseconds: number): T {
  const [calm, setCalm] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setCalm(value), milliseconds);
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return calm;
}
