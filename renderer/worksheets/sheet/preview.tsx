import Box from '@mui/material/Box';
import { useMemo } from 'react';
import { windingSheet, type Drawing } from '../../../core';
import { Strokes } from '../../drawing/strokes';
import { fitted } from '../../drawing/view-box';
import type { FigureProps } from '../worksheet';

type Block = ReturnType<typeof windingSheet>['blocks'][number];

/** The words of the sheet as they will be printed; black on white, as paper is by night too. */
export function Preview({ design, results }: FigureProps) {
  const sheet = useMemo(() => windingSheet(design, results), [design, results]);
  return (
    <Box
      component="article"
      aria-label="What is on the sheet"
      tabIndex={0}
      sx={{
        bgcolor: '#fff',
        color: '#000',
        border: 1,
        borderColor: 'divider',
        p: 3,
        fontSize: 13,
        lineHeight: 1.45,
        maxHeight: '68vh',
        overflow: 'auto',
        '& h3': { fontSize: 14.5, fontWeight: 500, mt: 2, mb: 0.5, borderBottom: '1px solid #000' },
        '& p': { my: 0.5 },
        '& table': { borderCollapse: 'collapse', width: '100%', my: 0.75 },
        '& th': { fontWeight: 500, textAlign: 'left', fontSize: 12, borderBottom: '1px solid #000', px: 0.5 },
        '& td': { borderBottom: '1px solid #bbb', px: 0.5, height: 22 },
        '& ol': { my: 0.5, pl: 3 },
        '& dl': { display: 'grid', gridTemplateColumns: 'minmax(120px, 38%) 1fr', my: 0.5, rowGap: '1px' },
        '& dd': { m: 0 },
      }}
    >
      <Box sx={{ fontSize: 19, fontWeight: 500 }}>{sheet.title}</Box>
      <p>{sheet.machine}</p>
      {sheet.blocks.map((block, i) => (
        <SheetBlock key={i} block={block} />
      ))}
    </Box>
  );
}

function SheetBlock({ block }: { block: Block }) {
  switch (block.kind) {
    case 'heading':
      return <h3>{block.text}</h3>;
    case 'text':
      return <p>{block.text}</p>;
    case 'facts':
      return (
        <dl>
          {block.rows.map(([name, value]) => (
            <Box key={name} sx={{ display: 'contents' }}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </Box>
          ))}
        </dl>
      );
    case 'table':
      return (
        <table>
          <thead>
            <tr>
              {block.columns.map((column, i) => (
                <HeadCell key={i} words={column.head} share={column.share} align={column.align} />
              ))}
            </tr>
          </thead>
          <tbody>
            {block.rows.map((row, i) => (
              <tr key={i}>
                {row.map((cell, j) => (
                  <td key={j} style={{ textAlign: block.columns[j]?.align, border: block.columns[j]?.box ? '1px solid #000' : undefined }}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      );
    case 'steps':
      return (
        <ol>
          {block.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      );
    case 'cautions':
      return (
        <ul>
          {block.cautions.map((caution, i) => (
            <li key={i}>{caution.message}</li>
          ))}
        </ul>
      );
    case 'drawing':
      return <PrintedDrawing drawing={block.drawing} />;
  }
}

function HeadCell({ words, share, align }: { words: string; share: number; align?: 'right' }) {
  const style = { width: `${share * 100}%`, textAlign: align };
  return words ? (
    <th scope="col" style={style}>
      {words}
    </th>
  ) : (
    <td style={style} />
  );
}

function PrintedDrawing({ drawing }: { drawing: Drawing }) {
  const { x, y, width, height } = fitted(drawing.bounds);
  return (
    <svg
      role="img"
      aria-label={drawing.title}
      viewBox={`${x} ${y} ${width} ${height}`}
      style={{ display: 'block', width: '100%', maxHeight: 380, margin: '8px 0' }}
    >
      <Strokes drawing={drawing} mode="light" />
    </svg>
  );
}
