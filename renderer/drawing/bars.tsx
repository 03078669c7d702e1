import Box from '@mui/material/Box';
import { Plate } from './plate';

export interface Bar {
  label: string;
  /** Length and mark over the full width, 0 … 1. */
  length: number;
  mark?: number;
  /** What the bar and its mark stand for, in words and units. */
  value: string;
  word?: string;
  tone: 'good' | 'warn' | 'bad' | 'faint';
}

/** Values as bars, each with a mark for what it is held against and a word for how it stands. */
export function Bars({ title, bars, note }: { title: string; bars: readonly Bar[]; note?: string }) {
  return (
    <Plate title={title} note={note}>
      <Box component="ul" sx={{ m: 0, px: 1.25, py: 1, listStyle: 'none', display: 'grid', rowGap: 1.25 }}>
        {bars.map((bar, i) => (
          <BarRow key={`${bar.label}${i}`} bar={bar} />
        ))}
      </Box>
    </Plate>
  );
}

function BarRow({ bar: { label, length, mark, value, word, tone } }: { bar: Bar }) {
  const percent = (share: number) => `${100 * Math.min(1, Math.max(0, share))}%`;
  return (
    <Box component="li">
      <Box sx={{ display: 'flex', columnGap: 1.5, fontSize: 13, lineHeight: 1.4 }}>
        <Box sx={{ flex: 1, minWidth: 0 }}>{label}</Box>
        <Box sx={{ color: 'text.secondary', textAlign: 'right' }}>{value}</Box>
        {word && <Box sx={{ minWidth: 40, textAlign: 'right', fontWeight: 500, color: (t) => t.palette.tones[tone] }}>{word}</Box>}
      </Box>
      <Box
        aria-hidden
        sx={{ position: 'relative', height: 12, mt: 0.5, bgcolor: (t) => t.palette.tones.ground, border: 1, borderColor: 'divider' }}
      >
        <Box
          sx={{ position: 'absolute', inset: '0 auto 0 0', width: percent(length), bgcolor: (t) => t.palette.tones[tone], opacity: 0.75 }}
        />
        {mark !== undefined && (
          <Box sx={{ position: 'absolute', top: -3, bottom: -3, left: percent(mark), width: '2px', ml: '-1px', bgcolor: 'text.primary' }} />
        )}
      </Box>
    </Box>
  );
}
