import type { Results } from '../chain/results';
import { solve } from '../chain/solve';
import { createStageCache, type StageCache } from '../chain/stage-cache';
import type { Design } from '../design/schema';
import { gradeNamed } from '../magnets/grades';
import { inMm, told, type Problem, type Words } from '../problem';
import { CABLE_SECTIONS, cableDrop } from '../rectifier/cable';
import { mostTurns } from '../wire/fill';
import { designOf } from './geometry';
import { designWith, discDiameter, pitchRadiusFor, type InHand } from './in-hand';

/** A problem's `where` is a path of what is in hand, as in `wire.mass`. */
export type FirstDesign = ({ ok: true } & Solved) | { ok: false; problem: Problem };

interface Solved {
  design: Design;
  results: Results;
}

// Choices of a first design: common practice, no source.
/** Magnets on one disc; there are three coils to four of them. */
const POLES = [8, 12, 16, 20, 24];
/** Copper's thickness over a magnet's. */
const THICKNESS = [0.8, 1, 1.25];
/** Discs over the wheel: larger ones stand in its wind. */
const MOST_DISC = 0.25;
/** Wheels are told to a tenth of a metre. */
const WHEELS_A_METRE = 10;
/** Winds in which charging may begin, with a wheel that until then runs free. [m/s] */
const CUT_IN = [2, 2.5, 3, 3.5];
/** The latest wind, where no more turns go in. [m/s] */
const LATEST_CUT_IN = 4.5;
const MOST_IN_HAND = 6;
/** Field in the steel from which the gap begins to lose. [T] */
const MOST_PLATE = 1.6;
const PLATES = [4, 5, 6, 8, 10, 12, 15, 20, 25].map((mm) => mm / 1000);
const LEAST_CABLE = 1.5e-6;
const CABLE_DROP = 0.05;

/**
 * A three-phase machine of separate coils between two steel discs from what is in hand: for each number of magnets and thickness of copper the turns that
 * begin to charge in a light wind, and as many wires in hand as go in and the reel has; of those that stay cool the one with the most energy in a year.
 *
 * @param blank    What every entry is that has nothing to do with what is in hand; given, so that a worker need not carry the design's schema.
 * @param onTried  Told the share of the frames that have been tried.
 */
export function firstDesign(inHand: InHand, blank: Design, onTried: (share: number) => void = () => undefined): FirstDesign {
  const { magnets, wheelDiameter } = inHand;
  const { shape, count } = magnets;
  if (!gradeNamed(magnets.grade)) return no('magnets.grade', told`“${magnets.grade}” is not a grade in the table.`);
  if (count < 2 * POLES[0]) return no('magnets.count', told`Two discs take at least ${2 * POLES[0]} magnets; ${count} are in hand.`);
  const across = discDiameter(shape, POLES[0]);
  if (across > MOST_DISC * wheelDiameter)
    return no(
      'wheelDiameter',
      told`Discs with these magnets are at least ${mm(across)} across, too much for this wheel. Take smaller magnets, or a wheel of ${metres(Math.ceil(WHEELS_A_METRE * leastWheel(shape)) / WHEELS_A_METRE)} or more.`,
    );
  const cache = createStageCache();
  const found = bestOn(inHand, blank, cache, onTried);
  if ('design' in found) return { ok: true, ...withCable(withPlates(found, cache), cache) };
  if (!found.heat) return found;
  const wheel = coolWheel(inHand, blank, cache);
  if (wheel === undefined) return found;
  return no('wheelDiameter', told`${tooHot(found.heat)} Take more or stronger magnets, or a wheel of ${metres(wheel)} or less.`);
}

/** The machine with the most energy in a year of those that stay cool; or why there is none. */
function bestOn(inHand: InHand, blank: Design, cache: StageCache, onTried: (share: number) => void = () => undefined): Solved | Refusal {
  const { wheelDiameter } = inHand;
  const { shape, count } = inHand.magnets;
  const base = designWith(blank, inHand);
  let best: Solved | undefined;
  let refusal: Refusal | undefined;
  const frames = POLES.filter((poles) => 2 * poles <= count && discDiameter(shape, poles) <= MOST_DISC * wheelDiameter).flatMap((poles) =>
    THICKNESS.map((share) => ({ poles, thickness: Math.round(1000 * share * shape.axial) / 1000 })),
  );
  for (const [i, { poles, thickness }] of frames.entries()) {
    for (const found of woundOn(base, inHand, poles, thickness, cache))
      if ('problem' in found) refusal = refusal && coolness(refusal) > coolness(found) ? refusal : found;
      else if (!best || found.results.year.energy > best.results.year.energy) best = found;
    onTried((i + 1) / frames.length);
  }
  return best ?? refusal ?? no('wire', told`Nothing can be wound of this wire.`);
}

/**
 * The largest wheel, to a tenth of a metre, whose machine stays cool where the one in hand makes every machine too hot; undefined if none does. [m]
 * Found by halving: a smaller wheel is taken to heat the coils less.
 */
function coolWheel(inHand: InHand, blank: Design, cache: StageCache): number | undefined {
  let [low, high] = [Math.ceil(WHEELS_A_METRE * leastWheel(inHand.magnets.shape)) - 1, Math.ceil(WHEELS_A_METRE * inHand.wheelDiameter)];
  let wheel: number | undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const found = bestOn({ ...inHand, wheelDiameter: middle / WHEELS_A_METRE }, blank, cache);
    if ('problem' in found && found.heat) high = middle;
    else low = middle;
    if ('design' in found) wheel = middle / WHEELS_A_METRE;
  }
  return wheel;
}

/** Refused machines: that which comes nearest to staying cool tells most. Others have no temperature. */
const coolness = ({ heat }: Refusal) => -(heat?.temperature ?? Infinity);

/** A frame to wind: so many magnets on a disc, so thick the copper, and how the turns are put on. */
interface ToWind {
  machine: (turns: number, strands: number) => Design;
  /** Greatest number of turns that go in, by wires in hand. */
  room: (strands: number) => number;
}

/** The machines on one frame, one for each wind to begin in; or why there is none. */
function woundOn(base: Design, inHand: InHand, poles: number, thickness: number, cache: StageCache): (Solved | Refusal)[] {
  const { wire } = inHand;
  const machine = (turns: number, strands: number) => machineOf(base, inHand, poles, thickness, turns, strands);
  const { legWidth } = machine(1, 1).winding.layout;
  const room = (strands: number) => mostTurns(strands, wire.overallDiameter, legWidth, thickness);
  if (room(1) < 1)
    return [
      no(
        'wire.overallDiameter',
        told`Wire ${mm(wire.overallDiameter)} thick does not go into coils ${mm(thickness)} thick. Take thinner wire.`,
      ),
    ];
  const most = solved(machine(room(1), 1), cache);
  const { wind } = most.results.cutIn;
  if (wind === null)
    return [
      no(
        'battery.inSeries',
        told`The machine does not reach the volts of this battery. Take fewer batteries in series, or a larger wheel.`,
      ),
    ];
  // The wheel turns as fast as the wind blows, and volts go as speed and turns: so the turns go as one over the wind to begin in.
  const turnsFor = (wanted: number) => Math.max(1, Math.round((room(1) * wind) / wanted));
  if (turnsFor(LATEST_CUT_IN) > room(1))
    return [
      no(
        'wire.conductorDiameter',
        told`${turnsFor(LATEST_CUT_IN)} turns of this wire are needed in a coil, and ${room(1)} go in. Take thinner wire, or fewer batteries in series.`,
      ),
    ];
  const thatGoIn = CUT_IN.map(turnsFor).filter((turns) => turns <= room(1));
  return (thatGoIn.length ? thatGoIn : [room(1)]).map((turns) => wound({ machine, room }, turns, wire.mass, cache));
}

/** So many turns, of as many wires in hand as go in and as there is wire for. */
function wound({ machine, room }: ToWind, turns: number, mass: number, cache: StageCache): Solved | Refusal {
  let strands = Math.min(MOST_IN_HAND, Math.floor(room(1) / turns));
  let found = solved(machine(turns, strands), cache);
  while (strands > 1 && (found.results.coils.wireMass > mass || room(strands) < turns)) found = solved(machine(turns, --strands), cache);
  const { coils, rated } = found.results;
  const { wireMass } = coils;
  if (wireMass <= mass) {
    if (rated.coilTemperature <= rated.limitTemperature) return found;
    const heat = { temperature: rated.coilTemperature, limit: rated.limitTemperature };
    return { ...no('magnets.count', told`${tooHot(heat)} Take more or stronger magnets.`), heat };
  }
  return no('wire.mass', told`${kg(wireMass)} of this wire are needed, ${kg(mass)} are in hand. Take thinner wire, or more of it.`);
}

function machineOf(base: Design, { magnets, wire }: InHand, poles: number, thickness: number, turns: number, inHand: number): Design {
  const backing = { kind: 'steel' as const, thickness: PLATES.find((plate) => plate >= 0.6 * magnets.shape.axial) ?? PLATES[0] };
  const design = designOf(
    { ...base, discs: { ...base.discs, backing } },
    {
      poles,
      pitchRadius: pitchRadiusFor(magnets.shape, poles),
      thickness,
      runningClearance: base.discs.runningClearance,
      layout: 'concentrated',
      coils: (3 * poles) / 4,
      phases: 3,
      parallelPaths: 1,
      connection: 'star',
      reel: { label: '', ...wire },
      inHand,
      turns,
    },
  );
  return { ...design, winding: { ...design.winding, layout: toTenths(design.winding.layout) } };
}

/** Widths that a former can be marked out to: down to a tenth of a millimetre, so that nothing comes to touch. */
function toTenths(layout: Design['winding']['layout']): Design['winding']['layout'] {
  if (layout.kind !== 'concentrated') return layout;
  const down = (width: number) => Number((Math.floor(width * 1e4) / 1e4).toFixed(4));
  const { holeInnerWidth, holeOuterWidth, legWidth } = layout;
  return { ...layout, holeInnerWidth: down(holeInnerWidth), holeOuterWidth: down(holeOuterWidth), legWidth: down(legWidth) };
}

/** Steel just thick enough not to saturate. */
function withPlates(start: Solved, cache: StageCache): Solved {
  const { discs } = start.design;
  let found = start;
  for (const thickness of PLATES) {
    if ((found.results.gap.plate ?? 0) <= MOST_PLATE) break;
    if (discs.backing.kind !== 'steel' || thickness <= discs.backing.thickness) continue;
    found = solved({ ...start.design, discs: { ...discs, backing: { kind: 'steel', thickness } } }, cache);
  }
  return found;
}

/** The thinnest cable that eats no more than its share at rated wind. */
function withCable(start: Solved, cache: StageCache): Solved {
  let found = start;
  for (const section of CABLE_SECTIONS.filter((each) => each >= LEAST_CABLE)) {
    found = solved({ ...start.design, cable: { ...start.design.cable, section } }, cache);
    const { curve, rated } = found.results;
    const at = curve.find(({ rpm }) => rpm >= rated.rpm) ?? curve[curve.length - 1];
    if (cableDrop(at.cableLoss, at.dcWatts) <= CABLE_DROP) break;
  }
  return found;
}

const solved = (design: Design, cache: StageCache): Solved => ({ design, results: solve(design, cache) });

type Refusal = Extract<FirstDesign, { ok: false }> & { heat?: Heat };

/** Of coils that get hotter than they stand, at rated wind. [°C] */
interface Heat {
  temperature: number;
  limit: number;
}

const tooHot = ({ temperature, limit }: Heat): Words =>
  told`The coils would reach ${celsius(temperature)} at rated wind, more than the ${celsius(limit)} they stand.`;
const leastWheel = (shape: InHand['magnets']['shape']) => discDiameter(shape, POLES[0]) / MOST_DISC;
const no = (where: string, words: Words): Refusal => ({ ok: false, problem: { where, ...words } });
const mm = (metres: number) => inMm(metres, String(Number((1000 * metres).toPrecision(3))));
const metres = (value: number) => ({ value, unit: 'longLength' as const, text: `${Number(value.toPrecision(3))} m` });
const celsius = (value: number) => ({ value, unit: 'temperature' as const, text: `${value.toFixed(0)} °C` });
const kg = (mass: number) => `${mass.toFixed(1)} kg`;
