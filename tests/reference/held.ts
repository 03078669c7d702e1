import { afterAll, expect } from 'vitest';

/** Holds errors to what is asked and, when the file is through, tells the greatest there was. Shares: 0.01 is one per cent. */
export function held(what: string, asked: number): (error: number) => void {
  let greatest = 0;
  afterAll(() => console.log(`${what}: ${greatest.toPrecision(2)} at most, ${asked} asked`));
  return (error) => {
    greatest = Math.max(greatest, error);
    expect(error).toBeLessThan(asked);
  };
}
