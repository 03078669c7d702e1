import Box from '@mui/material/Box';
import { useTheme } from '@mui/material/styles';
import { lazy, Suspense, useState, type ReactNode } from 'react';
import { useUnits } from '../parts/unit-preferences';
import { csvOf, type Chart } from './chart';
import { lineInk } from './inks';
import { Plate, Tool } from './plate';

const LinePlot = lazy(() => import('./line-plot'));

/** A chart with its legend, its numbers under the pointer, and a button that copies them. */
export function LineChart({ chart, height = 270, note }: { chart: Chart; height?: number; note?: ReactNode }) {
  return (
    <Plate title={chart.title} tools={<CopyTool chart={chart} />} note={note}>
      <Box sx={{ height, display: 'flex', flexDirection: 'column' }}>
        <Legend chart={chart} />
        <Box
          role="group"
          aria-label={`${chart.series.map((s) => s.label).join(', ')} against ${chart.x.label}`}
          sx={{ flex: 1, minHeight: 0 }}
        >
          <Suspense fallback={null}>
            <LinePlot chart={chart} />
          </Suspense>
        </Box>
      </Box>
    </Plate>
  );
}

function CopyTool({ chart }: { chart: Chart }) {
  const units = useUnits();
  const [outcome, setOutcome] = useState<string | null>(null);
  const copy = async () => {
    const told = await navigator.clipboard.writeText(csvOf(chart, units)).then(
      () => 'Copied',
      () => 'Could not copy',
    );
    setOutcome(told);
    setTimeout(() => setOutcome(null), 2000);
  };
  return (
    <Tool label={`${outcome ?? 'Copy CSV'}: ${chart.title}`} onClick={() => void copy()}>
      <span role="status">{outcome ?? 'Copy CSV'}</span>
    </Tool>
  );
}

function Legend({ chart }: { chart: Chart }) {
  const { mode } = useTheme().palette;
  if (chart.series.length < 2) return null;
  return (
    <Box
      component="ul"
      aria-label="Legend"
      sx={{ m: 0, px: 1.25, pt: 0.75, display: 'flex', flexWrap: 'wrap', columnGap: 2, listStyle: 'none', fontSize: 12.5 }}
    >
      {chart.series.map(({ label }, i) => {
        const { colour, dash } = lineInk(i, mode);
        return (
          <Box component="li" key={label} sx={{ display: 'flex', alignItems: 'center', gap: 0.75 }}>
            <svg width="26" height="10" aria-hidden>
              {chart.stacked ? (
                <rect width="26" height="10" fill={colour} fillOpacity={0.55} stroke={colour} />
              ) : (
                <line x1="0" x2="26" y1="5" y2="5" stroke={colour} strokeWidth="2" strokeDasharray={dash} />
              )}
            </svg>
            {label}
          </Box>
        );
      })}
    </Box>
  );
}
