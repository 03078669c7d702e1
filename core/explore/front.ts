/** The machines that no other beats in every respect, kept up to date as they come. */
export interface Front<T> {
  /** Offers one; less is better in every number. Says whether it stands, for now. */
  add(item: T, vector: readonly number[]): boolean;
  readonly items: readonly T[];
}

/**
 * An exact front. One vector beats another that is nowhere better and somewhere worse; equal ones stand side by side.
 *
 * Whoever beat the last comer is likely to beat the next, so it is asked first.
 */
export function createFront<T>(): Front<T> {
  const items: T[] = [];
  const vectors: (readonly number[])[] = [];
  return {
    items,
    add(item, vector) {
      for (let i = 0; i < vectors.length; i++) {
        if (!beats(vectors[i], vector)) continue;
        if (i > 0) swap(i, i >> 1);
        return false;
      }
      for (let i = vectors.length - 1; i >= 0; i--) if (beats(vector, vectors[i])) drop(i);
      items.push(item);
      vectors.push(vector);
      return true;
    },
  };

  function swap(i: number, j: number): void {
    [items[i], items[j]] = [items[j], items[i]];
    [vectors[i], vectors[j]] = [vectors[j], vectors[i]];
  }

  function drop(i: number): void {
    const [lastItem, lastVector] = [items.pop() as T, vectors.pop() as readonly number[]];
    if (i === items.length) return;
    items[i] = lastItem;
    vectors[i] = lastVector;
  }
}

/** Whether `a` is nowhere worse than `b` and somewhere better; where a number is not known neither is. */
export function beats(a: readonly number[], b: readonly number[]): boolean {
  let better = false;
  for (let k = 0; k < a.length; k++) {
    if (a[k] > b[k]) return false;
    if (a[k] < b[k]) better = true;
  }
  return better;
}
