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
  tone: 'good' | 'warn' | 'bad' | 'faint' | 'accent';
}

/** Values as bars, each with a mark for what it is held against and a word for how it stands. */
export function Bars({ title, bars, note }: { title: string; bars: readonly Bar[]; note?: string }) {
  return (
    <Plate title={title} note={note}>
      <Box component="ul" sx={{ m: 0, px: 1.25, py: 1, listStyle: 'none', display: 'grid', rowGap: 1 }}>
        {bars.map((bar, i) => (
          <BarRow key={`${bar.label}${i}`} bar={bar} />
        ))}
      </Box>
    </Plate>
  );
}

function BarRow({ bar: { label, length, mark, value, word, tone } }: { bar: Bar }) {
  const track = <Track length={length} mark={mark} tone={tone} />;
  if (word === undefined)
    return (
      <Box component="li" sx={{ display: 'grid', gridTemplateColumns: '104px 1fr 56px', alignItems: 'center', fontSize: 13 }}>
        <span>{label}</span>
        {track}
        <Box sx={{ textAlign: 'right', color: 'text.secondary' }}>{value}</Box>
      </Box>
    );
  return (
    <Box component="li">
      <Box sx={{ display: 'flex', columnGap: 1.5, mb: 0.5, fontSize: 13, lineHeight: 1.4 }}>
        <Box sx={{ flex: 1, minWidth: 0 }}>{label}</Box>
        <Box sx={{ color: 'text.secondary', textAlign: 'right' }}>{value}</Box>
        <Box sx={{ minWidth: 44, textAlign: 'right', fontWeight: 500, color: (t) => t.palette.tones[tone] }}>{word}</Box>
      </Box>
      {track}
    </Box>
  );
}

function Track({ length, mark, tone }: Pick<Bar, 'length' | 'mark' | 'tone'>) {
  const percent = (share: number) => `${100 * Math.min(1, Math.max(0, share))}%`;
  return (
    <Box aria-hidden sx={{ position: 'relative', height: 12, bgcolor: (t) => t.palette.tones.ground, border: 1, borderColor: 'divider' }}>
      <Box
        sx={{ position: 'absolute', inset: '0 auto 0 0', width: percent(length), bgcolor: (t) => t.palette.tones[tone], opacity: 0.75 }}
      />
      {mark !== undefined && (
        <Box sx={{ position: 'absolute', top: -3, bottom: -3, left: percent(mark), width: '2px', ml: '-1px', bgcolor: 'text.primary' }} />
      )}
    </Box>
  );
}
