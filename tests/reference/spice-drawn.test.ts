import { beforeAll, expect, test } from 'vitest';
import { netlist } from '../../core/rectifier/netlist';
import { steadyState, type Bridge, type DcSide, type Source } from '../../core/rectifier/steady-state';
import { createRandom } from '../../core/numeric/random';
import { balancedSource } from '../core/rectifier/source';
import { size } from '../electron/size';
import { held } from './held';
import { simulated, simulator } from './simulator';

// Machines of every connection, one to six phases, drawn at random, run unchanged. See spice.source.md.
beforeAll(() => simulator.start(), 60_000);

const COUNT = size(4, 300);
const holdAmps = held(`direct current of ${COUNT} machines in the simulator`, 0.005);
const holdCopper = held('their copper loss', 0.01);
const holdDiodes = held('their diode loss', 0.01);
/** What leaks past the netlist's diodes, and the steepness of its junctions, show beneath this. [A] */
const LEAST = 0.1;

const random = createRandom(41);
const between = (low: number, high: number) => low + (high - low) * random.uniform();
const spread = (low: number, high: number) => low * (high / low) ** random.uniform();
const oneOf = <T>(list: readonly T[]) => list[Math.floor(list.length * random.uniform())];

interface Machine {
  source: Source;
  bridge: Bridge;
  dc: DcSide;
  speed: number;
}

function drawnMachine(): Machine {
  const connection = oneOf(['star', 'delta', 'separate', 'separate'] as const);
  const phases = connection === 'separate' ? oneOf([1, 2, 3, 4, 5, 6]) : oneOf([3, 4, 5, 6]);
  const isOne = connection !== 'separate' || phases === 1;
  const arrangement = isOne ? 'bridge' : oneOf(['bridges-in-parallel', 'bridges-in-series'] as const);
  const source = balancedSource(connection, phases, {
    peak: 0.1,
    inductance: spread(5e-5, 5e-3),
    resistance: spread(0.05, 1),
    line: oneOf([0, spread(0.03, 0.3)]),
    shares: { 1: 1, 3: oneOf([0, between(0, 0.1)]) },
  });
  // Turned as fast as makes the peak between its terminals a little to twice the battery's volts.
  const volts = arrangement === 'bridges-in-series' ? 12 * phases : 24;
  const terminals = connection === 'star' ? 1.7 : 1;
  const alone = arrangement === 'bridges-in-series' ? 20 : 24;
  return {
    source,
    bridge: { arrangement, threshold: 0.7, slope: spread(0.003, 0.05) },
    dc: { emf: volts, resistance: spread(0.02, 0.5) },
    speed: (alone / 0.1 / terminals) * between(1.1, 2.1),
  };
}

test.each(Array.from({ length: COUNT }, drawnMachine))(
  'machine %#: 0.5 % on direct current, 1 % on losses',
  { timeout: 60_000 },
  async ({ source, bridge, dc, speed }) => {
    const ours = steadyState(source, bridge, dc, speed);
    const theirs = await simulated(netlist(source, bridge, dc, speed, 'drawn'), source.phaseEmf.length);
    if (ours.dcAmps < LEAST) return expect(theirs.dcAmps).toBeLessThan(1.1 * LEAST);
    holdAmps(Math.abs(ours.dcAmps / theirs.dcAmps - 1));
    holdCopper(Math.abs(ours.copperLoss / (source.resistance * theirs.phaseSquares.reduce((sum, x) => sum + x, 0)) - 1));
    holdDiodes(Math.abs(ours.diodeLoss / (bridge.threshold * theirs.diodeAmps + bridge.slope * theirs.diodeSquare) - 1));
  },
);
