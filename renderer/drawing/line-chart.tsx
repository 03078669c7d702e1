import Box from '@mui/material/Box';
import { useTheme } from '@mui/material/styles';
import { lazy, Suspense, useMemo, useRef, type ReactNode } from 'react';
import type { Chart } from './chart';
import { ChartTools } from './chart-tools';
import { lineInk, otherMark } from './inks';
import { overlaid, type OtherChart } from './overlay';
import { useCalm } from './pace';
import { Plate } from './plate';

const LinePlot = lazy(() => import('./line-plot'));

interface Props {
  chart: Chart;
  /** The same chart of other designs, laid over this one. */
  against?: readonly OtherChart[];
  height?: number;
  note?: ReactNode;
}

/** A chart with its legend, its numbers under the pointer, and buttons that take it elsewhere. */
export function LineChart({ chart, against = none, height = 270, note }: Props) {
  const frame = useRef<HTMLElement>(null);
  const all = useMemo(() => overlaid(chart, against), [chart, against]);
  const calm = useCalm(all, CALM);
  return (
    <Plate title={chart.title} tools={<ChartTools chart={all} frame={frame} />} note={note}>
      <Box ref={frame} sx={{ minHeight: height, display: 'flex', flexDirection: 'column' }}>
        <Legend chart={all} />
        <Box
          role="group"
          aria-label={`${all.series.map((s) => s.label).join(', ')} against ${chart.x.label}`}
          sx={{ flex: 'none', height: all.series.length > 1 ? height - 25 : height }}
        >
          <Suspense fallback={null}>
            <LinePlot chart={calm} />
          </Suspense>
        </Box>
      </Box>
    </Plate>
  );
}

/** A plot is drawn anew once its numbers have stood still for so long: while they are dragged it would hold up every other frame. [ms] */
const CALM = 250;

const none: readonly OtherChart[] = [];

function Legend({ chart }: { chart: Chart }) {
  const { mode } = useTheme().palette;
  if (chart.series.length < 2) return null;
  return (
    <Box
      component="ul"
      aria-label="Legend"
      sx={{ m: 0, px: 1.25, pt: 0.75, display: 'flex', flexWrap: 'wrap', columnGap: 2, listStyle: 'none', fontSize: 12.5 }}
    >
      {chart.series.map(({ label, other }, i) => {
        const { colour, dash } = lineInk(other?.like ?? i, mode);
        return (
          <Box component="li" key={label} sx={{ display: 'flex', alignItems: 'center', gap: 0.75 }}>
            <svg width="26" height="10" viewBox="0 0 26 10" aria-hidden>
              {chart.stacked && !other ? (
                <rect width="26" height="10" fill={colour} fillOpacity={0.55} stroke={colour} />
              ) : (
                <line x1="0" x2="26" y1="5" y2="5" stroke={colour} strokeWidth={other ? 1 : 2} strokeDasharray={dash} />
              )}
              {other && <path d={markPaths[otherMark(other.design)]} transform="translate(13 5)" fill="none" stroke={colour} />}
            </svg>
            {label}
          </Box>
        );
      })}
    </Box>
  );
}

/** The marks as the plot draws them, 8 px across. */
const markPaths: Record<ReturnType<typeof otherMark>, string> = {
  square: 'M-3.5 -3.5H3.5V3.5H-3.5Z',
  triangle: 'M0 -4L4 3.5H-4Z',
  diamond: 'M0 -4.5L3.5 0L0 4.5L-3.5 0Z',
  cross: 'M-4 0H4M0 -4V4',
};
