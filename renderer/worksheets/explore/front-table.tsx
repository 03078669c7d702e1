import Button from '@mui/material/Button';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import TableSortLabel from '@mui/material/TableSortLabel';
import { memo, useMemo, useState } from 'react';
import { marks, type Design, type Found, type Objective } from '../../../core';
import { useUnits } from '../../parts/unit-preferences';
import { format, type UnitPreferences } from '../../units';
import { choiceWord } from '../../words';
import { columnsThatDiffer, frameWord, nameOf, weighedBy } from './machine-words';
import { searchOf } from './search-entries';

interface Props {
  design: Design;
  found: readonly Found[];
  onOpen: (found: Found) => void;
}

/** Lines shown before more are asked for. */
const FIRST_LINES = 25;

/** The machines found, in any order the reader likes: first by what counts, weighed. */
export function FrontTable({ design, found, onOpen }: Props) {
  const units = useUnits();
  const [sort, setSort] = useState<{ id: string; down: boolean }>({ id: 'mark', down: true });
  const [lines, setLines] = useState(FIRST_LINES);
  const { weights } = searchOf(design);
  const weighed = useMemo(() => weighedBy(design), [design]);
  const rows = useMemo(() => {
    const marked = marks(
      found.map((each) => each.objectives),
      weights ?? {},
    );
    const all = found.map((each, i) => ({ each, mark: marked[i] ?? 0 }));
    const objective = weighed.find(({ id }) => id === sort.id);
    const value = ({ each, mark }: (typeof all)[number]) =>
      objective ? each.objectives[objective.id] : sort.id === 'turns' ? each.candidate.turns : mark;
    return all.sort((a, b) => (sort.down ? -1 : 1) * (value(a) - value(b)));
  }, [found, weights, weighed, sort]);
  const names = columnsThatDiffer(found, units).join();
  const differing = useMemo(() => names.split(',').filter(Boolean), [names]);
  const head = (id: string, label: string, downFirst: boolean) => (
    <TableCell key={id} align="right" sortDirection={sort.id === id ? (sort.down ? 'desc' : 'asc') : false}>
      <TableSortLabel
        active={sort.id === id}
        direction={sort.id === id ? (sort.down ? 'desc' : 'asc') : downFirst ? 'desc' : 'asc'}
        onClick={() => setSort({ id, down: sort.id === id ? !sort.down : downFirst })}
      >
        {label}
      </TableSortLabel>
    </TableCell>
  );
  return (
    <>
      <Table size="small" aria-label="Machines found">
        <TableHead>
          <TableRow>
            {head('mark', 'Mark', true)}
            <TableCell>Reel</TableCell>
            <TableCell align="right">In hand</TableCell>
            {head('turns', 'Turns', false)}
            <TableCell>Connection</TableCell>
            {differing.map((column) => (
              <TableCell key={column} align="right">
                {column}
              </TableCell>
            ))}
            {weighed.map(({ id, label, best }) => head(id, label, best === 'most'))}
            <TableCell component="td" />
          </TableRow>
        </TableHead>
        <TableBody>
          {rows.slice(0, lines).map(({ each, mark }) => (
            <Row key={JSON.stringify(each.candidate)} {...{ weighed, units, each, differing, onOpen }} mark={Math.round(100 * mark)} />
          ))}
        </TableBody>
      </Table>
      {rows.length > lines && <Button onClick={() => setLines(4 * lines)}>Show more of the {rows.length}</Button>}
    </>
  );
}

interface RowProps extends Pick<Props, 'onOpen'> {
  weighed: readonly Objective[];
  units: UnitPreferences;
  each: Found;
  mark: number;
  differing: readonly string[];
}

/** Machines come in while a search runs; the lines that stay are left alone. */
const Row = memo(function Row({ weighed, units, each, mark, differing, onOpen }: RowProps) {
  const { candidate, objectives: values } = each;
  return (
    <TableRow hover>
      <TableCell align="right">{mark}</TableCell>
      <TableCell>{candidate.reel.label}</TableCell>
      <TableCell align="right">{candidate.inHand}</TableCell>
      <TableCell align="right">{candidate.turns}</TableCell>
      <TableCell>{choiceWord(candidate.connection)}</TableCell>
      {differing.map((column) => (
        <TableCell key={column} align="right" style={{ whiteSpace: 'nowrap' }}>
          {frameWord(column, candidate, units)}
        </TableCell>
      ))}
      {weighed.map((objective) => (
        <TableCell key={objective.id} align="right" style={{ whiteSpace: 'nowrap' }}>
          {format(values[objective.id], objective.unit, units, 3)}
        </TableCell>
      ))}
      <TableCell>
        <Button size="small" onClick={() => onOpen(each)} aria-label={`Open ${nameOf(candidate)}`}>
          Open
        </Button>
      </TableCell>
    </TableRow>
  );
});
