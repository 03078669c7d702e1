import { Simulation } from 'eecircuit-engine';
import { netlist } from '../../core/rectifier/netlist';
import { steadyState, type Bridge } from '../../core/rectifier/steady-state';
import { balancedSource } from '../core/rectifier/source';

const source = balancedSource('star', 3, { peak: 0.1, shares: { 1: 1, 3: 0.08, 5: 0.02 } });
const bridge: Bridge = { arrangement: 'bridge', threshold: 0.7, slope: 0.02 };
const dc = { emf: 24, resistance: 0.05 };
const simulator = new Simulation();
await simulator.start();
const text = netlist(source, bridge, dc, 300, 'bench');

export default [
  { name: 'one steady state, three-phase star', run: () => steadyState(source, bridge, dc, 300) },
  {
    name: 'the same case in a circuit simulator (WASM)',
    run: async () => {
      simulator.setNetList(text);
      await simulator.runSim();
    },
    against: 'one steady state, three-phase star',
  },
];
