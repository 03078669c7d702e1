import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import type { BenchReport, FieldTest, Reading, UnitKind, WrongReading } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { format, type UnitPreferences } from '../../units';
import { CoefficientPlot } from './coefficient-plot';

const words = { possible: 'possible', doubtful: 'doubtful', impossible: 'impossible' } as const;
const colors = { possible: 'success.main', doubtful: 'warning.main', impossible: 'error.main' } as const;
const names: Record<WrongReading['what'], { name: string; kind: UnitKind }> = {
  wind: { name: 'the wind was', kind: 'windSpeed' },
  volts: { name: 'the volts were', kind: 'voltage' },
  amps: { name: 'the amps were', kind: 'current' },
  diameter: { name: 'the wheel measures', kind: 'longLength' },
  'air density': { name: 'the air was', kind: 'density' },
};

/** What the wheel took of the wind, and whether any wheel can have. */
export function FieldTests({
  report,
  readings,
  curve,
}: {
  report: BenchReport;
  readings: Reading[];
  curve: { ratio: number[]; coefficient: number[] };
}) {
  const units = useUnits();
  const { tests } = report;
  if (tests.length === 0) return null;
  return (
    <Section title="In the wind">
      <Box sx={{ display: 'grid', gridTemplateColumns: { xs: 'minmax(0, 1fr)', lg: 'minmax(0, 1.3fr) minmax(0, 1fr)' }, gap: 2, pt: 1 }}>
        <Box sx={{ minWidth: 0, overflowX: 'auto' }}>
          <Table size="small">
            <TableHead>
              <TableRow>
                <TableCell>Reading</TableCell>
                <TableCell align="right">Wind</TableCell>
                <TableCell align="right">Into load</TableCell>
                <TableCell align="right">In the wind</TableCell>
                <TableCell align="right">Tip-speed ratio</TableCell>
                <TableCell align="right">Power coefficient</TableCell>
                <TableCell>That is</TableCell>
              </TableRow>
            </TableHead>
            <TableBody>
              {tests.map((test) => (
                <TableRow key={test.row}>
                  <TableCell>{readings[test.row]?.label || `reading ${test.row + 1}`}</TableCell>
                  <TableCell align="right">{format(test.wind, 'windSpeed', units, 3)}</TableCell>
                  <TableCell align="right">{format(test.watts, 'power', units, 3)}</TableCell>
                  <TableCell align="right">{format(test.windWatts, 'power', units, 3)}</TableCell>
                  <TableCell align="right">{format(test.tipSpeedRatio, 'ratio', units, 3)}</TableCell>
                  <TableCell align="right">
                    {format(test.coefficient, 'ratio', units, 2)}{' '}
                    <Box component="span" sx={{ color: 'text.secondary', fontSize: 12, whiteSpace: 'nowrap' }}>
                      ({format(test.low, 'ratio', units, 2)} to {format(test.high, 'ratio', units, 2)})
                    </Box>
                  </TableCell>
                  <TableCell sx={{ color: colors[test.verdict] }}>{words[test.verdict]}</TableCell>
                </TableRow>
              ))}
            </TableBody>
          </Table>
          {tests
            .filter(({ verdict }) => verdict !== 'possible')
            .map((test) => (
              <Explained key={test.row} test={test} units={units} />
            ))}
          <Box sx={{ fontSize: 12.5, color: 'text.secondary', mt: 1 }}>
            The coefficient is of the wheel where the speed is known, else of wheel and generator together. 5 % of wind are 15 % of power:
            the bounds hold the wind’s own uncertainty, gusts counted.
          </Box>
        </Box>
        <CoefficientPlot tests={tests} curve={curve} />
      </Box>
    </Section>
  );
}

function Explained({ test, units }: { test: FieldTest; units: UnitPreferences }) {
  return (
    <Box sx={{ mt: 1, fontSize: 13 }}>
      Reading {test.row + 1}: no wheel of these rows takes more than {format(test.ceiling, 'ratio', units, 3)} of the wind. Likeliest first,
      <Box component="ol" sx={{ m: 0, pl: 2.5 }}>
        {test.wrong.map(({ what, read, needed, deviations }) => (
          <li key={what}>
            {names[what].name} {format(needed, names[what].kind, units, 3)}, not {format(read, names[what].kind, units, 3)} (
            {deviations < 10 ? deviations.toFixed(1) : 'more than 10'} standard deviations)
          </li>
        ))}
      </Box>
    </Box>
  );
}
