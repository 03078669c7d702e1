import Checkbox from '@mui/material/Checkbox';
import { fieldId, FieldRow } from './field-row';

interface Props {
  path: string;
  label: string;
  meaning: string;
  present: boolean;
  /** It cannot be taken out. */
  needed: boolean;
  problem?: string;
  onChange: (present: boolean) => void;
}

/** An optional section of the design: there or not. */
export function SectionToggle({ path, label, meaning, present, needed, problem, onChange }: Props) {
  const id = fieldId(path);
  return (
    <FieldRow id={id} label={label} meaning={meaning} error={problem}>
      <span>
        <Checkbox
          id={id}
          size="small"
          checked={present}
          disabled={needed && present}
          onChange={(event) => onChange(event.target.checked)}
          sx={{ p: 0.5, ml: -0.5 }}
        />
      </span>
    </FieldRow>
  );
}
