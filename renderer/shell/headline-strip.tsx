import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import ButtonBase from '@mui/material/ButtonBase';
import type { ReactNode } from 'react';
import type { Results } from '../../core';
import { movement } from '../parts/result-list';
import { useUnits } from '../parts/unit-preferences';
import { valueAt } from '../path';
import { useDesign } from '../state/design';
import { useResults } from '../state/results';
import { unpinAll } from '../state/variants';
import { setView } from '../state/view';
import { format, formatDifference, shown } from '../units';
import { quantityAt } from '../words';

const numbers = [
  { path: 'emf.lineRmsPer1000rpm', label: 'Volts at 1000 rpm' },
  { path: 'cutIn.wind', label: 'Cut-in wind' },
  { path: 'rated.dcAmps', label: 'Rated amps' },
  { path: 'rated.dcWatts', label: 'Rated watts' },
  { path: 'rated.coilTemperature', label: 'Coil temperature' },
  { path: 'year.energy', label: 'Energy a year' },
] as const;

const gravity = { pass: 0, tight: 1, fail: 2 };
const verdictColor = { pass: 'success.main', tight: 'warning.main', fail: 'error.main' };

/** The few numbers that settle whether a design is worth building, always in view. */
export function HeadlineStrip() {
  const results = useResults((s) => s.results);
  const stale = useResults((s) => s.problems.length > 0);
  const variants = useResults((s) => s.variants);
  const busy = useResults((s) => s.busy);
  const faulty = useDesign((s) => Object.keys(s.faults).length > 0);
  return (
    <Box
      component="section"
      aria-label="Headline results"
      data-testid="headline"
      aria-busy={busy}
      sx={{
        display: 'grid',
        gridTemplateColumns: 'repeat(8, minmax(0, 1fr))',
        borderBottom: 1,
        borderColor: 'divider',
        minHeight: 66,
        bgcolor: 'background.paper',
        // Only what takes long is seen to be under way.
        position: 'relative',
        '&::after': {
          content: '""',
          position: 'absolute',
          inset: 'auto 0 -1px',
          height: 2,
          bgcolor: 'primary.main',
          opacity: busy ? 1 : 0,
          transition: 'opacity 120ms',
          transitionDelay: busy ? '300ms' : '0ms',
        },
      }}
    >
      {numbers.map(({ path, label }) => (
        <Headline key={path} path={path} label={label} results={results} />
      ))}
      <Verdict results={results} />
      <CautionCount results={results} />
      {variants.length > 0 && (
        <Box sx={{ gridColumn: '1 / -1', px: 1.75, fontSize: 12, color: 'text.secondary', borderTop: 1, borderColor: 'divider' }}>
          Pinned: {variants.map((v) => `${v.letter} – ${v.name}`).join('; ')}.
          <Button size="small" onClick={() => setView({ dialog: { kind: 'comparison' } })} sx={{ py: 0, ml: 1 }}>
            Side by side
          </Button>
          <Button size="small" onClick={unpinAll} sx={{ py: 0 }}>
            Unpin
          </Button>
        </Box>
      )}
      {(stale || faulty) && (
        <Box
          role="status"
          sx={{ gridColumn: '1 / -1', px: 1.75, py: 0.25, fontSize: 12, color: 'error.main', borderTop: 1, borderColor: 'divider' }}
        >
          {faulty
            ? 'An entry cannot be used as it stands; the numbers are those before it.'
            : 'This design cannot be worked out; the numbers are of the last one that could.'}
        </Box>
      )}
    </Box>
  );
}

function Headline({ path, label, results }: { path: string; label: string; results: Results | null }) {
  const units = useUnits();
  const baseline = useResults((s) => s.baseline);
  const kind = quantityAt(path).unit;
  const value = results && (valueAt(results, path) as number | null);
  const { text, unit } = shown(value, kind, units, 3);
  const moved = baseline && movement(value, valueAt(baseline, path) as number | null);
  const limit = path === 'rated.coilTemperature' ? results?.rated.limitTemperature : undefined;
  const over = limit !== undefined && value !== null && value > limit;
  return (
    <Cell label={label} onClick={results ? () => setView({ working: path }) : undefined}>
      <Figure color={over ? 'error.main' : undefined} unit={unit}>
        {text}
      </Figure>
      <Sub>
        {moved !== null && (
          <Box component="span" sx={{ color: 'primary.main', pr: 1 }}>
            {formatDifference(moved, kind, units)}
          </Box>
        )}
        {limit !== undefined && <span>limit {format(limit, 'temperature', units)}</span>}
      </Sub>
    </Cell>
  );
}

function Verdict({ results }: { results: Results | null }) {
  const worst = results?.controller.reduce<Results['controller'][number] | undefined>(
    (found, v) => (found && gravity[found.verdict] >= gravity[v.verdict] ? found : v),
    undefined,
  );
  return (
    <Cell label="Controller" onClick={() => setView({ worksheet: 'controller' })}>
      <Figure color={worst && verdictColor[worst.verdict]}>{worst?.verdict ?? '–'}</Figure>
      <Sub>{worst ? (worst.verdict === 'pass' ? 'in every situation' : worst.situation) : 'none entered'}</Sub>
    </Cell>
  );
}

function CautionCount({ results }: { results: Results | null }) {
  const count = (severity: 'danger' | 'warning') => results?.cautions.filter((c) => c.severity === severity).length ?? 0;
  const [danger, warning] = [count('danger'), count('warning')];
  return (
    <Cell label="Cautions" onClick={() => setView({ dialog: { kind: 'cautions' } })}>
      <Figure color={danger > 0 ? 'error.main' : warning > 0 ? 'warning.main' : undefined}>{results?.cautions.length ?? '–'}</Figure>
      <Sub>{danger > 0 ? `${danger} of danger` : warning > 0 ? `${warning} to heed` : 'notes only'}</Sub>
    </Cell>
  );
}

function Cell({ label, onClick, children }: { label: string; onClick?: () => void; children: ReactNode }) {
  const sx = {
    display: 'flex',
    flexDirection: 'column',
    alignItems: 'stretch',
    justifyContent: 'flex-start',
    textAlign: 'left',
    lineHeight: 1.45,
    minWidth: 0,
    px: 1.75,
    py: 0.75,
    borderRight: 1,
    borderColor: 'divider',
    '&:focus-visible': { outlineOffset: -2 },
  } as const;
  const inner = (
    <>
      <Box component="span" sx={{ display: 'block', fontSize: 11.5, color: 'text.secondary', whiteSpace: 'nowrap' }}>
        {label}
      </Box>
      {children}
    </>
  );
  return onClick ? (
    <ButtonBase onClick={onClick} sx={{ ...sx, '&:hover': { bgcolor: 'action.hover' } }}>
      {inner}
    </ButtonBase>
  ) : (
    <Box sx={sx}>{inner}</Box>
  );
}

function Figure({ children, unit, color }: { children: ReactNode; unit?: string; color?: string }) {
  return (
    <Box component="span" sx={{ display: 'block', fontSize: 19, lineHeight: 1.25, fontWeight: 500, color, whiteSpace: 'nowrap' }}>
      {children}
      {unit && (
        <Box component="span" sx={{ fontSize: 12, fontWeight: 400, pl: 0.5, color: 'text.secondary' }}>
          {unit}
        </Box>
      )}
    </Box>
  );
}

function Sub({ children }: { children: ReactNode }) {
  return (
    <Box
      component="span"
      sx={{
        display: 'block',
        minHeight: 16,
        fontSize: 11.5,
        color: 'text.secondary',
        whiteSpace: 'nowrap',
        overflow: 'hidden',
        textOverflow: 'ellipsis',
      }}
    >
      {children}
    </Box>
  );
}
