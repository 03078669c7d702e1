import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { expectedReadings } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import type { FigureProps } from '../worksheet';

const rows = [
  { on: 'coil', name: 'One coil' },
  { on: 'phase', name: 'One phase' },
  { on: 'line', name: 'Between two terminals' },
] as const;

/** What the meter must read before the machine is closed up. */
export function ExpectedTable({ design, results }: FigureProps) {
  const units = useUnits();
  const { temperature, ohms, speeds } = expectedReadings(design, results);
  return (
    <Section title="What the meter must read">
      <Table size="small" sx={{ maxWidth: 860 }}>
        <TableHead>
          <TableRow>
            <TableCell>Meter on</TableCell>
            <TableCell align="right">Ohms at {format(temperature, 'temperature', units)}</TableCell>
            {speeds.map(({ rpm }) => (
              <TableCell key={rpm} align="right">
                AC at {rpm} rpm
              </TableCell>
            ))}
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map(({ on, name }) => (
            <TableRow key={on}>
              <TableCell>{name}</TableCell>
              <TableCell align="right">{format(ohms[on], 'resistance', units)}</TableCell>
              {speeds.map((speed) => (
                <TableCell key={speed.rpm} align="right">
                  {format(speed[on], 'voltage', units)}
                </TableCell>
              ))}
            </TableRow>
          ))}
          <TableRow>
            <TableCell>Frequency</TableCell>
            <TableCell />
            {speeds.map(({ rpm, hertz }) => (
              <TableCell key={rpm} align="right">
                {format(hertz, 'frequency', units)}
              </TableCell>
            ))}
          </TableRow>
        </TableBody>
      </Table>
    </Section>
  );
}
