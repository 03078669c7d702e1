const TURN = 2 * Math.PI;
const wrapped = (angle: number) => angle - TURN * Math.round(angle / TURN);

export interface Assignment {
  /** From 1. */
  phase: number;
  direction: 1 | -1;
  /** Electrical angle of the coil's EMF, direction counted. [rad] */
  angle: number;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/**
 * Electrical angle of a phase's axis.
 *
 * @param phase   From 1. [-]
 * @param phases  m. [-]
 * @returns       2π(j − 1)/m; two phases stand at a right angle. [rad]
 *
 * Source    definition of a symmetric system of m phases.
 * Checked   tests/core/winding/slot-star.test.ts
 */
export function phaseAngle(phase: number, phases: number): number {
  return phases === 2 ? ((phase - 1) * Math.PI) / 2 : (TURN * (phase - 1)) / phases;
}

/**
 * Whether coils side by side can make a symmetric system: Q/(m·gcd(Q, p)) whole.
 *
 * @param coils      Q. [-]
 * @param polePairs  p. [-]
 * @param phases     m. [-]
 * @returns          True where every phase gets the same set of EMFs, turned. [-]
 *
 * Source    star of slots: Bianchi & Dai Prè 2006, IEE Proc. Electr. Power Appl. 153, 75 (from memory). Two phases need a multiple of four
 *           directions, for their right angle.
 * Checked   tests/reference/slot-star.test.ts
 */
export function isBalanced(coils: number, polePairs: number, phases: number): boolean {
  const directions = coils / gcd(coils, polePairs);
  if (phases === 1) return true;
  return phases === 2 ? directions % 4 === 0 : directions % phases === 0;
}

/**
 * Gives each coil a phase and a sense, from the directions of their EMFs.
 *
 * @param coils      Q. [-]
 * @param polePairs  p. [-]
 * @param phases     m. [-]
 * @returns          One assignment a coil, in order round the winding. [-]
 *
 * A coil joins the nearest phase axis or, reversed, its opposite; no phase gets more than its share. With an even number of phases the opposites are phases
 * themselves, and it can be better to reverse none: the more even of the two ways is taken.
 *
 * Source    star of slots, as `isBalanced`.
 * Checked   tests/reference/slot-star.test.ts
 */
export function slotStar(coils: number, polePairs: number, phases: number): Assignment[] {
  const reversing = dealtOut(coils, polePairs, phases, [1, -1]);
  if (phases < 3 || phases % 2 === 1) return reversing;
  const plain = dealtOut(coils, polePairs, phases, [1]);
  const badness = (star: Assignment[]) => unbalanceOf(phasePhasors(star, phases));
  return badness(plain) < badness(reversing) + 1e-9 ? plain : reversing;
}

function dealtOut(coils: number, polePairs: number, phases: number, directions: (1 | -1)[]): Assignment[] {
  const share = Math.ceil(coils / phases);
  const taken = new Array<number>(phases + 1).fill(0);
  const choices = Array.from({ length: coils }, (_, k) =>
    Array.from({ length: phases }, (_, j) => j + 1).flatMap((phase) =>
      directions.map((direction) => {
        const angle = wrapped((TURN * ((k * polePairs) % coils)) / coils + (direction === 1 ? 0 : Math.PI));
        // An angle half-way between two axes goes to the one ahead, so that ties fall the same way all round.
        return { coil: k, phase, direction, angle, off: Math.abs(wrapped(angle - phaseAngle(phase, phases)) + 1e-9) };
      }),
    ),
  );
  const assigned = new Array<Assignment>(coils);
  for (const { coil, phase, direction, angle } of choices.flat().sort((a, b) => a.off - b.off)) {
    if (assigned[coil] || taken[phase] >= share) continue;
    assigned[coil] = { phase, direction, angle };
    taken[phase]++;
  }
  return assigned;
}

/**
 * EMF of each phase as a phasor of unit coils.
 *
 * @param star    Assignments. [-]
 * @param phases  m. [-]
 * @returns       Size and angle for each phase. [-, rad]
 *
 * Source    phasor sum.
 * Checked   tests/reference/slot-star.test.ts
 */
export function phasePhasors(star: readonly Assignment[], phases: number): { size: number; angle: number }[] {
  return Array.from({ length: phases }, (_, j) => {
    const own = star.filter(({ phase }) => phase === j + 1);
    const x = own.reduce((sum, { angle }) => sum + Math.cos(angle), 0);
    const y = own.reduce((sum, { angle }) => sum + Math.sin(angle), 0);
    return { size: Math.hypot(x, y), angle: Math.atan2(y, x) };
  });
}

/**
 * How far the phases' EMFs are from equal size and even spacing.
 *
 * @param phasors  One for each phase, of `phasePhasors`. [-, rad]
 * @returns        Greatest departure of a phase from where it should be, over the mean size. [-]
 *
 * Source    definition of a symmetric system.
 * Checked   tests/core/winding/slot-star.test.ts
 */
export function unbalanceOf(phasors: readonly { size: number; angle: number }[]): number {
  const phases = phasors.length;
  // What is left of each phase once turned back on to the first one's axis.
  const back = phasors.map(({ size, angle }, j) => {
    const off = angle - phaseAngle(j + 1, phases);
    return [size * Math.cos(off), size * Math.sin(off)];
  });
  const x = back.reduce((sum, [cos]) => sum + cos, 0) / phases;
  const y = back.reduce((sum, [, sin]) => sum + sin, 0) / phases;
  return Math.max(...back.map(([cos, sin]) => Math.hypot(cos - x, sin - y))) / (Math.hypot(x, y) || 1);
}

/**
 * Textbook factors of coils side by side, each as wide as the coil pitch.
 *
 * @param coils      Q. [-]
 * @param polePairs  p. [-]
 * @param phases     m. [-]
 * @returns          Distribution, pitch, and winding factor, their product. [-]
 *
 *   pitch = sin(π p / Q),  distribution = |Σ of a phase's unit phasors| / their number
 *
 * Source    Pyrhönen, Jokinen & Hrabovcová 2008, *Design of Rotating Electrical Machines*, ch. 2 (from memory).
 * Checked   tests/reference/slot-star.test.ts
 */
export function windingFactors(coils: number, polePairs: number, phases: number): { distribution: number; pitch: number; winding: number } {
  const phasors = phasePhasors(slotStar(coils, polePairs, phases), phases);
  const distribution = phasors.reduce((sum, { size }) => sum + size, 0) / coils;
  const pitch = Math.abs(Math.sin((Math.PI * (polePairs % coils)) / coils));
  return { distribution, pitch, winding: distribution * pitch };
}

/** A winding factor below this wastes copper. Common practice, no source. */
const WORTH_WINDING = 0.8;

/**
 * Numbers of coils and poles near these that balance.
 *
 * @param coils   Q. [-]
 * @param poles   2p. [-]
 * @param phases  m. [-]
 * @returns       In words, nearest first. [-]
 *
 * Source    `isBalanced` and `windingFactors` tried over the neighbourhood.
 * Checked   tests/core/winding/slot-star.test.ts
 */
export function nearestBalanced(coils: number, poles: number, phases: number): string[] {
  const found: { text: string; far: number }[] = [];
  for (let q = Math.max(phases, coils - 6); q <= coils + 6; q++)
    for (let n = Math.max(4, poles - 4); n <= poles + 4; n += 2) {
      if (q % phases !== 0 || !isBalanced(q, n / 2, phases) || windingFactors(q, n / 2, phases).winding < WORTH_WINDING) continue;
      const far = Math.abs(q - coils) + Math.abs(n - poles);
      if (far > 0) found.push({ text: `${q} coils with ${n} poles`, far });
    }
  return found
    .sort((a, b) => a.far - b.far)
    .slice(0, 4)
    .map(({ text }) => text);
}
