import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import type { ReactNode } from 'react';
import type { Results, Working } from '../../core';
import { valueAt } from '../path';
import { format } from '../units';
import { quantityAt } from '../words';
import { useUnits } from './unit-preferences';

interface Props {
  working: Working | undefined;
  results: Results | null;
  onClose: () => void;
  onGo: (path: string) => void;
}

/** How one number was worked out: formula, the numbers in it, what is left out, source. */
export function WorkingDialog({ working, results, onClose, onGo }: Props) {
  const units = useUnits();
  if (!working || !results) return null;
  const quantity = quantityAt(working.result);
  const value = valueAt(results, working.result);
  return (
    <Dialog open onClose={onClose} maxWidth="sm" fullWidth aria-labelledby="working-title">
      <DialogTitle id="working-title" sx={{ fontSize: 16, pb: 1 }}>
        {quantity.label}
        {typeof value === 'number' && ` = ${format(value, quantity.unit, units)}`}
      </DialogTitle>
      <DialogContent>
        <Part title="Meaning">{quantity.meaning}</Part>
        <Part title="Formula" serif>
          {working.formula}
        </Part>
        <Part title="With this design’s numbers" serif>
          {working.numbers}
        </Part>
        {working.inputs.length > 0 && (
          <Part title="Depends on">
            {working.inputs.map((path) => (
              <Button key={path} size="small" variant="outlined" onClick={() => onGo(path)} sx={{ mr: 0.75, mb: 0.75 }}>
                {quantityAt(path).label}
              </Button>
            ))}
          </Part>
        )}
        <Part title="Left out">{working.limits}</Part>
        <Part title="Source">{working.source}</Part>
      </DialogContent>
      <DialogActions>
        <Button onClick={onClose} autoFocus>
          Close
        </Button>
      </DialogActions>
    </Dialog>
  );
}

function Part({ title, serif = false, children }: { title: string; serif?: boolean; children: ReactNode }) {
  return (
    <Box sx={{ mb: 1.5 }}>
      <Box sx={{ fontSize: 12, color: 'text.secondary' }}>{title}</Box>
      <Box
        sx={
          serif
            ? { fontFamily: 'Georgia, "DejaVu Serif", serif', fontSize: 15, whiteSpace: 'pre-wrap', overflowWrap: 'anywhere' }
            : { fontSize: 13.5 }
        }
      >
        {children}
      </Box>
    </Box>
  );
}
