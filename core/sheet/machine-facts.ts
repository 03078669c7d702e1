import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { many, mm, teslas } from './figures';
import { magnetWords } from './shopping';

const arrangements = {
  'facing-pair': 'two discs facing',
  single: 'one disc',
  'single-with-return': 'one disc and a return plate',
};
const connections = { star: 'star', delta: 'delta', separate: 'each on its own bridge' };

/** The machine in a line. */
export function machineLine({ discs, winding, magnets }: Design, { coils }: Results): string {
  const { layout } = winding;
  const wound = layout.kind === 'concentrated' ? many(coils.count, 'coil') : many(coils.count, 'serpentine ring');
  const joined = winding.phases === 1 ? '1 phase' : `${winding.phases} phases, ${connections[winding.connection]}`;
  return `${discs.poles} poles, ${arrangements[discs.arrangement]}, ${magnetWords(magnets.shape)}; ${wound} of ${many(winding.turns, 'turn')}, ${joined}.`;
}

/** Magnets and gap as they are built. */
export function machineFacts({ discs, magnets }: Design, { gap }: Results): [string, string][] {
  return [
    ['Magnets', `${discs.poles} on a disc, ${magnetWords(magnets.shape)}${magnets.grade ? `, ${magnets.grade}` : ''}`],
    ['Pitch circle', `∅ ${mm(2 * discs.pitchRadius)}, ${Number((360 / discs.poles).toFixed(3))}° from magnet to magnet`],
    gapFact(discs.arrangement, gap.length),
    ['Field in the middle', `${teslas(gap.peak)} over a magnet’s centre`],
  ];
}

function gapFact(arrangement: Design['discs']['arrangement'], length: number): [string, string] {
  switch (arrangement) {
    case 'facing-pair':
      return ['Gap, magnet to magnet', mm(length)];
    case 'single-with-return':
      return ['Gap, magnet to plate', mm(length)];
    case 'single':
      return ['Magnet to the middle', `${mm(length / 2)} from its face to the middle of the copper`];
  }
}
