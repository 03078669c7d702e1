import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { entryAt, type Design, type ObjectiveId } from '../../../core';
import { QuantityCell } from '../../parts/quantity-cell';
import { useUnits } from '../../parts/unit-preferences';
import { setFault, settleEntry, useDesign } from '../../state/design';
import { entryUnit } from '../../units';
import { weighedBy } from './machine-words';
import { editSearch, searchOf } from './search-entries';

/** What machines are weighed by: the limit each must keep to, and how much it counts in the order of the table. */
export function AimsTable({ design }: { design: Design }) {
  const units = useUnits();
  const faults = useDesign((s) => s.faults);
  const search = searchOf(design);
  const edit = (of: 'limits' | 'weights', id: ObjectiveId, value: number | undefined) =>
    editSearch((now) => {
      const kept = Object.entries({ ...now[of], [id]: value }).filter(([, v]) => v !== undefined);
      return { ...now, [of]: Object.fromEntries(kept) };
    }, true);
  return (
    <Table size="small">
      <TableHead>
        <TableRow>
          <TableCell>Weigh</TableCell>
          <TableCell />
          <TableCell align="right" sx={{ width: 92 }}>
            Limit
          </TableCell>
          <TableCell align="right" sx={{ width: 76 }}>
            Counts
          </TableCell>
        </TableRow>
      </TableHead>
      <TableBody>
        {weighedBy(design).map(({ id, label, unit: kind, best, meaning }) => {
          const unit = entryUnit(kind, units);
          const quantity = { label, unit: kind, meaning };
          const cell = (of: 'limits' | 'weights', name: string) => {
            const path = `search.${of}.${id}`;
            const isWeight = of === 'weights';
            return (
              <QuantityCell
                name={`${label}, ${name}`}
                quantity={isWeight ? { ...quantity, unit: 'count' } : quantity}
                range={(isWeight ? weightRange : entryAt(path, { ...design, search })?.number) ?? weightRange}
                optional={!isWeight}
                value={isWeight ? (search.weights?.[id] ?? 1) : search.limits?.[id]}
                onChange={(value) => edit(of, id, value)}
                fault={faults[path]}
                onFault={(message) => setFault(path, message)}
                onSettle={settleEntry}
              />
            );
          };
          return (
            <TableRow key={id} title={meaning}>
              <TableCell>
                {label}
                {unit && `, ${unit}`}
              </TableCell>
              <TableCell sx={{ color: 'text.secondary', whiteSpace: 'nowrap' }}>{best === 'least' ? 'at most' : 'at least'}</TableCell>
              <TableCell>{cell('limits', 'limit')}</TableCell>
              <TableCell>{cell('weights', 'weight')}</TableCell>
            </TableRow>
          );
        })}
      </TableBody>
    </Table>
  );
}

const weightRange = { min: 0, max: 10 };
