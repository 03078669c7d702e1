import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { useState } from 'react';
import { csvFromReadings, type BenchReport, type Design, type Reading } from '../../../core';
import { AddIcon } from '../../parts/icons';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editList, settleEntry, useDesign } from '../../state/design';
import { entryUnit } from '../../units';
import { PasteDialog } from './paste-dialog';
import { columns } from './reading-entries';
import { ReadingRow } from './reading-row';

const edit = (next: (list: Reading[]) => Reading[]) => {
  editList('bench', next, () => 'bench readings');
};
const editAtOnce = (next: (list: Reading[]) => Reading[]) => {
  edit(next);
  settleEntry();
};

/** What the meter did read, line by line, with how far it is off. */
export function ReadingsTable({ report }: { report: BenchReport | undefined }) {
  const units = useUnits();
  const design = useDesign((s) => s.design);
  const readings = design.bench ?? [];
  const shown = columns.filter(({ on }) => readings.some((reading) => on.includes(reading.on)));
  const [open, setOpen] = useState<number | null>(null);
  const [isPasting, setPasting] = useState(false);
  const [copied, setCopied] = useState<string | null>(null);
  const change = (i: number, part: Partial<Reading>) =>
    edit((list) => list.map((reading, j) => (i === j ? withoutEmpty({ ...reading, ...part }) : reading)));
  const copy = async () => {
    const said = await navigator.clipboard.writeText(csvFromReadings(readings)).then(
      () => 'Copied',
      () => 'Could not copy',
    );
    setCopied(said);
    setTimeout(() => setCopied(null), 2000);
  };
  return (
    <Section title="What it did read">
      {readings.length > 0 && (
        <Box sx={{ overflowX: 'auto' }}>
          <Table size="small">
            <TableHead>
              <TableRow>
                <TableCell>Note</TableCell>
                <TableCell>Meter on</TableCell>
                {shown.map(({ key, quantity }) => (
                  <TableCell key={key} align="right" title={quantity.meaning}>
                    {quantity.label} {entryUnit(quantity.unit, units)}
                  </TableCell>
                ))}
                <TableCell align="right">Should be</TableCell>
                <TableCell align="right">Off by</TableCell>
                <TableCell>That is</TableCell>
                <TableCell component="td" />
              </TableRow>
            </TableHead>
            <TableBody>
              {readings.map((reading, i) => (
                <ReadingRow
                  key={i}
                  reading={reading}
                  row={i}
                  report={report}
                  shown={shown}
                  isOpen={open === i}
                  onOpen={() => setOpen(open === i ? null : i)}
                  onChange={(part) => change(i, part)}
                  onRemove={() => {
                    setOpen(null);
                    editAtOnce((list) => list.filter((_, j) => j !== i));
                  }}
                />
              ))}
            </TableBody>
          </Table>
        </Box>
      )}
      <Box sx={{ display: 'flex', gap: 1, mt: 1, flexWrap: 'wrap' }}>
        <Button startIcon={<AddIcon />} onClick={() => editAtOnce((list) => [...list, following(list.at(-1))])}>
          Add a reading
        </Button>
        <Button onClick={() => editAtOnce((list) => [...list, ...everyPlace(design, list.at(-1))])}>Add every coil, phase and line</Button>
        <Button onClick={() => setPasting(true)}>Paste readings…</Button>
        {readings.length > 0 && (
          <Button onClick={() => void copy()}>
            <span role="status">{copied ?? 'Copy as CSV'}</span>
          </Button>
        )}
      </Box>
      <PasteDialog
        isOpen={isPasting}
        onClose={() => setPasting(false)}
        onTake={(read) => {
          setPasting(false);
          editAtOnce((list) => [...list, ...read].slice(0, MOST_READINGS));
        }}
      />
    </Section>
  );
}

/** As the design file allows. */
const MOST_READINGS = 1000;

/** The next line of the same kind, turned as the last one was. */
function following(last: Reading | undefined): Reading {
  return last
    ? { ...turning(last), label: '', on: last.on, number: last.on === 'dc' ? 1 : Math.min(120, last.number + 1) }
    : { label: '', on: 'coil', number: 1 };
}

const turning = ({ speed, speedBy, meter, temperature, accuracy, leads, ohmsStep }: Reading): Partial<Reading> =>
  withoutEmpty({ speed, speedBy, meter, temperature, accuracy, leads, ohmsStep });

function everyPlace({ winding }: Design, last: Reading | undefined): Reading[] {
  const coils = winding.layout.kind === 'concentrated' ? winding.layout.coils : winding.phases;
  const list = (on: Reading['on'], count: number): Reading[] =>
    Array.from({ length: count }, (_, k) => ({ ...(last && turning(last)), label: '', on, number: k + 1 }));
  return [
    ...list('coil', coils),
    ...(coils > winding.phases ? list('phase', winding.phases) : []),
    ...(winding.phases > 1 && winding.connection !== 'separate' ? list('line', winding.phases) : []),
  ];
}

const withoutEmpty = <T extends object>(reading: T): T =>
  Object.fromEntries(Object.entries(reading).filter(([, value]) => value !== undefined)) as T;
