/** Centres of equal circles spread evenly over a window, row by row, every other row moved by half a step. Lengths in one unit. */
export function spreadCircles(count: number, width: number, height: number, diameter: number): { x: number; y: number }[] {
  if (count < 1) return [];
  const rows = bestRows(count, width, height, diameter);
  const perRow = Math.ceil(count / rows);
  return Array.from({ length: count }, (_, i) => {
    const row = Math.floor(i / perRow);
    return { x: alongRow(i % perRow, row % 2, perRow, rows, width, diameter), y: share(row, rows, height, diameter) };
  });
}

/** The number of rows that leaves neighbours the most room. */
function bestRows(count: number, width: number, height: number, diameter: number): number {
  let [best, room] = [1, -Infinity];
  for (let rows = 1; rows <= count; rows++) {
    const perRow = Math.ceil(count / rows);
    if ((rows - 1) * perRow >= count) continue; // a row would stay empty
    const across = alongRow(1, 0, perRow, rows, width, diameter) - alongRow(0, 0, perRow, rows, width, diameter);
    const up = share(1, rows, height, diameter) - share(0, rows, height, diameter);
    const nearest = Math.min(
      perRow > 1 ? across : Infinity,
      rows > 1 ? Math.hypot(across / 2, up) : Infinity,
      rows > 2 ? 2 * up : Infinity,
    );
    if (nearest > room) [best, room] = [rows, nearest];
  }
  return best;
}

/** Rows that are moved aside share the width with those that are not. */
function alongRow(i: number, aside: number, perRow: number, rows: number, width: number, diameter: number): number {
  const halfSteps = 2 * (perRow - 1) + (rows > 1 ? 1 : 0);
  if (halfSteps === 0) return width / 2;
  return diameter / 2 + ((2 * i + aside) * (width - diameter)) / halfSteps;
}

const share = (i: number, of: number, length: number, diameter: number) =>
  of === 1 ? length / 2 : diameter / 2 + (i * (length - diameter)) / (of - 1);
