import { Simulation } from 'eecircuit-engine';
import { solve } from '../../core/index';
import { plantOf } from '../../core/chain/plant';
import { netlist } from '../../core/rectifier/netlist';
import { steadyState, type Source } from '../../core/rectifier/steady-state';
import { demo } from './demo';

const design = demo('hill-cabin');
const { stages, rated } = solve(design);
const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
const source = plant.sourceAt(rated.coilTemperature);
const speed = (rated.rpm * 2 * Math.PI) / 60;
if (design.load.kind !== 'battery') throw new Error('the demo was one with a battery');
const dc = { emf: design.load.voltage, resistance: design.load.resistance + plant.dcCableResistance };

/** Without the harmonics that our side leaves out as well: less for the simulator to do. */
function audible({ orders, phaseEmf, ...rest }: Source): Source {
  const size = ({ cos, sin }: Source['phaseEmf'][number], h: number) => Math.hypot(cos[h], sin[h]);
  const heard = orders.map((_, h) => h).filter((h) => phaseEmf.some((emf) => size(emf, h) > 1e-4 * size(emf, 0)));
  const pick = (values: number[]) => heard.map((h) => values[h]);
  return { ...rest, orders: pick(orders), phaseEmf: phaseEmf.map(({ cos, sin }) => ({ cos: pick(cos), sin: pick(sin) })) };
}

/** The netlist's own analysis is a generous one; this is a lean one that still comes to 0.1 %: the machine settles within its first period. */
const STEPS = 300;
const PERIODS = 2;
const period = (2 * Math.PI) / (source.polePairs * speed);
const text = netlist(audible(source), plant.bridge, dc, speed, 'bench');
const timed = (steps: number, periods: number) =>
  text.replace(/^\.tran.*$/m, `.tran ${period / steps} ${periods * period} ${(periods - 1) * period} ${period / steps}`);

const simulator = new Simulation();
await simulator.start();

/** Mean direct current over the last period. [A] */
async function simulated(netlistText: string): Promise<number> {
  simulator.setNetList(netlistText);
  const { data } = await simulator.runSim();
  const column = (name: string) => data.find((each) => each.name.toLowerCase() === name)!.values as number[];
  const [time, amps] = [column('time'), column('i(vload)')];
  let sum = 0;
  for (let i = 1; i < time.length; i++) sum += ((amps[i] + amps[i - 1]) / 2) * (time[i] - time[i - 1]);
  return sum / (time.at(-1)! - time[0]);
}

const exact = await simulated(timed(8000, 3));
const off = (amps: number) => `${amps.toFixed(3)} A, ${(100 * Math.abs(amps / exact - 1)).toFixed(3)} % off the simulator's own limit`;

export default [
  {
    name: 'one steady state, hill-cabin at rated',
    run: () => steadyState(source, plant.bridge, dc, speed),
    calls: 100,
    note: () => off(steadyState(source, plant.bridge, dc, speed).dcAmps),
  },
  {
    name: `the same in a circuit simulator (WASM), ${STEPS} steps a period`,
    run: () => simulated(timed(STEPS, PERIODS)),
    against: 'one steady state, hill-cabin at rated',
    note: async () => off(await simulated(timed(STEPS, PERIODS))),
  },
];
