import Box from '@mui/material/Box';
import { memo, useCallback, useDeferredValue, useMemo, useState } from 'react';
import { objectivesOf, priceOf, reelOf, searchSize, type Design, type Found } from '../../../core';
import { Section } from '../../parts/section';
import { settleEntry, useDesign } from '../../state/design';
import type { FigureProps } from '../worksheet';
import { AimsTable } from './aims-table';
import { ChoiceRow } from './choice-row';
import { FrontChart, isBrushed, type Brush } from './front-chart';
import { FrontTable } from './front-table';
import { isOutdated, openMachine } from './open-machine';
import { editSearch, searchOf, type Search } from './search-entries';
import { SpaceTable } from './space-table';
import { startSearch, stop, useWork, type SearchWork } from './work';
import { WorkBar } from './work-bar';

const count = (n: number) => n.toLocaleString('en');

/** What the search may vary and must keep to. */
export function SearchEntries() {
  const design = useDesign((s) => s.design);
  const search = searchOf(design);
  const { layout } = design.winding;
  const choose = (change: Partial<Search>) => {
    editSearch((now) => ({ ...now, ...change }));
    settleEntry();
  };
  const own = layout.kind === 'serpentine' ? layout.placement : layout.kind;
  return (
    <Section title="What to look for">
      <Box
        sx={{ display: 'grid', gridTemplateColumns: 'repeat(auto-fit, minmax(min(440px, 100%), 1fr))', columnGap: 4, alignItems: 'start' }}
      >
        <SpaceTable design={design} />
        <div>
          <AimsTable design={design} />
          <ChoiceRow
            label="Connections to try"
            choices={['star', 'delta', 'separate']}
            chosen={search.connections ?? [design.winding.connection]}
            onChange={(connections) => choose({ connections: connections as Search['connections'] })}
          />
          <ChoiceRow
            label="Layouts to try"
            choices={['concentrated', 'stacked', 'interleaved']}
            chosen={search.layouts ?? [own]}
            onChange={(layouts) => choose({ layouts: layouts as Search['layouts'] })}
          />
        </div>
      </Box>
    </Section>
  );
}

/** The search at work, and the machines that no other beats. */
export function SearchPanel({ design: solvedFor, results }: Pick<FigureProps, 'design' | 'results'>) {
  const design = useDesign((s) => s.design);
  const isBlocked = useDesign((s) => Object.keys(s.faults).length > 0);
  const work = useWork((s) => s.search);
  const running = useWork((s) => s.running);
  const size = useMemo(() => searchSize(design), [design]);
  const shown = useDeferredValue(work);
  const share = running === 'search' && work ? work.done / Math.max(1, work.size) : undefined;
  return (
    <Section title="What can be built">
      <WorkBar label="Search" share={share} disabled={running !== null || isBlocked} onStart={() => void startSearch(design)} onStop={stop}>
        {running === 'search' && work
          ? `${count(work.done)} of ${count(work.size)} machines, ${count(work.found.length)} of them unbeaten`
          : waiting(size, work)}
      </WorkBar>
      {work?.fault && <Box sx={{ color: 'error.main', pb: 1 }}>{work.fault}</Box>}
      {shown && shown.found.length > 0 && (
        <Machines work={shown} solvedFor={solvedFor} results={results} isOutdated={isOutdated(shown.design, design)} />
      )}
    </Section>
  );
}

function waiting(size: number, work: SearchWork | null): string {
  if (!work) return `${count(size)} machines, each fully worked out.`;
  const { done, solved, pruned, seconds, found } = work;
  const out = [
    [pruned.frame, 'do not go side by side or want more magnets'],
    [pruned.fit, 'do not go into the leg'],
    [pruned.reel, 'want a longer reel'],
  ] as const;
  const struck = out.filter(([n]) => n > 0).map(([n, why]) => `${count(n)} ${why}`);
  return `Of ${count(done)} machines ${count(solved)} were worked out in ${seconds.toFixed(1)} s${struck.length ? `; ${struck.join(', ')}` : ''}. ${found.length === 0 ? 'None keeps to the limits.' : `${count(found.length)} keep to the limits and are beaten by no other.`}`;
}

interface MachinesProps extends Pick<FigureProps, 'results'> {
  work: SearchWork;
  solvedFor: Design;
  isOutdated: boolean;
}

/** Remembered, so that the bar above moves and stops without the chart and the table being drawn again. */
const Machines = memo(function Machines({ work, solvedFor, results, isOutdated: outdated }: MachinesProps) {
  const [brush, setBrush] = useState<Brush | null>(null);
  const { design, found } = work;
  const { shelf = [] } = design;
  const picked = useMemo(() => (brush ? found.filter((one) => isBrushed(one, brush)) : found), [brush, found]);
  const open = useCallback(({ candidate }: Found) => openMachine(design, candidate), [design]);
  return (
    <>
      {outdated && (
        <Box sx={{ color: 'warning.main', fontSize: 13, pb: 1 }}>
          The design has been changed since; search again to have its own machines.
        </Box>
      )}
      <Box sx={{ maxWidth: 1100 }}>
        <FrontChart
          design={design}
          found={found}
          own={objectivesOf(results, priceOf(reelOf(solvedFor, shelf), shelf))}
          brush={brush}
          onBrush={setBrush}
          onOpen={open}
        />
      </Box>
      <Box sx={{ overflowX: 'auto', pt: 1 }}>
        <FrontTable design={design} found={picked} onOpen={open} />
      </Box>
    </>
  );
});
