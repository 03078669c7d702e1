import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import IconButton from '@mui/material/IconButton';
import InputBase from '@mui/material/InputBase';
import NativeSelect from '@mui/material/NativeSelect';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import type { Design, Quantity, Reading, Results } from '../../../core';
import { boxStyle } from '../../parts/box-style';
import { AddIcon, RemoveIcon } from '../../parts/icons';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editList, setFault, settleEntry, useDesign } from '../../state/design';
import { entryUnit, format } from '../../units';
import { compared, verdict, type Comparison, type On } from './expected';

type NumberKey = 'number' | 'speed' | 'temperature' | 'ohms' | 'volts' | 'hertz';
interface Column {
  key: NumberKey;
  quantity: Quantity;
  range: { min: number; max: number; whole?: 'any' };
}

const column = (key: NumberKey, label: string, unit: Quantity['unit'], min: number, max: number, whole?: 'any'): Column => ({
  key,
  quantity: { label, unit, meaning: label },
  range: { min, max, whole },
});
const columns = [
  column('number', 'No.', 'count', 1, 120, 'any'),
  column('speed', 'Speed', 'speed', 0, 2000),
  column('temperature', 'Copper', 'temperature', -60, 200),
  column('ohms', 'Read', 'resistance', 0, 1e6),
  column('volts', 'Read', 'voltage', 0, 5000),
  column('hertz', 'Read', 'frequency', 0, 5000),
];

const ons: Record<On, string> = { coil: 'coil', run: 'run of coils', phase: 'phase', line: 'two terminals', dc: 'DC side' };
const kinds = { ohms: 'resistance', volts: 'voltage', hertz: 'frequency' } as const;
const colors = { good: 'success.main', fair: 'warning.main', bad: 'error.main' } as const;

interface Props {
  readings: Reading[];
  design: Design;
  results: Results;
}

/** What the meter did read, line by line, with how far it is off and what that means. */
export function ReadingsTable({ readings, design, results }: Props) {
  const units = useUnits();
  const faults = useDesign((s) => s.faults);
  const edit = (next: (list: Reading[]) => Reading[]) => editList('bench', next, () => 'bench readings');
  const change = (i: number, part: Partial<Reading>) =>
    edit((list) => list.map((reading, j) => (i === j ? withoutEmpty({ ...reading, ...part }) : reading)));
  const add = () => {
    edit((list) => {
      const last = list.at(-1);
      return [...list, last ? { label: '', on: last.on, number: last.number + 1 } : { label: '', on: 'coil', number: 1 }];
    });
    settleEntry();
  };
  return (
    <Section title="What it did read">
      {readings.length > 0 && (
        <Table size="small">
          <TableHead>
            <TableRow>
              <TableCell>Note</TableCell>
              <TableCell>Meter on</TableCell>
              {columns.map(({ key, quantity }) => (
                <TableCell key={key} align="right">
                  {quantity.label} {entryUnit(quantity.unit, units)}
                </TableCell>
              ))}
              <TableCell>Should be</TableCell>
              <TableCell>Off by</TableCell>
              <TableCell sx={{ width: '26%' }}>That is</TableCell>
              <TableCell component="td" />
            </TableRow>
          </TableHead>
          <TableBody>
            {readings.map((reading, i) => {
              const name = `reading ${i + 1}`;
              const comparisons = compared(reading, design, results);
              return (
                <TableRow key={i} sx={{ '& td': { verticalAlign: 'top' } }}>
                  <TableCell>
                    <InputBase
                      value={reading.label}
                      onChange={(event) => change(i, { label: event.target.value })}
                      onBlur={settleEntry}
                      slotProps={{ input: { 'aria-label': `Note of ${name}`, maxLength: 80 } }}
                      sx={[boxStyle as object, { minWidth: 96, '& input': { textAlign: 'left' } }]}
                    />
                  </TableCell>
                  <TableCell>
                    <NativeSelect
                      value={reading.on}
                      disableUnderline
                      inputProps={{ 'aria-label': `What the meter was on in ${name}` }}
                      onChange={(event) => {
                        change(i, { on: event.target.value as On });
                        settleEntry();
                      }}
                      sx={[boxStyle as object, { minWidth: 112 }]}
                    >
                      {Object.entries(ons).map(([on, word]) => (
                        <option key={on} value={on}>
                          {word}
                        </option>
                      ))}
                    </NativeSelect>
                  </TableCell>
                  {columns.map(({ key, quantity, range }) => (
                    <TableCell key={key}>
                      <QuantityCell
                        name={`${quantity.label} ${entryUnit(quantity.unit, units)} of ${name}`}
                        quantity={quantity}
                        range={range}
                        optional={key !== 'number'}
                        value={reading[key]}
                        onChange={(value) => change(i, { [key]: value })}
                        fault={faults[`bench[${i}].${key}`]}
                        onFault={(message) => setFault(`bench[${i}].${key}`, message)}
                        onSettle={settleEntry}
                      />
                    </TableCell>
                  ))}
                  <Comparisons comparisons={comparisons} />
                  <TableCell>
                    <IconButton
                      size="small"
                      aria-label={`Remove ${name}`}
                      onClick={() => {
                        edit((list) => list.filter((_, j) => j !== i));
                        settleEntry();
                      }}
                    >
                      <RemoveIcon />
                    </IconButton>
                  </TableCell>
                </TableRow>
              );
            })}
          </TableBody>
        </Table>
      )}
      <Button startIcon={<AddIcon />} onClick={add} sx={{ mt: 1 }}>
        Add a reading
      </Button>
    </Section>
  );
}

function Comparisons({ comparisons }: { comparisons: Comparison[] }) {
  const units = useUnits();
  const lines = comparisons.map((c) => ({ ...c, verdict: verdict(c) }));
  return (
    <>
      <TableCell>
        {lines.map((c) => (
          <Box key={c.what} sx={{ whiteSpace: 'nowrap' }}>
            {format(c.expected, kinds[c.what], units, 3)}
          </Box>
        ))}
      </TableCell>
      <TableCell>
        {lines.map((c) => (
          <Box key={c.what} sx={{ whiteSpace: 'nowrap' }}>
            {signedPercent(c.deviation)}
          </Box>
        ))}
      </TableCell>
      <TableCell>
        {lines.length === 0 && <Box sx={{ color: 'text.secondary' }}>enter ohms, or a speed and volts</Box>}
        {lines.map((c) => (
          <Box key={c.what} sx={{ color: colors[c.verdict.tone] }}>
            {c.verdict.text}
          </Box>
        ))}
      </TableCell>
    </>
  );
}

const withoutEmpty = (reading: Reading): Reading =>
  Object.fromEntries(Object.entries(reading).filter(([, value]) => value !== undefined)) as Reading;

/** To a tenth of a per cent: a meter tells no more. */
const signedPercent = (fraction: number) => `${fraction < 0 ? '−' : '+'}${Math.abs(fraction * 100).toFixed(1)} %`;
