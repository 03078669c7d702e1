/** The value at a dotted path, or undefined where the way there ends. */
export function valueAt(root: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined), root);
}

/** A copy of `root` with another value at a dotted path; undefined takes the entry out. What is not on the way is shared. */
export function withValueAt<T>(root: T, path: string, value: unknown): T {
  const [key = '', ...rest] = path.split('.');
  const copy = { ...root } as Record<string, unknown>;
  if (rest.length === 0 && value === undefined) delete copy[key];
  else copy[key] = rest.length === 0 ? value : withValueAt(copy[key], rest.join('.'), value);
  return copy as T;
}
