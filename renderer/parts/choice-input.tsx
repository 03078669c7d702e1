import NativeSelect from '@mui/material/NativeSelect';
import { boxStyle } from './box-style';
import { fieldId, FieldRow } from './field-row';

interface Props {
  path: string;
  label: string;
  meaning: string;
  value: string;
  choices: { value: string; word: string }[];
  problem?: string;
  onChange: (value: string) => void;
}

/** One of a few words. */
export function ChoiceInput({ path, label, meaning, value, choices, problem, onChange }: Props) {
  const id = fieldId(path);
  return (
    <FieldRow id={id} label={label} meaning={meaning} error={problem}>
      <NativeSelect
        id={id}
        value={value}
        error={problem !== undefined}
        disableUnderline
        onChange={(event) => onChange(event.target.value)}
        inputProps={{ id }}
        sx={boxStyle}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.word}
          </option>
        ))}
      </NativeSelect>
    </FieldRow>
  );
}
