import Button from '@mui/material/Button';
import { memo, type ReactNode } from 'react';
import { wordInstead, type Results } from '../../core';
import { movement } from '../parts/result-list';
import { useUnits } from '../parts/unit-preferences';
import { valueAt } from '../path';
import { useDesign } from '../state/design';
import { useResults } from '../state/results';
import { unpinAll } from '../state/variants';
import { setView } from '../state/view';
import { format, formatDifference, shown } from '../units';
import { quantityAt } from '../words';
import './headline-strip.css';

const numbers = [
  { path: 'emf.lineRmsPer1000rpm', label: 'Volts at 1000 rpm' },
  { path: 'cutIn.wind', label: 'Cut-in wind' },
  { path: 'rated.dcAmps', label: 'Rated amps' },
  { path: 'rated.dcWatts', label: 'Rated watts' },
  { path: 'rated.coilTemperature', label: 'Coil temperature' },
  { path: 'year.energy', label: 'Energy a year' },
] as const;

const gravity = { pass: 0, tight: 1, fail: 2 };
const verdictTone = { pass: 'good', tight: 'warn', fail: 'bad' } as const;

/** The few numbers that settle whether a design is worth building, always in view. */
export function HeadlineStrip() {
  const results = useResults((s) => s.results);
  const stale = useResults((s) => s.problems.length > 0);
  const busy = useResults((s) => s.busy);
  const faulty = useDesign((s) => Object.keys(s.faults).length > 0);
  return (
    <section className="headline" aria-label="Headline results" data-testid="headline" aria-busy={busy}>
      {numbers.map(({ path, label }) => (
        <Headline key={path} path={path} label={label} results={results} />
      ))}
      <Verdict results={results} />
      <ToHeed results={results} />
      <Pinned />
      {(stale || faulty) && (
        <div role="status" className="line bad">
          {faulty
            ? 'An entry cannot be used as it stands; the numbers are those before it.'
            : 'This design cannot be worked out; the numbers are of the last one that could.'}
        </div>
      )}
    </section>
  );
}

function Headline({ path, label, results }: { path: (typeof numbers)[number]['path']; label: string; results: Results | null }) {
  const baseline = useResults((s) => s.baseline);
  const units = useUnits();
  const kind = quantityAt(path).unit;
  const value = results && (valueAt(results, path) as number | null);
  const word = results && wordInstead(path, results);
  const { text, unit } = word ? { text: word, unit: '' } : shown(value, kind, units, 3);
  const moved = !word && baseline && movement(value, valueAt(baseline, path) as number | null);
  const limit = path === 'rated.coilTemperature' ? results?.rated.limitTemperature : undefined;
  const over = limit !== undefined && value !== null && value > limit;
  return (
    <Cell
      label={label}
      text={text}
      unit={unit}
      tone={over ? 'bad' : undefined}
      moved={typeof moved === 'number' ? formatDifference(moved, kind, units) : undefined}
      below={limit === undefined ? undefined : `limit ${format(limit, 'temperature', units)}`}
      onClick={results ? openWorking[path] : undefined}
    />
  );
}

/** One function for each, so that a cell whose words stay is not drawn anew. */
const openWorking = Object.fromEntries(numbers.map(({ path }) => [path, () => setView({ working: path })]));

function Verdict({ results }: { results: Results | null }) {
  const worst = results?.controller.reduce<Results['controller'][number] | undefined>(
    (found, v) => (found && gravity[found.verdict] >= gravity[v.verdict] ? found : v),
    undefined,
  );
  return (
    <Cell
      label="Controller"
      text={worst?.verdict ?? '–'}
      tone={worst && verdictTone[worst.verdict]}
      below={worst ? (worst.verdict === 'pass' ? 'in every situation' : worst.situation) : 'none entered'}
      onClick={goToController}
    />
  );
}

const goToController = () => setView({ worksheet: 'controller' });

/** How much there is to heed: entries at fault, then cautions. */
function ToHeed({ results }: { results: Results | null }) {
  const problems = useResults((s) => s.problems.length);
  const errors = useDesign((s) => Object.keys(s.faults).length) + problems;
  const count = (severity: 'danger' | 'warning') => results?.cautions.filter((c) => c.severity === severity).length ?? 0;
  const [danger, warning] = [count('danger'), count('warning')];
  const below = errors > 0 ? `${errors} to mend` : danger > 0 ? `${danger} of danger` : warning > 0 ? `${warning} to heed` : 'notes only';
  return (
    <Cell
      label="Errors and cautions"
      text={results ? String(errors + results.cautions.length) : '–'}
      tone={errors + danger > 0 ? 'bad' : warning > 0 ? 'warn' : undefined}
      below={below}
      onClick={openToHeed}
    />
  );
}

const openToHeed = () => setView({ dialog: { kind: 'to-heed' } });

function Pinned() {
  const variants = useResults((s) => s.variants);
  if (variants.length === 0) return null;
  return (
    <div className="line">
      Pinned: {variants.map((v) => `${v.letter} – ${v.name}`).join('; ')}.
      <Button size="small" onClick={() => setView({ dialog: { kind: 'comparison' } })} sx={{ py: 0, ml: 1 }}>
        Side by side
      </Button>
      <Button size="small" onClick={unpinAll} sx={{ py: 0 }}>
        Unpin
      </Button>
    </div>
  );
}

interface CellProps {
  label: string;
  text: string;
  unit?: string;
  tone?: 'good' | 'warn' | 'bad';
  /** By how much it differs from what was saved. */
  moved?: string;
  below?: string;
  onClick?: () => void;
}

const Cell = memo(function Cell({ label, text, unit, tone, moved, below, onClick }: CellProps) {
  const inner: ReactNode = (
    <>
      <span className="name">{label}</span>
      <span className={tone ? `figure ${tone}` : 'figure'}>
        {text}
        {unit && <span className="unit">{unit}</span>}
      </span>
      <span className="below">
        {moved && <span className="moved">{moved}</span>}
        {below}
      </span>
    </>
  );
  if (!onClick) return <div className="cell">{inner}</div>;
  return (
    <button type="button" className="cell row-button" onClick={onClick}>
      {inner}
    </button>
  );
});
