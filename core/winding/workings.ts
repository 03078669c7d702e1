import { minus, over, PI, plus, root, squared, times } from '../formula';
import { written } from '../notation';
import { found, type Given, type Working } from '../working';
import type { WindingSection } from './section';
import { phasePhasors, phaseAngle } from './slot-star';
import type { WindingResult } from './stage';

/** How the winding's results come about. Source of each beside it. */
export function windingWorkings(given: Given, winding: WindingSection, poles: number, placed: WindingResult): Working[] {
  const { entry, result } = given;
  const concentrated = winding.layout.kind === 'concentrated';
  return [
    {
      result: 'coils.count',
      formula: concentrated ? entry('winding.layout.coils') : entry('winding.phases'),
      method: concentrated ? 'As entered.' : 'One ring for each phase.',
      limits: 'Every coil is alike.',
      source: 'By definition.',
    },
    {
      result: 'stages.winding.seriesCoils',
      formula: over(result('coils.count'), times(entry('winding.phases'), entry('winding.parallelPaths'))),
      limits: 'A mean where coils do not share out evenly among phases and paths, which is warned of.',
      source: 'By definition.',
    },
    concentrated ? meanTurnOfCoil(given) : meanTurnOfRing(given),
    ...(placed.pegs
      ? [
          {
            result: 'coils.pegDistance',
            formula: over(
              minus(
                result('stages.winding.meanTurn'),
                times(
                  PI,
                  plus(
                    found('d_peg', 'Peg diameter', placed.pegs.diameter, 'length'),
                    found('b', 'Depth of the skein on the pegs', placed.pegs.bundleDepth, 'length', 'winding.layout.legWidth'),
                  ),
                ),
              ),
              2,
            ),
            limits: 'The skein keeps its length when it is folded on to the former.',
            source: 'Length of a belt round two equal pegs, middle of the bundle.',
          } satisfies Working,
        ]
      : []),
    factorWorking(concentrated, placed),
    unbalanceWorking(winding, placed, poles),
    {
      result: 'stages.winding.windowArea',
      formula: times(entry('winding.layout.legWidth'), entry('winding.thickness')),
      limits: 'Corners taken as square.',
      source: 'Plain geometry.',
    },
  ];
}

function meanTurnOfCoil({ entry }: Given): Working {
  const [inner, outer] = [entry('winding.layout.holeInnerRadius'), entry('winding.layout.holeOuterRadius')];
  const [narrow, wide] = [entry('winding.layout.holeInnerWidth'), entry('winding.layout.holeOuterWidth')];
  const side = root(plus(squared(minus(outer, inner)), squared(over(minus(wide, narrow), 2))));
  return {
    result: 'stages.winding.meanTurn',
    formula: plus(narrow, wide, times(2, side), times(PI, entry('winding.layout.legWidth'))),
    method: 'The way round the hole, and one full turn round its corners at half a leg’s width.',
    limits: 'Turns spread evenly over the leg, corners rounded.',
    source: 'Plain geometry.',
  };
}

function meanTurnOfRing({ entry, result }: Given): Working {
  const [inner, outer] = [entry('winding.layout.innerRadius'), entry('winding.layout.outerRadius')];
  return {
    result: 'stages.winding.meanTurn',
    law: written('ℓ_t = { 1 / w } · ∫_0^w ℓ ( x ) · d x'),
    method: 'The path of legs and arcs, as drawn, averaged over the leg’s width.',
    check: {
      says: 'Near the path through the middle of the bundle: as many legs as poles, and half a circle’s arcs at each radius.',
      left: result('stages.winding.meanTurn'),
      sign: '≈',
      right: plus(times(entry('discs.poles'), minus(outer, inner)), times(PI, plus(inner, outer))),
      unit: 'length',
      within: 0.02,
    },
    from: ['winding.layout.legWidth'],
    limits: 'Turns spread evenly over the leg; corners where leg meets arc are sharp.',
    source: 'Plain geometry.',
  };
}

function factorWorking(concentrated: boolean, { factors }: WindingResult): Working {
  return {
    result: 'stages.winding.factors.winding',
    ...(concentrated && { law: written('k_d = { | Σ_i e^jα_i | / n_c } , k_p = sin { π · p / Q }') }),
    method: concentrated
      ? 'The coils of a phase as phasors of length one at their electrical angles α, over their number.'
      : 'Legs stand a full pole pitch apart and all add up.',
    formula: times(
      found('k_d', 'Distribution factor', factors.distribution, 'ratio'),
      found('k_p', 'Pitch factor', factors.pitch, 'ratio'),
    ),
    from: concentrated ? ['winding.layout.coils', 'discs.poles', 'winding.phases'] : ['discs.poles', 'winding.phases'],
    limits: 'Beside the volts, not in them: those are integrated over the real coil.',
    source: 'Pyrhönen, Jokinen & Hrabovcová 2008, Design of Rotating Electrical Machines, ch. 2 (from memory).',
  };
}

/** Each phase's coils added as phasors and turned back by where the phase should stand; then all should be alike. */
function unbalanceWorking({ phases }: WindingSection, { coils }: WindingResult, poles: number): Working {
  const star = coils.map(({ phase, direction, angle }) => ({
    phase,
    direction,
    angle: (angle * poles) / 2 + (direction === 1 ? 0 : Math.PI),
  }));
  const turnedBack = phasePhasors(star, phases).map(({ size, angle }, j) => {
    const off = angle - phaseAngle(j + 1, phases);
    return { x: size * Math.cos(off), y: size * Math.sin(off) };
  });
  const mean = (key: 'x' | 'y') => turnedBack.reduce((sum, phasor) => sum + phasor[key], 0) / phases;
  const [x, y] = [mean('x'), mean('y')];
  const departure = Math.max(...turnedBack.map((phasor) => Math.hypot(phasor.x - x, phasor.y - y)));
  return {
    result: 'stages.winding.unbalance',
    law: written('Z = { 1 / m } · Σ_j Z_j , ΔZ = max_j | Z_j − Z |'),
    method: 'The coils of each phase added as phasors of length one, each phase turned back by the angle at which it should stand.',
    formula: over(
      found('ΔZ', 'Greatest departure of a phase, in coils', departure, 'ratio'),
      found('Z', 'Mean of all phases, in coils', Math.hypot(x, y) || 1, 'ratio', 'coils.count'),
    ),
    from: ['discs.poles', 'winding.phases'],
    limits: 'For the fundamental, all coils alike.',
    source: 'Definition of a symmetric system; star of slots.',
  };
}
