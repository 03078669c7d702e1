import type { Point } from '../../core';

/** Values on a grid of rows and columns, and where each grid point lies. */
export interface Grid {
  rows: number;
  columns: number;
  /** Row after row. */
  values: ArrayLike<number>;
  place: (row: number, column: number) => Point;
}

/** Corner to corner round a cell: which edge a level line enters and leaves by, for each set of corners above it. Marching squares, plain geometry. */
const EDGES: readonly (readonly [number, number])[][] = [
  [],
  [[3, 0]],
  [[0, 1]],
  [[3, 1]],
  [[1, 2]],
  [
    [3, 2],
    [1, 0],
  ],
  [[0, 2]],
  [[3, 2]],
  [[2, 3]],
  [[2, 0]],
  [
    [0, 3],
    [2, 1],
  ],
  [[2, 1]],
  [[1, 3]],
  [[1, 0]],
  [[0, 3]],
  [],
];

/** Lines along which a grid's values pass a level, straight across each cell. */
export function contours(grid: Grid, level: number): Point[][] {
  const { rows, columns, values, place } = grid;
  const above = (row: number, column: number) => (values[row * columns + column] ?? 0) >= level;
  /** Where the line crosses between two neighbours; a name for the crossing lets the pieces find each other. */
  const crossing = (row: number, column: number, edge: number): { key: string; at: Point } => {
    const [r, c] = edge === 1 ? [row, column + 1] : edge === 2 ? [row + 1, column] : [row, column];
    const along = edge % 2 === 0;
    const [r2, c2] = along ? [r, c + 1] : [r + 1, c];
    const [from, to] = [values[r * columns + c] ?? 0, values[r2 * columns + c2] ?? 0];
    const share = from === to ? 0.5 : (level - from) / (to - from);
    const [a, b] = [place(r, c), place(r2, c2)];
    return { key: `${r} ${c} ${along}`, at: [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] };
  };
  const next = new Map<string, { key: string; at: Point }>();
  const starts = new Map<string, Point>();
  const ends = new Set<string>();
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const corners = [above(row, column), above(row, column + 1), above(row + 1, column + 1), above(row + 1, column)];
      const which = corners.reduce((sum, isAbove, i) => sum + (isAbove ? 1 << i : 0), 0);
      for (const [enter, leave] of EDGES[which] ?? []) {
        const [from, to] = [crossing(row, column, enter), crossing(row, column, leave)];
        next.set(from.key, to);
        starts.set(from.key, from.at);
        ends.add(to.key);
      }
    }
  return joined(next, starts, ends);
}

/** Pieces put end to end: open lines from where none leads to, then the closed ones. */
function joined(next: Map<string, { key: string; at: Point }>, starts: Map<string, Point>, ends: Set<string>): Point[][] {
  const lines: Point[][] = [];
  const follow = (first: string) => {
    const line: Point[] = [starts.get(first) ?? [0, 0]];
    for (let key: string | undefined = first; key !== undefined; ) {
      const step = next.get(key);
      next.delete(key);
      if (step) line.push(step.at);
      key = step?.key;
    }
    lines.push(line);
  };
  for (const key of starts.keys()) if (!ends.has(key)) follow(key);
  for (const key of starts.keys()) if (next.has(key)) follow(key);
  return lines;
}
