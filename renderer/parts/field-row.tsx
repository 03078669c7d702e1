import Box from '@mui/material/Box';
import Tooltip from '@mui/material/Tooltip';
import type { ReactElement, ReactNode } from 'react';
import { SymbolInText } from './mathematics';
import type { ScrubHandlers } from './scrub';

interface Props {
  id: string;
  label: string;
  symbol?: string;
  meaning: string;
  error?: string | null;
  note?: ReactNode;
  /** The label is dragged sideways to step the number. */
  scrub?: ScrubHandlers;
  children: ReactElement<unknown>;
}

/** One line of a form: label, box, and below them at once what is wrong with it. */
export function FieldRow({ id, label, symbol, meaning, error, note, scrub, children }: Props) {
  return (
    <Box
      data-meaning={meaning}
      sx={{
        display: 'grid',
        gridTemplateColumns: 'minmax(0, 1fr) 144px',
        columnGap: 1,
        gridTemplateRows: 'minmax(32px, auto)',
        alignItems: 'center',
      }}
    >
      <Box
        component="label"
        htmlFor={id}
        {...scrub}
        sx={{ fontSize: 13, lineHeight: 1.2, ...(scrub && { cursor: 'ew-resize', touchAction: 'pan-y', userSelect: 'none' }) }}
      >
        {label.replaceAll(' °', '\u00a0°')}
        {symbol && (
          <Box component="i" aria-hidden sx={{ ml: 0.75, color: 'text.secondary', fontFamily: 'Georgia, serif' }}>
            <SymbolInText of={symbol} />
          </Box>
        )}
      </Box>
      <Tooltip title={meaning} describeChild disableFocusListener placement="right">
        {children}
      </Tooltip>
      {error && (
        <Box id={`${id}-error`} role="alert" sx={{ gridColumn: '1 / -1', color: 'error.main', fontSize: 12, pb: 0.5 }}>
          {sentence(error)}
        </Box>
      )}
      {note && <Box sx={{ gridColumn: '1 / -1', color: 'text.secondary', fontSize: 12, pb: 0.5 }}>{note}</Box>}
    </Box>
  );
}

export const fieldId = (path: string) => `entry-${path.replaceAll(/[.[\]]/g, '-')}`;

/** A complaint as a sentence of its own. */
const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
