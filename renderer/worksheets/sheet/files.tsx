import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import { useMemo } from 'react';
import { cuttingDrawings, tableNames } from '../../../core';
import type { Action } from '../../actions/action';
import { attempt } from '../../actions/attempt';
import { exportPart, exportTables } from '../../actions/export';
import { useResults } from '../../state/results';

/** Parts to cut at natural size, for the cutter or for a drawing program. */
export function Parts() {
  const results = useResults((s) => s.results);
  const design = useResults((s) => s.solvedFor);
  const names = useMemo(() => (results && design ? cuttingDrawings(design, results).map(({ name }) => name) : []), [results, design]);
  return <Files rows={names.map((name) => [name.replaceAll('-', ' '), [exportPart(name, 'dxf'), exportPart(name, 'svg')]])} />;
}

/** Tables for a spreadsheet. */
export function Tables() {
  return <Files rows={tableNames.map((name, i) => [name, exportTables.slice(i, i + 1)])} />;
}

function Files({ rows }: { rows: [what: string, actions: readonly Action[]][] }) {
  return (
    <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0, fontSize: 13 }}>
      {rows.map(([what, actions]) => (
        <Box component="li" key={what} sx={{ display: 'flex', alignItems: 'center', minHeight: 30 }}>
          <Box component="span" sx={{ flex: 1, '&::first-letter': { textTransform: 'uppercase' }, display: 'block' }}>
            {what}
          </Box>
          {actions.map((action) => (
            <Button
              key={action.id}
              size="small"
              onClick={() => void attempt(action)}
              aria-label={`Save ${action.label().replace('…', '')}`}
            >
              {/\((\w+)\)/.exec(action.label())?.[1]}
            </Button>
          ))}
        </Box>
      ))}
    </Box>
  );
}
