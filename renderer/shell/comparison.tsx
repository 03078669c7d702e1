import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { entryQuantities, resultQuantities } from '../../core';
import { movement } from '../parts/result-list';
import { useUnits } from '../parts/unit-preferences';
import { valueAt } from '../path';
import { stopComparing, useResults } from '../state/results';
import { setView } from '../state/view';
import { format, formatDifference, type UnitPreferences } from '../units';
import { choiceWord, quantityAt } from '../words';

const close = () => setView({ dialog: null });

/** This design and another side by side: the entries in which they differ, and every result. */
export function Comparison() {
  const units = useUnits();
  const compared = useResults((s) => s.compared);
  const results = useResults((s) => s.results);
  const design = useResults((s) => s.solvedFor);
  if (!compared || !results || !design) return null;
  const differing = Object.keys(entryQuantities).filter((path) => wordAt(design, path) !== wordAt(compared.design, path));
  const shared = Object.keys(resultQuantities).filter(
    (path) => valueAt(results, path) !== undefined || valueAt(compared.results, path) !== undefined,
  );
  return (
    <Dialog open onClose={close} maxWidth="md" fullWidth aria-labelledby="comparison-title">
      <DialogTitle id="comparison-title" sx={{ fontSize: 16, pb: 1 }}>
        Side by side
      </DialogTitle>
      <DialogContent>
        <Table size="small" stickyHeader>
          <TableHead>
            <TableRow>
              <TableCell component="td" />
              <TableCell align="right">{design.title || 'This design'}</TableCell>
              <TableCell align="right">{compared.design.title || compared.name}</TableCell>
              <TableCell align="right">Difference</TableCell>
            </TableRow>
          </TableHead>
          <TableBody>
            {differing.map((path) => (
              <Line key={path} path={path} here={valueAt(design, path)} there={valueAt(compared.design, path)} units={units} />
            ))}
            {shared.map((path) => (
              <Line key={path} path={path} here={valueAt(results, path)} there={valueAt(compared.results, path)} units={units} strong />
            ))}
          </TableBody>
        </Table>
      </DialogContent>
      <DialogActions>
        <Button
          onClick={() => {
            close();
            stopComparing();
          }}
        >
          Stop comparing
        </Button>
        <Button onClick={close} autoFocus>
          Close
        </Button>
      </DialogActions>
    </Dialog>
  );
}

interface LineProps {
  path: string;
  here: unknown;
  there: unknown;
  units: UnitPreferences;
  strong?: boolean;
}

function Line({ path, here, there, units, strong = false }: LineProps) {
  const { label, unit } = quantityAt(path);
  const word = (value: unknown) => (typeof value === 'number' ? format(value, unit, units) : plainWord(value));
  const moved = typeof here === 'number' && typeof there === 'number' ? movement(here, there) : null;
  return (
    <TableRow>
      <TableCell>{label}</TableCell>
      <TableCell align="right" sx={{ fontWeight: strong ? 500 : 400 }}>
        {word(here)}
      </TableCell>
      <TableCell align="right">{word(there)}</TableCell>
      <TableCell align="right" sx={{ color: 'primary.main' }}>
        {moved !== null && formatDifference(moved, unit, units)}
      </TableCell>
    </TableRow>
  );
}

function plainWord(value: unknown): string {
  if (typeof value === 'string') return choiceWord(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'object' && value !== null && 'kind' in value) return choiceWord(String(value.kind));
  return value === undefined || value === null ? '–' : 'entered';
}

/** What tells two entries apart: the kind alone for a union, whose own entries follow by themselves. */
function wordAt(design: unknown, path: string): string {
  const value = valueAt(design, path);
  return typeof value === 'number' ? String(value) : plainWord(value);
}
