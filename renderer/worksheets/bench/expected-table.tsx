import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import type { FigureProps } from '../worksheet';
import { benchSpeeds, expectedOn, type On } from './expected';

const rows: { on: On; name: string }[] = [
  { on: 'coil', name: 'One coil' },
  { on: 'phase', name: 'One phase' },
  { on: 'line', name: 'Between two terminals' },
];

/** What the meter must read before the machine is closed up. */
export function ExpectedTable({ design, results }: FigureProps) {
  const units = useUnits();
  return (
    <Section title="What the meter must read">
      <Table size="small" sx={{ maxWidth: 860 }}>
        <TableHead>
          <TableRow>
            <TableCell>Meter on</TableCell>
            <TableCell align="right">Ohms at {format(20, 'temperature', units)}</TableCell>
            {benchSpeeds.map((rpm) => (
              <TableCell key={rpm} align="right">
                AC volts at {rpm} rpm
              </TableCell>
            ))}
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map(({ on, name }) => {
            const expected = expectedOn(on, design, results);
            return (
              <TableRow key={on}>
                <TableCell>{name}</TableCell>
                <TableCell align="right">{format(expected?.ohms20, 'resistance', units)}</TableCell>
                {benchSpeeds.map((rpm) => (
                  <TableCell key={rpm} align="right">
                    {format(expected && (expected.voltsPer1000rpm * rpm) / 1000, 'voltage', units)}
                  </TableCell>
                ))}
              </TableRow>
            );
          })}
          <TableRow>
            <TableCell>Frequency</TableCell>
            <TableCell />
            {benchSpeeds.map((rpm) => (
              <TableCell key={rpm} align="right">
                {format((results.emf.hertzPer1000rpm * rpm) / 1000, 'frequency', units)}
              </TableCell>
            ))}
          </TableRow>
        </TableBody>
      </Table>
    </Section>
  );
}
