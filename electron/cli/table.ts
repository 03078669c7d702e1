/** A table for a reader at a terminal, numbers to four figures, and an empty line after it; nothing where there are no items. */
export function table<T>(title: string, items: readonly T[], columns: Record<string, (item: T) => number | string>): string[] {
  if (!items.length) return [];
  const body = items.map((item) => Object.values(columns).map((cell) => cell(item)));
  const isWords = Object.keys(columns).map((_, column) => typeof body[0]![column] === 'string');
  const rows = [Object.keys(columns), ...body.map((row) => row.map(figures))];
  const widths = isWords.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  const line = (row: string[]) =>
    `  ${row.map((cell, column) => (isWords[column] ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!))).join('  ')}`.trimEnd();
  return [title, ...rows.map(line), ''];
}

export function figures(value: number | string): string {
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return 'never';
  const size = Math.abs(value);
  if (size !== 0 && size < 1e-3) return value.toExponential(3);
  return size >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(4)));
}
