import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import TableSortLabel from '@mui/material/TableSortLabel';
import { useEffect, useRef, useState } from 'react';
import type { UnitKind } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editEntries, useDesign } from '../../state/design';
import { format } from '../../units';
import { searchShelf, wound, type Candidate } from './search';

interface Column {
  id: string;
  label: string;
  kind: UnitKind;
  value: (c: Candidate) => number | null | undefined;
}

const columns: Column[] = [
  { id: 'inHand', label: 'In hand', kind: 'count', value: (c) => c.inHand },
  { id: 'turns', label: 'Turns', kind: 'count', value: (c) => c.turns },
  { id: 'cutIn', label: 'Cut-in wind', kind: 'windSpeed', value: (c) => c.results.cutIn.wind },
  { id: 'amps', label: 'Rated amps', kind: 'current', value: (c) => c.results.rated.dcAmps },
  { id: 'watts', label: 'Rated watts', kind: 'power', value: (c) => c.results.rated.dcWatts },
  { id: 'hot', label: 'Coil', kind: 'temperature', value: (c) => c.results.rated.coilTemperature },
  { id: 'year', label: 'Year', kind: 'energy', value: (c) => c.results.year.energy },
  { id: 'length', label: 'Wire', kind: 'longLength', value: (c) => c.results.coils.wireLength },
  { id: 'mass', label: 'Mass', kind: 'mass', value: (c) => c.results.coils.wireMass },
  { id: 'cost', label: 'Cost', kind: 'price', value: (c) => c.cost },
];

/** What the search found, in any order the reader likes; a line put into the design is one step to undo. */
export function Candidates() {
  const units = useUnits();
  const design = useDesign((s) => s.design);
  const [found, setFound] = useState<Candidate[]>([]);
  const [searching, setSearching] = useState(false);
  const [sort, setSort] = useState<{ id: string; down: boolean }>({ id: 'year', down: true });
  const stopped = useRef(false);
  useEffect(
    () => () => {
      stopped.current = true;
    },
    [],
  );

  const search = async () => {
    stopped.current = false;
    setFound([]);
    setSearching(true);
    await searchShelf(
      design,
      (candidate) => setFound((all) => [...all, candidate]),
      () => stopped.current,
    );
    setSearching(false);
  };
  const apply = (c: Candidate) => {
    const { wire, turns } = wound(design, c.reel, c.inHand, c.turns).winding;
    editEntries({ 'winding.wire': wire, 'winding.turns': turns }, `${c.reel.label}, ${c.inHand} in hand, ${c.turns} turns`);
  };
  const by = columns.find((c) => c.id === sort.id);
  const rows = by ? [...found].sort((a, b) => (sort.down ? -1 : 1) * ((by.value(a) ?? Infinity) - (by.value(b) ?? Infinity))) : found;
  const reels = design.shelf?.length ?? 0;

  return (
    <Section title="What they can become">
      <Box sx={{ display: 'flex', gap: 1.5, alignItems: 'center', py: 1, fontSize: 13, color: 'text.secondary' }}>
        {searching ? (
          <Button variant="outlined" onClick={() => (stopped.current = true)}>
            Stop
          </Button>
        ) : (
          <Button variant="outlined" disabled={reels === 0} onClick={() => void search()}>
            Search
          </Button>
        )}
        <span role="status">
          {searching
            ? `${found.length} of at most ${reels * 4} worked out`
            : 'Every reel, one to four wires in hand, at the most turns that fit this coil; each fully worked out.'}
        </span>
      </Box>
      {found.length > 0 && (
        <Table size="small">
          <TableHead>
            <TableRow>
              <TableCell>Reel</TableCell>
              {columns.map(({ id, label }) => (
                <TableCell key={id} align="right" sortDirection={sort.id === id ? (sort.down ? 'desc' : 'asc') : false}>
                  <TableSortLabel
                    active={sort.id === id}
                    direction={sort.id === id && sort.down ? 'desc' : 'asc'}
                    onClick={() => setSort({ id, down: sort.id === id ? !sort.down : false })}
                  >
                    {label}
                  </TableSortLabel>
                </TableCell>
              ))}
              <TableCell>Reel holds</TableCell>
              <TableCell component="td" />
            </TableRow>
          </TableHead>
          <TableBody>
            {rows.map((c) => (
              <TableRow key={`${c.reel.label} ${c.inHand}`} hover>
                <TableCell>{c.reel.label}</TableCell>
                {columns.map(({ id, kind, value }) => (
                  <TableCell key={id} align="right" sx={{ whiteSpace: 'nowrap' }}>
                    {format(value(c), kind, units, 3)}
                  </TableCell>
                ))}
                <TableCell sx={{ color: c.enough ? 'success.main' : 'error.main' }}>{c.enough ? 'enough' : 'too little'}</TableCell>
                <TableCell>
                  <Button size="small" onClick={() => apply(c)} aria-label={`Use ${c.reel.label}, ${c.inHand} in hand, ${c.turns} turns`}>
                    Use
                  </Button>
                </TableCell>
              </TableRow>
            ))}
          </TableBody>
        </Table>
      )}
    </Section>
  );
}
