/** A line of words and the corners of the box round it, in order. */
export interface WordBox {
  words: string;
  corners: [x: number, y: number][];
}

/** Pairs of boxes that lie on each other: no side of either separates them. */
export function overlapping(boxes: WordBox[]): [string, string][] {
  return boxes.flatMap((a, i) => boxes.slice(i + 1).flatMap((b) => (meet(a, b) ? ([[a.words, b.words]] as [string, string][]) : [])));
}

function meet(a: WordBox, b: WordBox): boolean {
  return [a, b].every(({ corners: [p, q, r] }) =>
    [
      [q[0] - p[0], q[1] - p[1]],
      [r[0] - q[0], r[1] - q[1]],
    ].every(([x, y]) => {
      const [from, to] = range(a, x, y);
      const [low, high] = range(b, x, y);
      return from < high - 1e-9 && low < to - 1e-9;
    }),
  );
}

function range({ corners }: WordBox, x: number, y: number): [number, number] {
  const shadows = corners.map((c) => c[0] * x + c[1] * y);
  return [Math.min(...shadows), Math.max(...shadows)];
}
