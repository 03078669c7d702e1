import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import { useMemo } from 'react';
import { cuttingDrawings, tableNames } from '../../../core';
import type { Action } from '../../actions/action';
import { attempt } from '../../actions/attempt';
import { exportPart, exportTable } from '../../actions/export';
import { useResults } from '../../state/results';

/** Parts to cut at natural size, for the cutter or for a drawing program. */
export function Parts() {
  const results = useResults((s) => s.results);
  const design = useResults((s) => s.solvedFor);
  const names = useMemo(() => (results && design ? cuttingDrawings(design, results).map(({ name }) => name) : []), [results, design]);
  return <Files rows={names.map((name) => [name.replaceAll('-', ' '), { DXF: exportPart(name, 'dxf'), SVG: exportPart(name, 'svg') }])} />;
}

/** Tables for a spreadsheet. */
export function Tables() {
  return <Files rows={tableNames.map((name) => [name, { CSV: exportTable(name) }])} />;
}

function Files({ rows }: { rows: [what: string, formats: Record<string, Action>][] }) {
  return (
    <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0, fontSize: 13 }}>
      {rows.map(([what, formats]) => (
        <Box component="li" key={what} sx={{ display: 'flex', alignItems: 'center', minHeight: 30 }}>
          <Box component="span" sx={{ flex: 1, '&::first-letter': { textTransform: 'uppercase' }, display: 'block' }}>
            {what}
          </Box>
          {Object.entries(formats).map(([format, action]) => (
            <Button key={format} size="small" onClick={() => void attempt(action)} aria-label={`Save ${what} as ${format}`}>
              {format}
            </Button>
          ))}
        </Box>
      ))}
    </Box>
  );
}
