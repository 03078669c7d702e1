import Box from '@mui/material/Box';
import ButtonBase from '@mui/material/ButtonBase';
import type { Results } from '../../core';
import { valueAt } from '../path';
import { formatDifference, shown } from '../units';
import { quantityAt } from '../words';
import { SymbolInText } from './mathematics';
import { useUnits } from './unit-preferences';

interface Props {
  paths: string[];
  results: Results;
  /** Results to tell by how much each moved. */
  baseline: Results | null;
  onOpen: (path: string) => void;
}

/** Results with label, value and unit; each opens its working. */
export function ResultList({ paths, results, baseline, onOpen }: Props) {
  return (
    <Box
      component="ul"
      sx={{ listStyle: 'none', m: 0, p: 0, display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(310px, 1fr))', columnGap: 3 }}
    >
      {paths
        .filter((path) => valueAt(results, path) !== undefined)
        .map((path) => (
          <Box component="li" key={path} sx={{ borderBottom: 1, borderColor: 'divider' }}>
            <Row path={path} results={results} baseline={baseline} onOpen={() => onOpen(path)} />
          </Box>
        ))}
    </Box>
  );
}

const rowStyle = {
  display: 'grid',
  gridTemplateColumns: 'minmax(0, 1fr) auto 108px',
  columnGap: 1,
  alignItems: 'baseline',
  width: '100%',
  minHeight: 30,
  px: 0.5,
  py: 0.5,
  fontSize: 13,
  textAlign: 'left',
  lineHeight: 1.45,
} as const;

function Row({ path, results, baseline, onOpen }: { path: string; results: Results; baseline: Results | null; onOpen: () => void }) {
  const units = useUnits();
  const quantity = quantityAt(path);
  const value = valueAt(results, path) as number | null;
  const { text, unit } = shown(value, quantity.unit, units);
  const moved = movement(value, baseline && (valueAt(baseline, path) as number | null));
  return (
    <ButtonBase
      data-meaning={quantity.meaning}
      onClick={onOpen}
      title={`${quantity.meaning}. Opens the working.`}
      sx={{ ...rowStyle, '&:hover': { bgcolor: 'action.hover' } }}
    >
      <span>
        {quantity.label}
        {quantity.symbol && (
          <Box component="span" aria-hidden sx={{ ml: 0.75, color: 'text.secondary' }}>
            <SymbolInText of={quantity.symbol} />
          </Box>
        )}
      </span>
      <Box component="span" sx={{ color: 'primary.main', fontSize: 12 }}>
        {moved !== null && formatDifference(moved, quantity.unit, units)}
      </Box>
      <Box component="span" sx={{ textAlign: 'right', fontWeight: 500, whiteSpace: 'nowrap' }}>
        {text}
        <Box
          component="span"
          sx={{
            display: 'inline-block',
            minWidth: 40,
            pl: 0.75,
            fontWeight: 400,
            fontSize: 12,
            color: 'text.secondary',
            textAlign: 'left',
          }}
        >
          {unit}
        </Box>
      </Box>
    </ButtonBase>
  );
}

/** By how much a result moved, or null when it did not move by a visible amount. */
export function movement(now: number | null, before: number | null): number | null {
  if (typeof now !== 'number' || typeof before !== 'number') return null;
  const difference = now - before;
  return Math.abs(difference) > 1e-4 * Math.max(Math.abs(now), Math.abs(before)) ? difference : null;
}
