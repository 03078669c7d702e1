import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Block } from './document';
import { nb } from './figures';
import { junctions, joinWords, phaseLetter, STAR_POINT } from './joins';

/** Every coil with what its two ends join, and every terminal with what it gathers. */
export function connectionBlocks(design: Design, results: Results): Block[] {
  const { phases, connection } = design.winding;
  const { coils } = results.stages.winding;
  const nodes = junctions(coils, phases, connection);
  return [
    {
      kind: 'text',
      text: 'Every coil is wound and laid alike: counter-clockwise from start to finish, seen from above. ↺ the current enters at the start; ↻ the coil is joined the other way round and the current enters at the finish. Tick each join when it is soldered.',
    },
    {
      kind: 'table',
      columns: [
        { head: 'Coil', share: 0.1, align: 'right' },
        { head: 'Phase', share: 0.11 },
        { head: 'Sense', share: 0.11 },
        { head: 'Start joins', share: 0.26 },
        { head: 'done', share: 0.08, box: 'tick' },
        { head: 'Finish joins', share: 0.26 },
        { head: 'done', share: 0.08, box: 'tick' },
      ],
      rows: coils.map(({ coil, phase, direction }) => [
        String(coil),
        phaseLetter(phase),
        direction === 1 ? '↺' : '↻',
        joinWords({ coil, end: 'start' }, nodes),
        '',
        joinWords({ coil, end: 'finish' }, nodes),
        '',
      ]),
    },
    {
      kind: 'table',
      columns: [
        { head: 'Terminal', share: 0.22 },
        { head: 'gathers', share: 0.7 },
        { head: 'done', share: 0.08, box: 'tick' },
      ],
      rows: nodes
        .filter(({ kind }) => kind !== 'joint')
        .map(({ name, ends }) => [
          name === STAR_POINT ? 'Star point' : name,
          ends.map((e) => `${e.end}${nb}of${nb}${e.coil}`).join(', '),
          '',
        ]),
    },
  ];
}
