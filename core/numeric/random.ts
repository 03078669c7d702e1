/** A stream of chance numbers that its seed decides. */
export interface Random {
  /** Evenly spread, 0 ≤ u < 1. */
  uniform(): number;
  /** Of mean 0 and standard deviation 1, bell-shaped. */
  normal(): number;
}

/**
 * A stream of chance numbers: the same for the same seed, on every machine.
 *
 * @param seed  Any whole number; its lowest 32 bits count. [-]
 * @returns     Stream. [-]
 *
 * Source    xoshiro128** 1.1, Blackman & Vigna 2021, ACM Trans. Math. Softw. 47, 36; state from the seed by splitmix32 (from memory). Normal numbers by
 *           Box & Muller 1958, Ann. Math. Stat. 29, 610.
 * Checked   tests/core/numeric/random.test.ts
 */
export function createRandom(seed: number): Random {
  return randomFrom(seedWords(seed));
}

/**
 * The same from a whole state.
 *
 * @param state  Four words of 32 bits, not all 0. [-]
 * @returns      Stream. [-]
 *
 * Source    as `createRandom`.
 * Checked   tests/core/numeric/random.test.ts
 */
export function randomFrom(state: readonly [number, number, number, number]): Random {
  const word = xoshiro128(state);
  const uniform = () => ((word() >>> 5) * 2 ** 26 + (word() >>> 6)) / 2 ** 53;
  return { uniform, normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()) };
}

/**
 * The generator's own words.
 *
 * @param state  Four words of 32 bits, not all 0. [-]
 * @returns      Next word of 32 bits, at each call. [-]
 *
 * Source    as `createRandom`.
 * Checked   tests/core/numeric/random.test.ts
 */
export function xoshiro128([a, b, c, d]: readonly [number, number, number, number]): () => number {
  return () => {
    const word = Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = turned(d, 11);
    return word;
  };
}

const turned = (x: number, by: number) => (x << by) | (x >>> (32 - by));

function seedWords(seed: number): [number, number, number, number] {
  let state = seed | 0;
  const next = () => {
    state = (state + 0x9e3779b9) | 0;
    let z = state ^ (state >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
  return [next(), next(), next(), next()];
}
