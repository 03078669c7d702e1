import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import IconButton from '@mui/material/IconButton';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import type { Quantity } from '../../../core';
import { AddIcon, RemoveIcon } from '../../parts/icons';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { editEntry, editList, setFault, settleEntry, useDesign } from '../../state/design';
import { quantityAt } from '../../words';

type Point = [tipSpeedRatio: number, powerCoefficient: number];

const columns: { quantity: Quantity; range: { min: number; max: number } }[] = [
  { quantity: { label: 'Tip-speed ratio', unit: 'ratio', meaning: 'Blade-tip speed over wind speed' }, range: { min: 0, max: 30 } },
  { quantity: { label: 'Power coefficient', unit: 'ratio', meaning: 'Share of the wind’s power' }, range: { min: -1, max: 1 } },
];
const FEWEST = 3; // as the design file allows

/** The wheel's own curve as measured, in place of the three numbers. */
export function Panel() {
  const turbine = useDesign((s) => s.design.turbine);
  const faults = useDesign((s) => s.faults);
  const points = turbine.curve;
  const edit = (next: (list: Point[]) => Point[]) => editList('turbine.curve', next, () => 'measured curve');
  const act = (next: (list: Point[]) => Point[]) => {
    edit(next);
    settleEntry();
  };
  const end = () => editEntry('turbine.curve', undefined, () => 'measured curve');
  const begin = () => {
    const { tipSpeedRatio, peakCp, runawayRatio } = turbine;
    act(() => [
      [0, 0],
      [tipSpeedRatio, peakCp],
      [runawayRatio, 0],
    ]);
  };
  const add = () =>
    act((list) => {
      const last = list.at(-1) ?? [0, 0];
      return [...list, [last[0] + 1, last[1]]];
    });
  return (
    <Section title={quantityAt('turbine.curve').label}>
      {points ? (
        <>
          <Table size="small" sx={{ maxWidth: 420 }}>
            <TableHead>
              <TableRow>
                {columns.map(({ quantity }) => (
                  <TableCell key={quantity.label} align="right">
                    {quantity.label}
                  </TableCell>
                ))}
                <TableCell component="td" />
              </TableRow>
            </TableHead>
            <TableBody>
              {points.map((point, i) => (
                <TableRow key={i}>
                  {columns.map(({ quantity, range }, j) => (
                    <TableCell key={quantity.label}>
                      <QuantityCell
                        name={`${quantity.label} of point ${i + 1}`}
                        quantity={quantity}
                        range={range}
                        value={point[j]}
                        onChange={(value) => edit((list) => list.map((p, k) => (k === i ? changed(p, j, value ?? 0) : p)))}
                        fault={faults[`turbine.curve[${i}][${j}]`]}
                        onFault={(message) => setFault(`turbine.curve[${i}][${j}]`, message)}
                        onSettle={settleEntry}
                      />
                    </TableCell>
                  ))}
                  <TableCell>
                    <IconButton
                      size="small"
                      aria-label={`Remove point ${i + 1}`}
                      disabled={points.length <= FEWEST}
                      onClick={() => act((list) => list.filter((_, k) => k !== i))}
                    >
                      <RemoveIcon />
                    </IconButton>
                  </TableCell>
                </TableRow>
              ))}
            </TableBody>
          </Table>
          <Button startIcon={<AddIcon />} onClick={() => add()} sx={{ mt: 1 }}>
            Add a point
          </Button>
          <Button onClick={end} sx={{ mt: 1 }}>
            Go back to the three numbers
          </Button>
        </>
      ) : (
        <Box sx={{ display: 'flex', alignItems: 'center', gap: 1.5, py: 1, fontSize: 13, color: 'text.secondary' }}>
          The wheel is described by its three numbers.
          <Button variant="outlined" onClick={begin}>
            Enter a measured curve
          </Button>
        </Box>
      )}
    </Section>
  );
}

const changed = (point: Point, place: number, value: number): Point => (place === 0 ? [value, point[1]] : [point[0], value]);
