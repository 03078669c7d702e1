import { steadyState } from '../../core/rectifier/steady-state';
import { bridge, load, ratedSpeed, source } from './battery-machine';
import { simulated, STEPS } from './simulator';

const exact = await simulated(source, bridge, load, ratedSpeed, 8000, 3);
const off = (amps: number) => `${amps.toFixed(3)} A, ${(100 * Math.abs(amps / exact - 1)).toFixed(3)} % off the simulator's own limit`;

export default [
  {
    name: 'one steady state, hill-cabin at rated',
    run: () => steadyState(source, bridge, load, ratedSpeed),
    calls: 100,
    note: () => off(steadyState(source, bridge, load, ratedSpeed).dcAmps),
  },
  {
    name: `the same in a circuit simulator (WASM), ${STEPS} steps a period`,
    run: () => simulated(source, bridge, load, ratedSpeed),
    against: 'one steady state, hill-cabin at rated',
    note: async () => off(await simulated(source, bridge, load, ratedSpeed)),
  },
];
