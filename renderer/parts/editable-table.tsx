import IconButton from '@mui/material/IconButton';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import type { ReactNode } from 'react';
import { RemoveIcon } from './icons';

export interface EditableColumn<Row> {
  head: string;
  align?: 'right';
  /** What stands in the column: a box, a choice, words. */
  cell: (row: Row, place: number) => ReactNode;
}

interface Props<Row> {
  columns: readonly EditableColumn<Row>[];
  rows: readonly Row[];
  /** What a row is called, for who does not see the table. */
  nameOf: (row: Row, place: number) => string;
  onRemove: (place: number) => void;
  /** Rows below which none may be taken out. */
  fewest?: number;
  maxWidth: number;
}

/** A list whose rows are edited in place, each with a button that takes it out. */
export function EditableTable<Row>({ columns, rows, nameOf, onRemove, fewest = 0, maxWidth }: Props<Row>) {
  return (
    <div style={{ overflowX: 'auto' }}>
      <Table size="small" sx={{ maxWidth }}>
        <TableHead>
          <TableRow>
            {columns.map(({ head, align }) => (
              <TableCell key={head} align={align}>
                {head}
              </TableCell>
            ))}
            <TableCell component="td" />
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.map((row, place) => (
            <TableRow key={place}>
              {columns.map(({ head, cell }) => (
                <TableCell key={head}>{cell(row, place)}</TableCell>
              ))}
              <TableCell>
                <IconButton
                  size="small"
                  aria-label={`Remove ${nameOf(row, place)}`}
                  disabled={rows.length <= fewest}
                  onClick={() => onRemove(place)}
                >
                  <RemoveIcon />
                </IconButton>
              </TableCell>
            </TableRow>
          ))}
        </TableBody>
      </Table>
    </div>
  );
}
