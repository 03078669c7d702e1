import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import type { FigureProps } from '../worksheet';

const kinds = { V: 'voltage', A: 'current', W: 'power' } as const;
const colors = { pass: 'success.main', tight: 'warning.main', fail: 'error.main' } as const;

/** The situations a controller meets, each with its margin and what to change. */
export function Panel({ results }: FigureProps) {
  const units = useUnits();
  return (
    <Section title="Controller check">
      {results.controller.length === 0 ? (
        <Box sx={{ py: 1, color: 'text.secondary', fontSize: 13 }}>Enter the controller’s data sheet to have it checked.</Box>
      ) : (
        <Table size="small">
          <TableHead>
            <TableRow>
              <TableCell>Situation</TableCell>
              <TableCell align="right">Comes</TableCell>
              <TableCell align="right">Limit</TableCell>
              <TableCell align="right">Margin</TableCell>
              <TableCell>Verdict</TableCell>
              <TableCell>What to do</TableCell>
            </TableRow>
          </TableHead>
          <TableBody>
            {results.controller.map((v) => (
              <TableRow key={v.situation}>
                <TableCell>{v.situation}</TableCell>
                <TableCell align="right">{format(v.value, kinds[v.unit], units, 3)}</TableCell>
                <TableCell align="right">{format(v.limit, kinds[v.unit], units, 3)}</TableCell>
                <TableCell align="right">{signedPercent(v.margin)}</TableCell>
                <TableCell sx={{ color: colors[v.verdict], fontWeight: 500 }}>{v.verdict}</TableCell>
                <TableCell>{v.advice}</TableCell>
              </TableRow>
            ))}
          </TableBody>
        </Table>
      )}
    </Section>
  );
}

/** Room left, in whole per cent with its sign. */
const signedPercent = (share: number) => `${share < 0 ? '−' : '+'}${Math.abs(100 * share).toFixed(0)} %`;
