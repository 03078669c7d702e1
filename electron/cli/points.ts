type Vector = [number, number, number];

const columns = ['x', 'y', 'z'] as const;
const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** Points of a CSV table x,y,z in metres, with or without its heading. A cell that is no number is named by line and column. */
export function pointsFrom(csv: string, fileName: string): Vector[] {
  const points: Vector[] = [];
  const lines = csv.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  lines.forEach((line, index) => {
    if (!line.trim()) return;
    const cells = line.split(',').map((cell) => cell.trim());
    if (points.length === 0 && cells.join().toLowerCase() === columns.join()) return;
    const at = `${fileName}: line ${index + 1}`;
    if (cells.length > columns.length) throw new Error(`${at}, column ${columns.length + 1}: there are only x, y and z`);
    points.push(columns.map((name, column) => cellValue(cells[column], `${at}, column ${column + 1} (${name})`)) as Vector);
  });
  if (!points.length) throw new Error(`${fileName}: line 1, column 1 (x): there is no point in this file`);
  return points;
}

function cellValue(cell: string | undefined, at: string): number {
  if (!cell) throw new Error(`${at}: a number is missing`);
  const value = number.test(cell) ? Number(cell) : NaN;
  if (!Number.isFinite(value)) throw new Error(`${at}: must be a number; received ${JSON.stringify(cell.slice(0, 40))}`);
  return value;
}

export function fieldTable(points: Vector[], field: (x: number, y: number, z: number) => Vector): string {
  const rows = points.map((point) => [...point, ...field(...point)].join());
  return ['x,y,z,Bx,By,Bz', ...rows, ''].join('\n');
}
