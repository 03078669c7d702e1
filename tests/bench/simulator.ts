import { Simulation } from 'eecircuit-engine';
import { netlist } from '../../core/rectifier/netlist';
import type { Source } from '../../core/rectifier/steady-state';

type Bridge = Parameters<typeof netlist>[1];
type Load = Parameters<typeof netlist>[2];

/** Without the harmonics that our side leaves out as well: less for the simulator to do. */
function audible({ orders, phaseEmf, ...rest }: Source): Source {
  const size = ({ cos, sin }: Source['phaseEmf'][number], h: number) => Math.hypot(cos[h], sin[h]);
  const heard = orders.map((_, h) => h).filter((h) => phaseEmf.some((emf) => size(emf, h) > 1e-4 * size(emf, 0)));
  const pick = (values: number[]) => heard.map((h) => values[h]);
  return { ...rest, orders: pick(orders), phaseEmf: phaseEmf.map(({ cos, sin }) => ({ cos: pick(cos), sin: pick(sin) })) };
}

/** The netlist's own analysis is a generous one; this is a lean one that still comes to 0.1 %: the machine settles within its first period. */
export const STEPS = 300;
const PERIODS = 2;

const simulator = new Simulation();
await simulator.start();

/** Mean direct current over the last period, from a general circuit simulator. [A] */
export async function simulated(
  source: Source,
  bridge: Bridge,
  load: Load,
  speed: number,
  steps = STEPS,
  periods = PERIODS,
): Promise<number> {
  const period = (2 * Math.PI) / (source.polePairs * speed);
  const analysis = `.tran ${period / steps} ${periods * period} ${(periods - 1) * period} ${period / steps}`;
  simulator.setNetList(netlist(audible(source), bridge, load, speed, 'bench').replace(/^\.tran.*$/m, analysis));
  const { data } = await simulator.runSim();
  const column = (name: string) => data.find((each) => each.name.toLowerCase() === name)!.values as number[];
  const [time, amps] = [column('time'), column('i(vload)')];
  let sum = 0;
  for (let i = 1; i < time.length; i++) sum += ((amps[i] + amps[i - 1]) / 2) * (time[i] - time[i - 1]);
  return sum / (time.at(-1)! - time[0]);
}
