import Box from '@mui/material/Box';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { entryAt, type Design } from '../../../core';
import { QuantityCell } from '../../parts/quantity-cell';
import { useUnits } from '../../parts/unit-preferences';
import { valueAt } from '../../path';
import { setFault, settleEntry, useDesign } from '../../state/design';
import { entryStep, entryUnit, format } from '../../units';
import { quantityAt } from '../../words';
import { axes, editSearch, searchOf, type AxisKey } from './search-entries';

const ends = [
  { key: 'from', label: 'From' },
  { key: 'to', label: 'To' },
  { key: 'step', label: 'Step' },
] as const;

/** Ranges of numbers that the search runs through; one that is not ticked stays as the design is. */
export function SpaceTable({ design }: { design: Design }) {
  return (
    <Table size="small">
      <TableHead>
        <TableRow>
          <TableCell>Vary</TableCell>
          {ends.map(({ key, label }) => (
            <TableCell key={key} align="right" sx={{ width: 92 }}>
              {label}
            </TableCell>
          ))}
        </TableRow>
      </TableHead>
      <TableBody>
        {axes.map(({ key, entry }) => (
          <AxisRow key={key} axis={key} entry={entry} design={design} />
        ))}
      </TableBody>
    </Table>
  );
}

function AxisRow({ axis, entry, design }: { axis: AxisKey; entry: string; design: Design }) {
  const units = useUnits();
  const faults = useDesign((s) => s.faults);
  const range = searchOf(design)[axis];
  const own = valueAt(design, entry) as number | undefined;
  const quantity = quantityAt(entry);
  const unit = entryUnit(quantity.unit, units);
  const number = entryAt(`search.${axis}.from`, design)?.number;
  if (!number) return null;
  const { whole } = number;
  const toggle = () => {
    const at = own ?? number.default;
    const step = whole === 'even' ? 2 : whole ? 1 : 10 * entryStep(at / 10, quantity.unit, units);
    const to = Math.min(number.max, at + 4 * step);
    editSearch((search) => ({ ...search, [axis]: range ? undefined : { from: at, to, step: to > at ? step : Math.max(step, 1e-5) } }));
    settleEntry();
  };
  return (
    <TableRow>
      <TableCell>
        <Box component="label" sx={{ display: 'flex', alignItems: 'center', gap: 0.75 }}>
          <input type="checkbox" checked={range !== undefined} onChange={toggle} />
          {quantity.label}
          {unit && (
            <Box component="span" sx={{ color: 'text.secondary' }}>
              {unit}
            </Box>
          )}
        </Box>
      </TableCell>
      {range ? (
        ends.map(({ key, label }) => {
          const path = `search.${axis}.${key}`;
          const limits = entryAt(path, design)?.number ?? number;
          return (
            <TableCell key={key}>
              <QuantityCell
                name={`${quantity.label}, ${label.toLowerCase()}`}
                quantity={quantity}
                range={limits}
                value={range[key]}
                onChange={(value) => editSearch((search) => ({ ...search, [axis]: { ...range, [key]: value } }), true)}
                fault={faults[path]}
                onFault={(message) => setFault(path, message)}
                onSettle={settleEntry}
              />
            </TableCell>
          );
        })
      ) : (
        <TableCell colSpan={3} align="right" sx={{ color: 'text.secondary', height: 35 }}>
          {own === undefined ? 'as usual for the poles' : `stays at ${format(own, quantity.unit, units)}`}
        </TableCell>
      )}
    </TableRow>
  );
}
