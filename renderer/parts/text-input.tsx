import InputBase from '@mui/material/InputBase';
import { boxStyle } from './box-style';
import { fieldId, FieldRow } from './field-row';

interface Props {
  path: string;
  label: string;
  meaning: string;
  value: string;
  maxLength: number;
  problem?: string;
  onChange: (value: string) => void;
  onSettle: () => void;
  onEnter?: () => void;
  autoFocus?: boolean;
}

/** A name or a word. */
export function TextInput({ path, label, meaning, value, maxLength, problem, onChange, onSettle, onEnter, autoFocus }: Props) {
  const id = fieldId(path);
  return (
    <FieldRow id={id} label={label} meaning={meaning} error={problem}>
      <InputBase
        id={id}
        className="words"
        value={value}
        error={problem !== undefined}
        onChange={(event) => onChange(event.target.value)}
        onBlur={onSettle}
        onKeyDown={(event) => event.key === 'Enter' && onEnter?.()}
        autoFocus={autoFocus}
        slotProps={{ input: { maxLength, autoComplete: 'off' } }}
        sx={[boxStyle as object, { '& input': { textAlign: 'left' } }]}
      />
    </FieldRow>
  );
}
