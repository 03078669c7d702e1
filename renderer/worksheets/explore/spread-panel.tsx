import Box from '@mui/material/Box';
import NativeSelect from '@mui/material/NativeSelect';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { useState } from 'react';
import { tolerances, tolerancesOf, type Design, type ToleranceId } from '../../../core';
import { boxStyle } from '../../parts/box-style';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { designStore, editEntry, setFault, settleEntry, useDesign } from '../../state/design';
import { entryUnit } from '../../units';
import { BandsTable } from './bands-table';
import { startSpread, stop, useWork, type SpreadWork } from './work';
import { WorkBar } from './work-bar';

const SIZES = [1000, 10_000];
const count = (n: number) => n.toLocaleString('en');

/** How the design comes out of many workshops, and on which tolerance care is best spent. */
export function SpreadPanel() {
  const design = useDesign((s) => s.design);
  const isBlocked = useDesign((s) => Object.keys(s.faults).length > 0);
  const work = useWork((s) => s.spread);
  const running = useWork((s) => s.running);
  const [samples, setSamples] = useState(1000);
  const share = running === 'spread' && work ? work.done / work.size : undefined;
  const isOwn = work !== null && same(work.design, design);
  return (
    <Section title="As workshops build it">
      <ToleranceTable design={design} />
      <Box sx={{ display: 'flex', alignItems: 'center', gap: 1, pt: 1.5, fontSize: 13 }}>
        <Box component="label" sx={{ display: 'flex', alignItems: 'center', gap: 1 }}>
          Machines to build
          <NativeSelect
            value={samples}
            disableUnderline
            disabled={running !== null}
            onChange={(event) => setSamples(Number(event.target.value))}
            inputProps={{ 'aria-label': 'Machines to build' }}
            sx={[boxStyle as object, { width: 110 }]}
          >
            {SIZES.map((size) => (
              <option key={size} value={size}>
                {count(size)}
              </option>
            ))}
          </NativeSelect>
        </Box>
      </Box>
      <WorkBar
        label="Build them"
        share={share}
        disabled={running !== null || isBlocked}
        onStart={() => void startSpread(design, samples)}
        onStop={stop}
      >
        {said(work, running === 'spread', isOwn)}
      </WorkBar>
      {work?.fault && <Box sx={{ color: 'error.main', pb: 1 }}>{work.fault}</Box>}
      {work?.spread && <BandsTable spread={work.spread} shares={work.shares} />}
    </Section>
  );
}

/** Searching for other machines changes nothing about this one. */
const same = (a: Design, b: Design) =>
  JSON.stringify({ ...a, search: 0, shelf: 0, bench: 0 }) === JSON.stringify({ ...b, search: 0, shelf: 0, bench: 0 });

function said(work: SpreadWork | null, isRunning: boolean, isOwn: boolean): string {
  if (!work) return 'Each is drawn by chance within the tolerances above and fully worked out; the same seed every time.';
  if (isRunning && work.done === 0) return 'Which tolerance matters…';
  const { done, size, seconds, spread } = work;
  const rubbing = spread && spread.rubbing > 0 ? ` In ${(100 * spread.rubbing).toPrecision(2)} % of them a disc rubs on the winding.` : '';
  const stale = isOwn ? '' : ' The design has been changed since.';
  return isRunning
    ? `${count(done)} of ${count(size)} built.${rubbing}`
    : `${count(done)} built in ${seconds.toFixed(1)} s.${rubbing}${stale}`;
}

function ToleranceTable({ design }: { design: Design }) {
  const units = useUnits();
  const faults = useDesign((s) => s.faults);
  const limits = tolerancesOf(design);
  const edit = (id: ToleranceId, value: number) =>
    editEntry('tolerances', { ...designStore.getState().design.tolerances, [id]: value }, () => 'tolerances', true);
  return (
    <Table size="small" sx={{ maxWidth: 860 }}>
      <TableHead>
        <TableRow>
          <TableCell>How roughly it is built</TableCell>
          <TableCell align="right" sx={{ width: 92 }}>
            Up to ±
          </TableCell>
          <TableCell>19 times in 20</TableCell>
        </TableRow>
      </TableHead>
      <TableBody>
        {tolerances.map(({ id, label, unit, most, meaning, law }) => {
          const path = `tolerances.${id}`;
          return (
            <TableRow key={id}>
              <TableCell sx={{ whiteSpace: 'nowrap' }}>
                {label}
                {entryUnit(unit, units) && `, ${entryUnit(unit, units)}`}
              </TableCell>
              <TableCell>
                <QuantityCell
                  name={`${label}, tolerance`}
                  quantity={{ label, unit, meaning }}
                  range={{ min: 0, max: most }}
                  value={limits[id]}
                  onChange={(value) => value !== undefined && edit(id, value)}
                  fault={faults[path]}
                  onFault={(message) => setFault(path, message)}
                  onSettle={settleEntry}
                />
              </TableCell>
              <TableCell sx={{ color: 'text.secondary' }}>
                {meaning}
                {law !== 'bell' && '; always within, all alike likely'}
              </TableCell>
            </TableRow>
          );
        })}
      </TableBody>
    </Table>
  );
}
