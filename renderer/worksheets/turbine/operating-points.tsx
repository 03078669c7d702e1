import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import type { Design, Results } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format, type UnitPreferences } from '../../units';
import { balanceInWords, rangesInWords } from './words';

/** At which speeds wheel and generator balance in rated wind, and what they do from calm to the greatest wind of the charts. */
export function OperatingPoints({ design, results }: { design: Design; results: Results }) {
  const units = useUnits();
  const { balances } = results.stages;
  const ratioAt = (rpm: number) => (rpm * Math.PI * design.turbine.diameter) / (60 * results.rated.wind);
  return (
    <Section title="Operating points">
      <Table size="small" aria-label={`Operating points at ${format(results.rated.wind, 'windSpeed', units)}`}>
        <TableHead>
          <TableRow>
            <TableCell align="right">Speed at rated wind</TableCell>
            <TableCell align="right">Tip-speed ratio</TableCell>
            <TableCell>What holds it</TableCell>
          </TableRow>
        </TableHead>
        <TableBody>
          {balances.length === 0 && (
            <TableRow>
              <TableCell colSpan={3}>None: the load holds the wheel at standstill.</TableCell>
            </TableRow>
          )}
          {balances.map(({ rpm, stable }, i) => (
            <TableRow key={rpm}>
              <TableCell align="right">{format(rpm, 'rpm', units)}</TableCell>
              <TableCell align="right">{format(ratioAt(rpm), 'ratio', units, 3)}</TableCell>
              <TableCell>
                <b>{stable ? 'Stable' : 'Unstable'}.</b> {balanceInWords(balances, i, units)}
              </TableCell>
            </TableRow>
          ))}
        </TableBody>
      </Table>
      <Ranges results={results} units={units} />
    </Section>
  );
}

function Ranges({ results, units }: { results: Results; units: UnitPreferences }) {
  return (
    <Box component="ul" aria-label="From calm to storm" sx={{ m: 0, mt: 1, pl: 2.5, fontSize: 13, lineHeight: 1.7 }}>
      {rangesInWords(results, units).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </Box>
  );
}
