import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import type { BenchReport } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editEntries } from '../../state/design';
import { format, type UnitPreferences } from '../../units';
import { kindOf } from './figures';
import type { ReportState } from './use-report';

const colors = {
  'as-planned': 'success.main',
  fault: 'error.main',
  'cannot-tell': 'warning.main',
  unexplained: 'error.main',
  'nothing-read': 'text.secondary',
} as const;

/** What all readings together mean, what to read next, and what the machine really is. */
export function VerdictPanel({ report, message, busy }: ReportState) {
  if (message) return <Box role="alert">The readings cannot be worked out: {message}</Box>;
  if (!report) return null;
  return (
    <Section title="What it means">
      <Box aria-busy={busy} sx={{ opacity: busy ? 0.6 : 1, maxWidth: 1000 }}>
        <Box role="status" sx={{ fontSize: 16, fontWeight: 500, py: 1, color: colors[report.verdict] }}>
          {report.headline}
        </Box>
        {report.verdict !== 'nothing-read' && (
          <Box
            sx={{
              display: 'grid',
              gridTemplateColumns: { xs: 'minmax(0, 1fr)', lg: 'minmax(0, 1.4fr) minmax(0, 1fr)' },
              columnGap: 4,
              rowGap: 2,
            }}
          >
            <Suspects report={report} />
            <Box>
              <Next report={report} />
              <Factors report={report} />
            </Box>
          </Box>
        )}
      </Box>
    </Section>
  );
}

function Suspects({ report: { suspects } }: { report: BenchReport }) {
  const units = useUnits();
  return (
    <Box component="ol" aria-label="What explains the readings, the likeliest first" sx={{ m: 0, p: 0, listStyle: 'none' }}>
      {suspects.map(({ weight, words, amount, checks }) => (
        <Box component="li" key={words.join()} sx={{ display: 'grid', gridTemplateColumns: '56px minmax(0, 1fr)', columnGap: 1.5, pb: 1 }}>
          <Box sx={{ textAlign: 'right', fontWeight: 500 }} title="Share of belief after all readings">
            {weight > 0.995 ? '> 99 %' : weight < 0.01 ? '< 1 %' : `${(100 * weight).toFixed(0)} %`}
          </Box>
          <Box>
            <Box>
              {words
                .map((word, i) =>
                  i === 0 && amount ? `${word}, ${amount.label.toLowerCase()} ${format(amount.value, amount.unit, units, 3)}` : word,
                )
                .join('; or ')}
            </Box>
            <Box aria-hidden sx={{ height: 3, my: 0.5, bgcolor: (t) => t.palette.tones.ground }}>
              <Box sx={{ height: 3, width: `${100 * weight}%`, bgcolor: 'primary.main' }} />
            </Box>
            {checks.map((check) => (
              <Box key={check} sx={{ fontSize: 12.5, color: 'text.secondary' }}>
                {check}
              </Box>
            ))}
          </Box>
        </Box>
      ))}
    </Box>
  );
}

function Next({ report: { next, looks } }: { report: BenchReport }) {
  const units = useUnits();
  if (!next && looks.length === 0) return null;
  return (
    <Box component="section" aria-label="What to read next" sx={{ mb: 2 }}>
      <Box component="h3" sx={{ m: 0, fontSize: 13, fontWeight: 500 }}>
        Read next
      </Box>
      {next ? (
        <>
          <Box>
            {sentence(next.words)}
            {next.speed !== undefined && ` at ${format(next.speed, 'speed', units, 3)}`}:
          </Box>
          <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
            {next.expected.map(({ words, value }) => (
              <li key={words}>
                {next.figure === 'ohms' && value >= 1e6 ? 'no end of ohms' : format(value, kindOf[next.figure], units, 3)} if {words}
              </li>
            ))}
          </Box>
        </>
      ) : (
        <>
          <Box>No meter tells the first two apart. Look instead:</Box>
          <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
            {looks.map((look) => (
              <li key={look}>{look}</li>
            ))}
          </Box>
        </>
      )}
    </Box>
  );
}

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const factors = [
  { key: 'field', label: 'Field' },
  { key: 'resistance', label: 'Resistance' },
] as const;

function Factors({ report }: { report: BenchReport }) {
  const units = useUnits();
  const rows = [
    ...factors.map(({ key, label }) => ({ label, fitted: report.fit[key] })),
    { label: 'Power coefficient', fitted: report.coefficient },
  ];
  const told = rows.flatMap(({ label, fitted }) => (fitted ? [{ label, fitted }] : []));
  if (told.length === 0) return null;
  const { magnets, gap } = report.corrections;
  const differs = 'discs.runningClearance' in gap;
  return (
    <Box component="section" aria-label="The measured machine">
      <Box component="h3" sx={{ m: 0, fontSize: 13, fontWeight: 500 }}>
        Measured over planned
      </Box>
      <Box component="dl" sx={{ m: 0, display: 'grid', gridTemplateColumns: 'auto 1fr', columnGap: 2 }}>
        {told.map(({ label, fitted }) => (
          <Box key={label} sx={{ display: 'contents' }}>
            <dt>{label}</dt>
            <Box component="dd" sx={{ m: 0 }} title="95 % interval">
              {interval(fitted, units)}
            </Box>
          </Box>
        ))}
      </Box>
      {Object.keys(magnets).length > 0 ? (
        <Box sx={{ display: 'flex', gap: 1, mt: 1, flexWrap: 'wrap' }}>
          <Button variant="outlined" onClick={() => editEntries(magnets, 'the measured machine')}>
            Use the measured machine
          </Button>
          {differs && <Button onClick={() => editEntries(gap, 'the measured machine, its gap')}>…putting the field down to the gap</Button>}
        </Box>
      ) : (
        report.kept && <Box sx={{ mt: 1, fontSize: 12.5, color: 'text.secondary' }}>{whyKept[report.kept]}</Box>
      )}
    </Box>
  );
}

const whyKept: Record<NonNullable<BenchReport['kept']>, string> = {
  faulty: 'A machine with a fault is to be mended before a design is made of it.',
  unexplained: 'No design is made of readings that nothing explains.',
  'as-planned': 'Nothing is off for sure: the plan stands as it is.',
};

const interval = ({ value, low, high }: { value: number; low: number; high: number }, units: UnitPreferences) =>
  `${format(value, 'percent', units)} (${format(low, 'percent', units)} to ${format(high, 'percent', units)})`;
