import type { Results } from '../chain/results';
import { METALS } from '../constants';
import type { Design } from '../design/schema';
import type { Reel } from '../design/shelf';
import type { Block } from './document';
import { bareMm, celsius, kilograms, many, metres, squareMm, wireMm } from './figures';
import { effectiveConnection } from './joins';
import { TAIL } from './winding-steps';

/** Bought over what is cut, for joints and a spoilt coil. Common practice. [-] */
export const ALLOWANCE = 0.05;

/** Length of wire on a reel, its covering counted as metal. [m] */
export function reelLength(reel: Reel): number {
  const section = (Math.PI * reel.conductorDiameter ** 2) / 4;
  return reel.mass / (METALS[reel.metal].density * section);
}

/** Wire, magnets, diodes and cable: what, and how much of it. */
export function shoppingRows(design: Design, results: Results): [item: string, what: string][] {
  const { winding, discs, magnets, cable } = design;
  const { wire } = winding;
  const { wireLength, wireMass, count } = results.coils;
  const tails = 2 * TAIL * count * wire.inHand;
  const needed = (wireLength + tails) * (1 + ALLOWANCE);
  const discsWithMagnets = discs.arrangement === 'facing-pair' ? 2 : 1;
  const single = effectiveConnection(winding.connection, winding.phases) === 'separate';
  const cores = cable.side === 'dc' ? 2 : single ? 2 * winding.phases : winding.phases;
  return [
    [
      'Winding wire',
      `${wire.metal}, ${wireMm(wire.conductorDiameter)} bare, ${wireMm(wire.overallDiameter)} over the covering, class ${celsius(wire.thermalClass)}`,
    ],
    [
      'to buy',
      `${metres(needed)}, ${kilograms((wireMass * needed) / wireLength)}: ${metres(wireLength)} in coils and leads, ${metres(tails)} of ends to join by, and ${ALLOWANCE * 100} % over`,
    ],
    ...shelfRows(design, needed),
    ['Magnets', `${discs.poles * discsWithMagnets}${magnets.grade ? ` of grade ${magnets.grade}` : ''}, ${magnetWords(magnets.shape)}`],
    ['Diodes', many((single ? 4 : 2) * winding.phases, 'diode')],
    [
      'Cable',
      `${metres(cable.length)} of ${cores} × ${squareMm(cable.section)} ${cable.metal}, ${cable.side === 'dc' ? 'rectifier to load' : 'generator to rectifier'}`,
    ],
  ];
}

export const shoppingBlocks = (design: Design, results: Results): Block[] => [{ kind: 'facts', rows: shoppingRows(design, results) }];

function shelfRows({ shelf = [], winding: { wire } }: Design, needed: number): [string, string][] {
  return shelf
    .filter((reel) => reel.metal === wire.metal && Math.abs(reel.conductorDiameter / wire.conductorDiameter - 1) < 0.005)
    .map((reel) => {
      const over = reelLength(reel) - needed;
      return [
        `on the shelf: ${reel.label}`,
        `${metres(reelLength(reel))}, ${over >= 0 ? `enough, ${metres(over)} left` : `short by ${metres(-over)}`}`,
      ];
    });
}

export function magnetWords(shape: Design['magnets']['shape']): string {
  switch (shape.kind) {
    case 'block':
      return `blocks ${bareMm(shape.radial)} × ${bareMm(shape.tangential)} × ${bareMm(shape.axial)} mm`;
    case 'cylinder':
      return `round, ∅ ${bareMm(shape.diameter)} × ${bareMm(shape.axial)} mm`;
    case 'sector':
      return `sectors of ${Number(((shape.span * 180) / Math.PI).toFixed(1))}°, radius ${bareMm(shape.innerRadius)} to ${bareMm(shape.outerRadius)}, ${bareMm(shape.axial)} mm thick`;
  }
}
