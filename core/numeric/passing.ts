/**
 * Where a quantity known at some places first passes a value.
 *
 * @param places  Rising. [any]
 * @param values  There, straight between; 0 at place 0. [any]
 * @param most    The value, 0 or more. [as values]
 * @returns       Place, undefined where it never passes. [as places]
 *
 * Source    straight line between two points.
 * Checked   tests/core/numeric/passing.test.ts
 */
export function passing(places: readonly number[], values: readonly number[], most: number): number | undefined {
  const i = values.findIndex((value) => value > most);
  if (i < 0) return undefined;
  const [place, value] = i > 0 ? [places[i - 1], values[i - 1]] : [0, 0];
  return place + ((most - value) / (values[i] - value)) * (places[i] - place);
}
