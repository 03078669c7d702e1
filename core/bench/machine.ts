import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { PhaseEmf } from '../emf/stage';
import { harmonicPeak } from '../emf/waveform';
import { gapAdmittance, layerPotentials } from '../field/layers';
import { cableResistance } from '../rectifier/cable';
import type { Bridge, Source } from '../rectifier/steady-state';
import { temperatureFactor } from '../wire/resistance';
import { singleMagnetLinkage } from './single-magnet';

/** One coil as it was really wound and joined. */
export interface BenchCoil {
  /** As wound, over the shaft's speed; orders of the machine. [V·s/rad] */
  emf: PhaseEmf;
  /** [Ω] */
  resistance20: number;
  phase: number;
  path: number;
  direction: 1 | -1;
  /** Of the coil's middle over the mid-plane. [m] */
  height: number;
  isOpen: boolean;
}

/** A diode that does not conduct: of a phase's beginning (or its end, where that has diodes of its own), to the plus or the minus rail. */
export interface DeadDiode {
  phase: number;
  end: 'begin' | 'end';
  rail: 'plus' | 'minus';
}

/** A machine on the bench, as planned or with a fault: all that its readings follow from. */
export interface BenchMachine {
  polePairs: number;
  phases: number;
  connection: 'star' | 'delta' | 'separate';
  /** Orders of the EMFs, counted by the turn of the shaft. */
  orders: readonly number[];
  coils: readonly BenchCoil[];
  /** Of each phase. [Ω] */
  leadResistance20: number;
  /** Resistance at a temperature over that at 20 °C. */
  warm: (temperature: number) => number;
  /** Phases joined finish for start. */
  swapped: readonly number[];
  dead: readonly DeadDiode[];
  bridge: Bridge;
  lineResistance: number;
  dcCableResistance: number;
  /** [°C] */
  roomTemperature: number;
  plan: Plan;
}

/** What of the design the faults of discs, gap and wire need. */
export interface Plan {
  arrangement: Design['discs']['arrangement'];
  poles: number;
  gapLength: number;
  /** Factor on each harmonic when the gap is wider by so many metres. */
  widened: (more: number) => number[];
  /** Share of the disc above in the field at a height, by harmonic. */
  upperShare: (height: number) => number[];
  /** Linkage of a coil's turn with one magnet place alone, φ_k; empty where the coils cannot tell one from another. [Wb] */
  singleMagnet: () => readonly number[];
  turns: number;
  coilAngles: readonly number[];
  /** The healthy machine for the full rectifier with its inductances. */
  source: (temperature: number) => Source;
}

/** Harmonics weaker than this share of a coil's fundamental move no reading. */
const HEARD = 2e-4;

/** The machine of a design, as planned. */
export function benchMachine(design: Design, { stages, gap }: Results): BenchMachine {
  const { discs, winding, surroundings, rectifier } = design;
  const { emf, wire, winding: placed } = stages;
  const { parallelPaths, phases, turns, layout } = winding;
  const { metal } = winding.wire;
  const cable = cableResistance(design.cable, surroundings.airTemperature);
  const connection = phases === 1 ? 'separate' : winding.connection;
  const heard = emf.orders.map((_, h) => h).filter((h) => emf.coilEmf.some((e) => harmonicPeak(e, h) > HEARD * harmonicPeak(e, 0)));
  const pick = (list: readonly number[]) => heard.map((h) => list[h]);
  const harmonics = pick(emf.orders);
  const warm = (temperature: number) => temperatureFactor(metal, temperature);
  // λ_1 of a turn, from e_1 = N p λ_1; the first coil lies on +x, where its EMF is a sine.
  const fundamental = emf.coilEmf[0].sin[0] / (turns * emf.polePairs);
  let single: readonly number[] | undefined;
  return {
    polePairs: emf.polePairs,
    phases,
    connection,
    orders: harmonics.map((n) => n * emf.polePairs),
    coils: placed.coils.map(({ phase, path, direction, height }, i) => ({
      emf: { cos: pick(emf.coilEmf[i].cos), sin: pick(emf.coilEmf[i].sin) },
      resistance20: wire.coilResistance20,
      phase,
      path,
      direction,
      height,
      isOpen: false,
    })),
    leadResistance20: Math.max(0, wire.phaseResistance20 - (wire.coilResistance20 * placed.seriesCoils) / parallelPaths),
    warm,
    swapped: [],
    dead: [],
    bridge: { arrangement: rectifier.arrangement, ...rectifier.diode },
    lineResistance: cable.acLine,
    dcCableResistance: cable.dc,
    roomTemperature: surroundings.airTemperature,
    plan: {
      arrangement: discs.arrangement,
      poles: discs.poles,
      gapLength: gap.length,
      widened: widening(design, gap.length, harmonics),
      upperShare: sharing(design, gap.length, harmonics),
      singleMagnet: () => (single ??= layout.kind === 'concentrated' ? singleMagnetLinkage(design, gap.length, fundamental) : []),
      turns,
      coilAngles: placed.coils.map(({ angle }) => angle),
      source: (temperature) => ({
        connection: winding.connection,
        polePairs: emf.polePairs,
        orders: emf.orders,
        phaseEmf: emf.phaseEmf,
        resistance: wire.phaseResistance20 * warm(temperature),
        inductance: emf.inductance,
        lineResistance: cable.acLine,
      }),
    },
  };
}

/** Each harmonic of the unrolled machine at the winding's middle with a wider gap, over that with the planned one. field/layers.ts */
function widening({ magnets, discs }: Design, gapLength: number, orders: readonly number[]): Plan['widened'] {
  const at = (order: number, gap: number) => {
    const wave = (order * discs.poles) / 2 / discs.pitchRadius;
    const { front } = layerPotentials({
      wave,
      height: magnets.shape.axial,
      recoilPermeability: magnets.recoilPermeability,
      back: discs.backing.kind === 'steel' ? Infinity : 1,
      front: gapAdmittance(discs.arrangement, wave, gap),
    });
    return front * gapAdmittance(discs.arrangement, wave, gap, gap / 2);
  };
  return (more) => orders.map((n) => at(n, gapLength + more) / at(n, gapLength));
}

/**
 * How two facing discs share the field: each one's fades from its own magnets, and with steel behind the other it is mirrored there.
 *
 *   upper : lower = cosh k(a + z) : cosh k(a − z), a = g/2 + h with steel, else e^kz : e^−kz
 */
function sharing({ magnets, discs }: Design, gapLength: number, orders: readonly number[]): Plan['upperShare'] {
  const depth = gapLength / 2 + magnets.shape.axial;
  return (height) =>
    orders.map((n) => {
      const wave = (n * discs.poles) / 2 / discs.pitchRadius;
      if (discs.backing.kind !== 'steel') return 1 / (1 + Math.exp(-2 * wave * height));
      const ratio =
        (Math.exp(-2 * wave * height) * (1 + Math.exp(-2 * wave * (depth - height)))) / (1 + Math.exp(-2 * wave * (depth + height)));
      return 1 / (1 + ratio);
    });
}
