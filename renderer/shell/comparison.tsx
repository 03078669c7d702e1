import Box from '@mui/material/Box';
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
import { takeOver } from '../state/design';
import { useResults, type Variant } from '../state/results';
import { unpin } from '../state/variants';
import { setView } from '../state/view';
import { format, formatDifference } from '../units';
import { choiceWord, quantityAt } from '../words';

const close = () => setView({ dialog: null });

/** This design and its variants side by side: the entries in which any differs, and every result. */
export function Comparison() {
  const variants = useResults((s) => s.variants);
  const results = useResults((s) => s.results);
  const design = useResults((s) => s.solvedFor);
  if (!results || !design || variants.length === 0) return null;
  const differing = Object.keys(entryQuantities).filter((path) => variants.some((v) => wordAt(design, path) !== wordAt(v.design, path)));
  const shared = Object.keys(resultQuantities).filter((path) =>
    [results, ...variants.map((v) => v.results)].some((r) => valueAt(r, path) !== undefined),
  );
  return (
    <Dialog open onClose={close} maxWidth="lg" fullWidth aria-labelledby="comparison-title">
      <DialogTitle id="comparison-title" sx={{ fontSize: 16, pb: 1 }}>
        Side by side
      </DialogTitle>
      <DialogContent>
        <Table size="small" stickyHeader>
          <TableHead>
            <TableRow>
              <TableCell component="td" />
              <TableCell align="right" sx={{ verticalAlign: 'top' }}>
                On screen
              </TableCell>
              {variants.map((variant) => (
                <TableCell key={variant.id} align="right" sx={{ verticalAlign: 'top' }}>
                  {nameOf(variant)}
                  <Box sx={{ whiteSpace: 'nowrap' }}>
                    <Button size="small" aria-label={`Use ${nameOf(variant)}`} onClick={() => use(variant)} sx={{ py: 0 }}>
                      Use
                    </Button>
                    <Button size="small" aria-label={`Unpin ${nameOf(variant)}`} onClick={() => unpin(variant.id)} sx={{ py: 0 }}>
                      Unpin
                    </Button>
                  </Box>
                </TableCell>
              ))}
            </TableRow>
          </TableHead>
          <TableBody>
            {differing.map((path) => (
              <Line key={path} path={path} here={valueAt(design, path)} there={variants.map((v) => valueAt(v.design, path))} />
            ))}
            {shared.map((path) => (
              <Line key={path} path={path} here={valueAt(results, path)} there={variants.map((v) => valueAt(v.results, path))} strong />
            ))}
          </TableBody>
        </Table>
      </DialogContent>
      <DialogActions>
        <Button onClick={close} autoFocus>
          Close
        </Button>
      </DialogActions>
    </Dialog>
  );
}

const nameOf = ({ letter, name }: Variant) => `${letter} – ${name}`;

function use(variant: Variant) {
  close();
  takeOver(variant.design, `use of ${nameOf(variant)}`);
}

interface LineProps {
  path: string;
  here: unknown;
  there: unknown[];
  strong?: boolean;
}

/** A value in each design, and below it by how much it differs from the one on screen. */
function Line({ path, here, there, strong = false }: LineProps) {
  const units = useUnits();
  const { label, unit } = quantityAt(path);
  const word = (value: unknown) => (typeof value === 'number' ? format(value, unit, units) : plainWord(value));
  const moved = (value: unknown) => (typeof here === 'number' && typeof value === 'number' ? movement(value, here) : null);
  return (
    <TableRow>
      <TableCell>{label}</TableCell>
      <TableCell align="right" sx={{ fontWeight: strong ? 500 : 400 }}>
        {word(here)}
      </TableCell>
      {there.map((value, i) => {
        const difference = moved(value);
        return (
          <TableCell key={i} align="right">
            {word(value)}
            <Box component="span" sx={{ display: 'inline-block', minWidth: 92, pl: 1, color: 'primary.main', fontSize: 12 }}>
              {difference !== null && formatDifference(difference, unit, units)}
            </Box>
          </TableCell>
        );
      })}
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
