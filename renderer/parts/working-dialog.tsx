import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import Link from '@mui/material/Link';
import { useState, type ReactNode } from 'react';
import { entryQuantities, wordInstead, workingLines, type Results, type Term, type Working } from '../../core';
import { valueAt } from '../path';
import { format } from '../units';
import { quantityAt } from '../words';
import { Mathematics, SymbolInText } from './mathematics';
import { useUnits } from './unit-preferences';

interface Props {
  working: Working;
  results: Results;
  onClose: () => void;
  /** To the entry at a path of the design. */
  onGo: (path: string) => void;
  /** Opens the working of another result. */
  onOpen: (path: string) => void;
}

const isEntry = (path: string) => path in entryQuantities;
const whereTo = (path: string) => `${isEntry(path) ? 'Goes to' : 'Opens the working of'} “${quantityAt(path).label}”`;

/** How one number was worked out: law, formula, the numbers in it, where each is set, what is left out, source. */
export function WorkingDialog({ working, results, onClose, onGo, onOpen }: Props) {
  const units = useUnits();
  const [trail, setTrail] = useState<string[]>([]);
  const quantity = quantityAt(working.result);
  const value = valueAt(results, working.result);
  const word = wordInstead(working.result, results);
  const { law, symbols, numbers, check, terms } = workingLines(working, (shown, unit) => format(shown, unit, units));
  const follow = (path: string) => {
    if (isEntry(path)) return onGo(path);
    setTrail([...trail, working.result]);
    onOpen(path);
  };
  const back = () => {
    const before = trail.at(-1);
    setTrail(trail.slice(0, -1));
    if (before !== undefined) onOpen(before);
  };
  return (
    <Dialog open onClose={onClose} maxWidth="md" fullWidth aria-labelledby="working-title">
      <DialogTitle id="working-title" sx={{ fontSize: 16, pb: 1 }}>
        {quantity.label}
        {(typeof value === 'number' || value === null) && (word ? `: ${word}` : ` = ${format(value, quantity.unit, units)}`)}
        {typeof value === 'boolean' && `: ${value ? 'yes' : 'no'}`}
      </DialogTitle>
      <DialogContent>
        <Part title="Meaning">{quantity.meaning}</Part>
        {(law ?? working.method) && (
          <Part title={law ? 'Law' : 'How'}>
            {law && <Formula line={law} />}
            {working.method}
          </Part>
        )}
        {symbols && (
          <Part title="Formula">
            <Formula line={symbols} />
          </Part>
        )}
        {numbers && (
          <Part title="With this design’s numbers">
            <Formula line={numbers} />
          </Part>
        )}
        {check && (
          <Part title="Check">
            {check.says} {!check.holds && <b>It does not hold here: this design is past what the model can tell.</b>}
            <Formula line={check.symbols} />
            <Formula line={check.numbers} />
          </Part>
        )}
        {terms.length > 0 && (
          <Part title="Where">
            <Terms terms={terms} own={working.result} show={({ value: of, unit }) => format(of, unit, units)} onFollow={follow} />
          </Part>
        )}
        {working.from && (
          <Part title="Depends also on">
            {working.from.map((path) => (
              <Button
                key={path}
                size="small"
                variant="outlined"
                title={whereTo(path)}
                onClick={() => follow(path)}
                sx={{ mr: 0.75, mb: 0.75 }}
              >
                {quantityAt(path).label}
              </Button>
            ))}
          </Part>
        )}
        <Part title="Limits">{working.limits}</Part>
        <Part title="Source">{working.source}</Part>
      </DialogContent>
      <DialogActions>
        {trail.length > 0 && <Button onClick={back}>Back</Button>}
        <Button onClick={onClose} autoFocus>
          Close
        </Button>
      </DialogActions>
    </Dialog>
  );
}

function Terms({
  terms,
  own,
  show,
  onFollow,
}: {
  terms: Term[];
  own: string;
  show: (term: Term) => string;
  onFollow: (path: string) => void;
}) {
  return (
    <Box component="table" sx={{ borderCollapse: 'collapse', '& td': { p: 0, pr: 2, py: 0.25, verticalAlign: 'baseline' } }}>
      <tbody>
        {terms.map((term) => (
          <tr key={term.symbol}>
            <td>
              <SymbolInText of={term.symbol} />
            </td>
            <td style={{ whiteSpace: 'nowrap', textAlign: 'right' }}>{show(term)}</td>
            <td>
              {term.path !== undefined && term.path !== own ? (
                <Link
                  component="button"
                  onClick={() => onFollow(term.path ?? '')}
                  title={whereTo(term.path)}
                  sx={{ font: 'inherit', textAlign: 'left', verticalAlign: 'baseline' }}
                >
                  {term.name}
                </Link>
              ) : (
                term.name
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </Box>
  );
}

function Formula({ line }: { line: Parameters<typeof Mathematics>[0]['line'] }) {
  return (
    <Box sx={{ fontSize: 17, my: 0.75 }}>
      <Mathematics line={line} />
    </Box>
  );
}

function Part({ title, children }: { title: string; children: ReactNode }) {
  return (
    <Box sx={{ mb: 1.5 }}>
      <Box sx={{ fontSize: 12, color: 'text.secondary' }}>{title}</Box>
      <Box sx={{ fontSize: 13.5 }}>{children}</Box>
    </Box>
  );
}
