import Box from '@mui/material/Box';
import Typography from '@mui/material/Typography';
import { memo, useDeferredValue, useMemo, type ComponentType } from 'react';
import { usePaced } from '../drawing/pace';
import { CautionList } from '../parts/caution-list';
import { EntryForm, type FormEvents } from '../parts/entry-form';
import { ProblemList } from '../parts/problem-list';
import { ResultList } from '../parts/result-list';
import { Section } from '../parts/section';
import { useUnits } from '../parts/unit-preferences';
import {
  changeKind,
  designStore,
  editEntries,
  editEntry,
  setFault,
  settleEntry,
  toggleSection,
  useDesign,
  type OptionalSection,
} from '../state/design';
import { forgetPreset, keepPreset, type Table } from '../state/own-presets';
import { useResults, type Variant } from '../state/results';
import { setView, useView } from '../state/view';
import { NARROW } from '../theme';
import { told } from '../units';
import { goToEntry } from './go-to-entry';
import { ownPreset, presetTable } from './presets';
import { worksheetFor } from './registry';
import { stepName } from './step-name';
import type { FigureProps, Worksheet } from './worksheet';

/** A worksheet as it stands on screen: inputs left, figure and results right, cautions below. */
export function Page({ worksheet }: { worksheet: Worksheet }) {
  const { title, purpose, groups } = worksheet;
  return (
    <Box component="main" aria-labelledby="worksheet-title" sx={{ overflow: 'auto', minWidth: 0, px: 2.5, pt: 1.75, pb: 4 }}>
      <Box sx={{ display: 'flex', alignItems: 'baseline', gap: 2, mb: 1.75 }}>
        <Typography variant="h1" id="worksheet-title">
          {title}
        </Typography>
        <Typography variant="body2" sx={{ color: 'text.secondary' }}>
          {purpose}
        </Typography>
      </Box>
      <Problems />
      <Box
        sx={{
          display: 'grid',
          gridTemplateColumns: groups.length ? '332px minmax(0, 1fr)' : 'minmax(0, 1fr)',
          columnGap: 3,
          [NARROW]: { gridTemplateColumns: 'minmax(0, 1fr)' },
        }}
      >
        {groups.length > 0 && <Inputs worksheet={worksheet} />}
        <Answers worksheet={worksheet} />
      </Box>
    </Box>
  );
}

const sectionWords: Record<OptionalSection, string> = { controller: 'charge controller', workshop: 'hub and bolts' };

/** The same functions for every form and every time it is drawn. */
const events: FormEvents = {
  onEdit: (path, value, typed) => editEntry(path, value, stepName, typed),
  onKind: (path, kind) => changeKind(path, kind, stepName),
  onToggle: (path, present) => {
    const section = path as OptionalSection;
    toggleSection(section, present, `${sectionWords[section]} ${present ? 'added' : 'removed'}`);
  },
  onPreset: (preset) => editEntries(preset.changes, preset.name),
  onKeep: (table, name) => keepPreset(ownPreset(table as Table, name, designStore.getState().design)),
  onForget: forgetPreset,
  onFault: setFault,
  onSettle: settleEntry,
};

const openWorking = (path: string) => setView({ working: path });

function Inputs({ worksheet }: { worksheet: Worksheet }) {
  const design = useDesign((s) => s.design);
  const faults = useDesign((s) => s.faults);
  const problems = useResults((s) => s.problems);
  const units = useUnits();
  const loadKind = design.load.kind;
  const own = useView((s) => s.ownPresets);
  const groups = useMemo(
    () =>
      worksheet.groups.map(({ title, entries, preset, Tool }) => ({
        title,
        entries,
        table: preset && presetTable(preset, loadKind, own, units),
        tool: Tool && <Tool />,
      })),
    [worksheet, loadKind, own, units],
  );
  return (
    <Box component="form" aria-label="Entries" onSubmit={(event) => event.preventDefault()}>
      <EntryForm
        key={worksheet.id}
        design={design}
        groups={groups}
        faults={faults}
        problems={Object.fromEntries(problems.map((p) => [p.where, told(p, units)]))}
        {...events}
      />
    </Box>
  );
}

function Answers({ worksheet }: { worksheet: Worksheet }) {
  const { Figure, Panel, groups, results: paths } = worksheet;
  const results = useResults((s) => s.results);
  const solvedFor = useResults((s) => s.solvedFor);
  const solved = useMemo(() => (results && solvedFor ? { results, design: solvedFor } : null), [results, solvedFor]);
  const drawn = useDeferredValue(usePaced(solved, PACE)) ?? solved;
  const baseline = useResults((s) => s.baseline);
  const against = useAgainst();
  if (!results || !solvedFor) return <Box sx={{ color: 'text.secondary' }}>Working it out…</Box>;
  const cautions = results.cautions.filter((c) => worksheetFor(c.where)?.id === worksheet.id);
  return (
    <Box sx={{ minWidth: 0 }}>
      {groups.length === 0 && Panel && <Panel design={solvedFor} results={results} against={against} />}
      <Box
        sx={{
          display: 'grid',
          gridTemplateColumns: { xs: 'minmax(0, 1fr)', xl: paths.length ? 'minmax(0, 1fr) 400px' : 'minmax(0, 1fr)' },
          columnGap: 3,
        }}
      >
        {paths.length > 0 && (
          <Section title="Results">
            <ResultList paths={paths} results={results} baseline={baseline} onOpen={openWorking} />
          </Section>
        )}
        <Box
          component="figure"
          aria-label={`${worksheet.title}: drawing`}
          sx={{ m: 0, mb: 2.5, minWidth: 0, maxWidth: 1100, order: { xl: -1 } }}
        >
          {drawn && <Drawn of={Figure} design={drawn.design} results={drawn.results} against={against} />}
        </Box>
      </Box>
      {groups.length > 0 && Panel && <Panel design={solvedFor} results={results} against={against} />}
      {cautions.length > 0 && (
        <Section title="Cautions">
          <CautionList cautions={cautions} onGo={goToEntry} />
        </Section>
      )}
    </Box>
  );
}

/** What charts lay over the design: its pinned variants, and itself as last saved. */
function useAgainst(): readonly Variant[] {
  const variants = useResults((s) => s.variants);
  const baseline = useResults((s) => s.baseline);
  const saved = useDesign((s) => s.saved);
  return useMemo(() => {
    if (!saved || !baseline || variants.some(({ design }) => design === saved)) return variants;
    return [...variants, { id: 0, letter: 'as saved', name: 'as saved', design: saved, results: baseline }];
  }, [variants, saved, baseline]);
}

/** While numbers are dragged drawings follow ten times a second: oftener they would take the processor from the solver. [ms] */
const PACE = 100;

/** Drawings and charts follow the numbers as soon as there is time, so that neither typing nor a number waits for them. */
const Drawn = memo(function Drawn({ of: Figure, ...props }: FigureProps & { of: ComponentType<FigureProps> }) {
  return <Figure {...props} />;
});

function Problems() {
  const problems = useResults((s) => s.problems);
  return <ProblemList title="This design cannot be worked out:" problems={problems} onGo={goToEntry} />;
}
