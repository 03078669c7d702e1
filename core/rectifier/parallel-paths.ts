import { NOTHING, type Ends } from './ends';
import { keyOf } from './mode';
import type { Bridge, DcSide, Source } from './steady-state';
import type { Topology } from './topology';
import { addOuter, diagonal, difference, dot, scaled, unit, zeros } from '../numeric/vectors';

/** What of a mode's space is signs only: the same for every machine with such ends. */
interface Pattern {
  basis: number[][];
  /** Σ sign · row of T. */
  sense: number[];
  /** I_dc along the currents. */
  dc: number[];
  guards: GuardPattern[];
}

/** A guard whose offset is so many edges, and which rises with the drop that the direct current makes over what stands on the DC side. */
interface GuardPattern {
  edges: number;
  rises: boolean;
  currents: number[];
  residual: number[];
  next: number[];
}

const knownPatterns = new WeakMap<Ends, Map<number, Pattern>>();

function patternOf(ends: Ends, mode: readonly number[]): Pattern {
  const known = knownPatterns.get(ends) ?? new Map<number, Pattern>();
  knownPatterns.set(ends, known);
  const key = keyOf(mode);
  let found = known.get(key);
  if (!found) known.set(key, (found = newPattern(ends, mode)));
  return found;
}

/** Where less than a closed path conducts, nothing does. */
const tidied = (ends: Ends, mode: number[]) => (ends.closed && (!mode.includes(1) || !mode.includes(-1)) ? zeros(mode.length) : mode);

function newPattern(ends: Ends, mode: readonly number[]): Pattern {
  const m = mode.length;
  const sense = zeros(m);
  ends.rows.forEach((row, k) => row.forEach((x, i) => (sense[i] += mode[k] * x)));
  const voltages = ends.voltages(mode);
  const withSign = (k: number, sign: number) =>
    tidied(
      ends,
      mode.map((old, j) => (j === k ? sign : old)),
    );
  /** Two diodes turn on together when the greatest difference of potentials suffices. */
  const fromRest = (): GuardPattern[] =>
    voltages.flatMap((high, a) =>
      voltages.flatMap((low, b): GuardPattern[] =>
        a === b
          ? []
          : [{ edges: 2, rises: false, currents: zeros(m), residual: difference(low, high), next: difference(unit(m, a), unit(m, b)) }],
      ),
    );
  const flowing = (): GuardPattern[] =>
    mode.flatMap((sign, k): GuardPattern[] =>
      sign
        ? [{ edges: 0, rises: false, currents: scaled(ends.rows[k], sign), residual: zeros(m), next: withSign(k, 0) }]
        : [1, -1].map((side) => ({
            edges: 1,
            rises: true,
            currents: zeros(m),
            residual: scaled(voltages[k], -side),
            next: withSign(k, side),
          })),
    );
  return {
    basis: ends.basis(mode),
    sense,
    dc: scaled(sense, ends.share),
    guards: ends.closed && mode.every((sign) => sign === 0) ? fromRest() : flowing(),
  };
}

/**
 * Star, delta, and bridges in parallel: φ = Σ [(n Vt + s E)|u| + n r u²/2] + R_dc (s Σ|u|)²/2.
 *
 * Source    as `Topology`: piecewise linear circuit with a convex potential.
 */
export function parallelPaths(source: Source, bridge: Bridge, dc: DcSide, ends: Ends): Topology {
  const m = source.phaseEmf.length;
  const threshold = ends.diodes * bridge.threshold;
  const slope = ends.diodes * bridge.slope;
  const edge = threshold + ends.share * dc.emf;
  return {
    elements: ends.rows,
    lines: ends.lines,
    diodes: { threshold: threshold / ends.share, slope, dcSlope: 0 },
    modeOf: (currents) => {
      let most = 1e-12;
      for (let i = 0; i < m; i++) most = Math.max(most, Math.abs(currents[i]));
      const signs = ends.rows.map((row) => {
        const x = dot(row, currents);
        return Math.abs(x) > NOTHING * most ? Math.sign(x) : 0;
      });
      return tidied(ends, signs);
    },
    space: (mode) => {
      const pattern = patternOf(ends, mode);
      const resistance = diagonal(m, source.resistance);
      ends.rows.forEach((row, k) => addOuter(resistance, row, ends.lines * source.lineResistance + (mode[k] ? slope : 0)));
      addOuter(resistance, pattern.dc, dc.resistance);
      const rise = scaled(pattern.dc, ends.share * dc.resistance);
      return {
        basis: pattern.basis,
        resistance,
        drop: scaled(pattern.sense, edge),
        dc: pattern.dc,
        guards: pattern.guards.map(({ edges, rises, currents, residual, next }) => ({
          offset: edges * edge,
          currents: rises ? rise : currents,
          residual,
          next,
        })),
      };
    },
  };
}
