/**
 * cos nθ and sin nθ of odd orders, by turning through 2θ from one to the next.
 *
 * @param angle    θ. [rad]
 * @param orders   Odd, rising. [-]
 * @param cosines  Written to, order by order. [-]
 * @param sines    Written to, order by order. [-]
 *
 * Source    sums of angles.
 * Checked   tests/core/rectifier/moments.test.ts
 */
export function harmonicsAt(angle: number, orders: readonly number[], cosines: Float64Array, sines: Float64Array): void {
  let c = Math.cos(angle);
  let s = Math.sin(angle);
  const c2 = c * c - s * s;
  const s2 = 2 * c * s;
  for (let n = 1, h = 0; h < orders.length; n += 2) {
    if (orders[h] === n) {
      cosines[h] = c;
      sines[h++] = s;
    }
    const turned = c * c2 - s * s2;
    s = s * c2 + c * s2;
    c = turned;
  }
}
