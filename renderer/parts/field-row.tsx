import Tooltip from '@mui/material/Tooltip';
import type { ReactElement, ReactNode } from 'react';
import { SymbolInText } from './mathematics';
import './rows.css';
import type { ScrubHandlers } from './scrub';
import { sentence } from './sentence';

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
    <div className="field-row" data-meaning={meaning}>
      <label htmlFor={id} className={scrub && 'scrubbed'} {...scrub}>
        {label.replaceAll(' °', '\u00a0°')}
        {symbol && (
          <i aria-hidden>
            <SymbolInText of={symbol} />
          </i>
        )}
      </label>
      <Tooltip title={meaning} describeChild disableFocusListener placement="right">
        {children}
      </Tooltip>
      {error && (
        <div className="fault" id={`${id}-error`} role="alert">
          {sentence(error)}
        </div>
      )}
      {note && <div className="remark">{note}</div>}
    </div>
  );
}

export const fieldId = (path: string) => `entry-${path.replaceAll(/[.[\]]/g, '-')}`;
