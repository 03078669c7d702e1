import { NOTHING } from './ends';
import type { Bridge, DcSide, Source } from './steady-state';
import type { Guard, Topology } from './topology';
import { addOuter, diagonal, difference, scaled, unit, zeros } from '../numeric/vectors';

/**
 * Bridges in series carry one direct current I = max|i|: φ = (E + 2m Vt) I + (R_dc + m r) I²/2 + r Σi²/2. A phase whose |i| is less than I is
 * passed by through its own four diodes. An element is a phase; its sign says that it carries all of I, 0 that it is passed by, and a leading
 * element more than the phases says whether anything flows.
 *
 * Source    as `Topology`: piecewise linear circuit with a convex potential.
 */
export function seriesBridges(source: Source, bridge: Bridge, dc: DcSide): Topology {
  const m = source.phaseEmf.length;
  const emf = dc.emf + 2 * m * bridge.threshold;
  const resistance = dc.resistance + m * bridge.slope;
  const own = source.resistance + 2 * source.lineResistance + bridge.slope;

  /** Any set of directions may be the one that wins. */
  const fromRest = (): Guard[] =>
    Array.from({ length: 2 ** m }, (_, bits) => {
      const signs = zeros(m).map((_, k) => ((bits >> k) & 1 ? -1 : 1));
      return { offset: emf, currents: zeros(m), residual: scaled(signs, -1), next: [1, ...signs] };
    });
  const flowing = (signs: readonly number[], c: number[]): Guard[] => {
    const members = signs.filter((sign) => sign !== 0).length;
    const next = (k: number, sign: number) => [1, ...signs.map((old, j) => (j === k ? sign : old))];
    const stops: Guard = { offset: 0, currents: c, residual: zeros(m), next: zeros(m + 1) };
    const own = signs.flatMap((sign, k): Guard[] => {
      if (!sign)
        return [1, -1].map((side) => ({ offset: 0, currents: difference(c, unit(m, k, side)), residual: zeros(m), next: next(k, side) }));
      if (members === 1) return [];
      return [{ offset: emf / members, currents: scaled(c, resistance / members), residual: unit(m, k, sign), next: next(k, 0) }];
    });
    return [stops, ...own];
  };
  return {
    elements: diagonal(m, 1),
    lines: 2,
    diodes: { threshold: 2 * m * bridge.threshold, slope: bridge.slope, dcSlope: m * bridge.slope },
    modeOf: (currents) => {
      const i = Array.from(currents);
      const most = Math.max(...i.map(Math.abs));
      return most < 1e-12 ? zeros(m + 1) : [1, ...i.map((each) => (Math.abs(each) > most * (1 - NOTHING) ? Math.sign(each) : 0))];
    },
    space: (mode) => {
      const signs = mode.slice(1);
      const members = signs.filter((sign) => sign !== 0).length;
      const c = signs.map((sign) => (mode[0] ? sign / members : 0));
      const q = diagonal(m, own);
      addOuter(q, c, resistance);
      const basis = mode[0] ? [signs, ...signs.flatMap((sign, k) => (sign ? [] : [unit(m, k)]))] : [];
      return { basis, resistance: q, drop: scaled(c, emf), dc: c, guards: mode[0] ? flowing(signs, c) : fromRest() };
    },
  };
}
