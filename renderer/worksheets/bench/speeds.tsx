import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { placeWords, type BenchReport, type Reading, type SpeedCandidate } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';

const by: Record<SpeedCandidate['by'], string> = { film: 'film', hertz: 'hertz', written: 'as written', volts: 'volts' };
/** So many of a reading's candidates are shown. */
const SHOWN = 8;

/** How fast the shaft may have turned, where that is in question: a film, or witnesses that do not agree. */
export function Speeds({ report: { speeds }, readings }: { report: BenchReport; readings: Reading[] }) {
  const units = useUnits();
  const open = speeds.filter(({ row, candidates }) => readings[row]?.frameRate ?? (candidates[0]?.disagrees.length ?? 0) > 0);
  if (open.length === 0) return null;
  return (
    <Section title="How fast it turned">
      <Box sx={{ fontSize: 13, color: 'text.secondary', py: 0.5 }}>
        A film only says that the blades moved on by whole spacings from picture to picture. Every such speed is listed, with what speaks
        for and against it.
      </Box>
      <Table size="small" sx={{ maxWidth: 1000 }}>
        <TableHead>
          <TableRow>
            <TableCell>Reading</TableCell>
            <TableCell>By</TableCell>
            <TableCell align="right">Speed</TableCell>
            <TableCell align="right">Plausible</TableCell>
            <TableCell align="right">Tip-speed ratio</TableCell>
            <TableCell>For</TableCell>
            <TableCell>Against</TableCell>
          </TableRow>
        </TableHead>
        <TableBody>
          {open.flatMap(({ row, candidates }) => [
            ...candidates.slice(0, SHOWN).map((c, i) => (
              <TableRow key={`${row} ${c.by} ${c.speed}`}>
                <TableCell>{i === 0 && readings[row] ? `${row + 1}, ${readings[row].label || placeWords(readings[row])}` : ''}</TableCell>
                <TableCell>
                  {c.steps === undefined ? by[c.by] : `${by[c.by]}, ${c.steps}${c.steps === 1 ? ' spacing' : ' spacings'}`}
                </TableCell>
                <TableCell align="right">{format(c.speed, 'speed', units, 4)}</TableCell>
                <TableCell align="right">{format(c.plausibility, 'percent', units, 2)}</TableCell>
                <TableCell align="right">{format(c.tipSpeedRatio, 'ratio', units, 2)}</TableCell>
                <TableCell sx={{ color: 'success.main' }}>{c.agrees.join('; ')}</TableCell>
                <TableCell sx={{ color: 'error.main' }}>{c.disagrees.join('; ')}</TableCell>
              </TableRow>
            )),
            ...(candidates.length > SHOWN
              ? [
                  <TableRow key={`${row} more`}>
                    <TableCell colSpan={7} sx={{ color: 'text.secondary' }}>
                      and {candidates.length - SHOWN} more, none likelier
                    </TableCell>
                  </TableRow>,
                ]
              : []),
          ])}
        </TableBody>
      </Table>
    </Section>
  );
}
