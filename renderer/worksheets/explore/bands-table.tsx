import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { type Band, type Share, type bandsOf } from '../../../core';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';

type Spread = ReturnType<typeof bandsOf>;

const titles = { headline: 'Headlines', meter: 'What the meter reads' } as const;
/** Tolerances named, and the least share that is worth a word. */
const NAMED = 3;
const LEAST_SHARE = 0.05;

/** Every headline and every reading of the meter as it comes out: nine machines in ten lie between the outer two. */
export function BandsTable({ spread: { bands }, shares }: { spread: Spread; shares: Share[][] | null }) {
  const rows = bands.map((band, i) => ({ band, shares: shares?.[i] ?? [] }));
  return (
    <Table size="small" aria-label="Bands">
      {(['headline', 'meter'] as const).map((kind) => (
        <Body key={kind} title={titles[kind]} rows={rows.filter(({ band }) => band.reading.kind === kind)} />
      ))}
    </Table>
  );
}

function Body({ title, rows }: { title: string; rows: { band: Band; shares: Share[] }[] }) {
  const units = useUnits();
  return (
    <>
      <TableHead>
        <TableRow>
          <TableCell>{title}</TableCell>
          {['As drawn', '5 %', 'Middle', '95 %'].map((head) => (
            <TableCell key={head} align="right">
              {head}
            </TableCell>
          ))}
          <TableCell sx={{ width: '18%' }}>−25 … +25 %</TableCell>
          <TableCell>Spend care on</TableCell>
        </TableRow>
      </TableHead>
      <TableBody>
        {rows.map(({ band, shares }) => {
          const { reading, nominal, low, middle, high } = band;
          const shown = (value: number) => format(value, reading.unit, units, 3);
          return (
            <TableRow key={reading.id}>
              <TableCell>
                {reading.label}
                {reading.kind === 'meter' && (reading.unit === 'voltage' ? ', AC at 1000 rpm' : ', ohms in the cold')}
              </TableCell>
              {[nominal, low.value, middle.value, high.value].map((value, i) => (
                <TableCell
                  key={i}
                  align="right"
                  sx={{ whiteSpace: 'nowrap' }}
                  title={i > 0 ? sampling([low, middle, high][i - 1], shown) : undefined}
                >
                  {Number.isFinite(value) ? shown(value) : 'never'}
                </TableCell>
              ))}
              <TableCell>
                <BandBar band={band} />
              </TableCell>
              <TableCell sx={{ fontSize: 12.5 }}>{careOn(shares)}</TableCell>
            </TableRow>
          );
        })}
      </TableBody>
    </>
  );
}

const sampling = (quantile: Band['low'] | undefined, shown: (value: number) => string) =>
  quantile && `Between ${shown(quantile.low)} and ${shown(quantile.high)}, so many machines drawn`;

const careOn = (shares: readonly Share[]) =>
  shares
    .filter(({ share }) => share >= LEAST_SHARE)
    .slice(0, NAMED)
    .map(({ tolerance, share }) => `${tolerance.label.toLowerCase()} ${Math.round(100 * share)} %`)
    .join(', ') || '–';

/** Half-width of the bar, as a share of the number as drawn. */
const REACH = 0.25;

/** The band about the number as drawn, in per cent of it. */
function BandBar({ band: { nominal, low, high, middle } }: { band: Band }) {
  const place = (value: number) => 50 + 50 * Math.min(1, Math.max(-1, (value / nominal - 1) / REACH));
  if (!Number.isFinite(nominal) || nominal === 0) return null;
  const [from, to] = [place(low.value), place(Number.isFinite(high.value) ? high.value : Infinity)];
  return (
    <Box aria-hidden sx={{ position: 'relative', height: 12, bgcolor: (t) => t.palette.tones.ground, border: 1, borderColor: 'divider' }}>
      <Box
        sx={{ position: 'absolute', top: 0, bottom: 0, left: `${from}%`, width: `${to - from}%`, bgcolor: 'primary.main', opacity: 0.6 }}
      />
      <Box
        sx={{
          position: 'absolute',
          top: -2,
          bottom: -2,
          left: `${place(middle.value)}%`,
          width: '2px',
          ml: '-1px',
          bgcolor: 'primary.main',
        }}
      />
      <Box sx={{ position: 'absolute', top: -3, bottom: -3, left: '50%', width: '1px', bgcolor: 'text.primary' }} />
    </Box>
  );
}
