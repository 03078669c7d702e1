import type { Stretch } from './flow';
import { harmonicsAt } from './harmonics';

/** Integrals over a stretch. [rad] */
export interface Moments {
  /** Of each degree of freedom y. */
  mean: Float64Array;
  /** Of y_j y_k, k × k. */
  products: Float64Array;
  /** Of EMF times current, all phases. */
  work: number;
}

// Rooms that every call writes anew: integrals of each y's steady part with 1 and with every harmonic, of its free part with the same, of the
// harmonics alone, and the harmonics at both ends.
let [steadyCos, steadySin, freeCos, freeSin, steadyOne, freeOne, cosine, sine] = Array.from({ length: 8 }, () => new Float64Array(0));
const [began, ended] = Array.from({ length: 2 }, () => ({ c: new Float64Array(0), s: new Float64Array(0) }));

/**
 * Integrals of the currents over a stretch, and of their products with one another and with the EMF.
 *
 * @param stretch  Stretch of one mode. [rad]
 * @param orders   Odd, rising. [-]
 * @returns        Integrals over the electrical angle. [A·rad, A²·rad, W·rad in the mode's own measure]
 *
 *   y = free · exp(−rate (θ − from)) + constant + Σ (cos · cos nθ + sin · sin nθ)
 *
 * Source    products of sines and cosines turned into sums; ∫ exp((in − rate) θ).
 * Checked   tests/core/rectifier/moments.test.ts
 */
export function momentsOf({ mode, from, to, free }: Stretch, orders: readonly number[]): Moments {
  const { count: k, rates, constant, cos, sin, emfCos, emfSin } = mode;
  const h = orders.length;
  const span = to - from;
  writeWaveIntegrals(from, to, 2 * (orders.at(-1) ?? 0));
  for (const room of [began, ended]) if (room.c.length < h) [room.c, room.s] = [new Float64Array(h), new Float64Array(h)];
  harmonicsAt(from, orders, began.c, began.s);
  harmonicsAt(to, orders, ended.c, ended.s);
  const mean = new Float64Array(k);
  const products = new Float64Array(k * k);
  let work = 0;
  if (steadyCos.length < k * h) [steadyCos, steadySin, freeCos, freeSin] = Array.from({ length: 4 }, () => new Float64Array(k * h));
  if (steadyOne.length < k) [steadyOne, freeOne] = [new Float64Array(k), new Float64Array(k)];
  for (let j = 0; j < k; j++) {
    const left = Math.exp(-rates[j] * span);
    steadyOne[j] = constant[j] * span;
    freeOne[j] = (free[j] * -Math.expm1(-rates[j] * span)) / rates[j];
    for (let n = 0; n < h; n++) {
      const order = orders[n];
      steadyOne[j] += cos[j * h + n] * cosine[order] + sin[j * h + n] * sine[order];
      let withCos = constant[j] * cosine[order];
      let withSin = constant[j] * sine[order];
      for (let q = 0; q < h; q++) {
        const sum = order + orders[q];
        const apart = Math.abs(order - orders[q]);
        const side = order < orders[q] ? -1 : 1;
        const c = cos[j * h + q] / 2;
        const s = sin[j * h + q] / 2;
        withCos += c * (cosine[apart] + cosine[sum]) + s * (sine[sum] - side * sine[apart]);
        withSin += c * (sine[sum] + side * sine[apart]) + s * (cosine[apart] - cosine[sum]);
      }
      steadyCos[j * h + n] = withCos;
      steadySin[j * h + n] = withSin;
      // exp((in − rate)(θ − from)) e^{in from} between the ends, over in − rate.
      const re = left * ended.c[n] - began.c[n];
      const im = left * ended.s[n] - began.s[n];
      const size = free[j] / (order * order + rates[j] * rates[j]);
      freeCos[j * h + n] = size * (order * im - rates[j] * re);
      freeSin[j * h + n] = size * (-order * re - rates[j] * im);
    }
    mean[j] = steadyOne[j] + freeOne[j];
    for (let n = 0, at = j * h; n < h; n++, at++)
      work += emfCos[at] * (steadyCos[at] + freeCos[at]) + emfSin[at] * (steadySin[at] + freeSin[at]);
  }
  for (let j = 0; j < k; j++)
    for (let l = 0; l <= j; l++) {
      const both = rates[j] + rates[l];
      let sum = constant[l] * (steadyOne[j] + freeOne[j]) + constant[j] * freeOne[l];
      sum += (free[j] * free[l] * -Math.expm1(-both * span)) / both;
      for (let n = 0; n < h; n++) {
        const a = j * h + n;
        const b = l * h + n;
        sum += cos[b] * (steadyCos[a] + freeCos[a]) + sin[b] * (steadySin[a] + freeSin[a]) + cos[a] * freeCos[b] + sin[a] * freeSin[b];
      }
      products[j * k + l] = products[l * k + j] = sum;
    }
  return { mean, products, work };
}

/** ∫ cos pθ and ∫ sin pθ for p = 0 … most. */
function writeWaveIntegrals(from: number, to: number, most: number): void {
  if (cosine.length <= most) [cosine, sine] = [new Float64Array(most + 1), new Float64Array(most + 1)];
  cosine[0] = to - from;
  sine[0] = 0;
  const [ca, sa, cb, sb] = [Math.cos(from), Math.sin(from), Math.cos(to), Math.sin(to)];
  let [c1, s1, c2, s2] = [ca, sa, cb, sb];
  for (let p = 1; p <= most; p++) {
    cosine[p] = (s2 - s1) / p;
    sine[p] = (c1 - c2) / p;
    const next1 = c1 * ca - s1 * sa;
    s1 = s1 * ca + c1 * sa;
    c1 = next1;
    const next2 = c2 * cb - s2 * sb;
    s2 = s2 * cb + c2 * sb;
    c2 = next2;
  }
}
