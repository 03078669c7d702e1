import { Simulation } from 'eecircuit-engine';
import { expect } from 'vitest';

/** Live reference: ngspice in WASM (eecircuit-engine), the same threshold-and-slope diode on both sides. See spice.source.md. */
export const simulator = new Simulation();

export interface Measured {
  dcAmps: number;
  dcSquare: number;
  /** Of each phase. [A²] */
  phaseSquares: number[];
  /** Over all diodes together. [A, A²] */
  diodeAmps: number;
  diodeSquare: number;
}

/** Means over the printed periods, trapezoid over the simulator's own steps. */
export async function simulated(text: string, phases: number): Promise<Measured> {
  simulator.setNetList(text);
  const result = await simulator.runSim();
  expect(simulator.getError().filter((line) => /error/i.test(line))).toEqual([]);
  const column = (name: string) => {
    const found = result.data.find((d) => d.name.toLowerCase() === name);
    if (!found) throw new Error(`the simulator printed no ${name}: ${result.variableNames.join(' ')}`);
    return found.values as number[];
  };
  const time = column('time');
  const mean = (values: number[], f: (x: number) => number) => {
    let sum = 0;
    for (let i = 1; i < time.length; i++) sum += ((f(values[i]) + f(values[i - 1])) / 2) * (time[i] - time[i - 1]);
    return sum / (time[time.length - 1] - time[0]);
  };
  const direct = column('i(vload)');
  const square = (x: number) => x * x;
  const diodes = result.data.filter(({ name }) => /^i\(vt/i.test(name)).map(({ values }) => values as number[]);
  const overDiodes = (f: (x: number) => number) => diodes.reduce((sum, values) => sum + mean(values, f), 0);
  expect(diodes.length).toBeGreaterThanOrEqual(4);
  return {
    dcAmps: mean(direct, (x) => x),
    dcSquare: mean(direct, square),
    phaseSquares: Array.from({ length: phases }, (_, k) => mean(column(`i(v${k + 1}a)`), square)),
    diodeAmps: overDiodes((x) => x),
    diodeSquare: overDiodes(square),
  };
}
