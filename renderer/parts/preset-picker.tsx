import NativeSelect from '@mui/material/NativeSelect';
import type { Design } from '../../core';
import { valueAt } from '../path';
import { boxStyle } from './box-style';
import { fieldId, FieldRow } from './field-row';

/** A row of a table: entries that come together under one name. */
export interface Preset {
  name: string;
  changes: Record<string, unknown>;
}

export interface PresetTable {
  /** What a row of it is. */
  label: string;
  presets: Preset[];
}

interface Props {
  table: PresetTable;
  design: Design;
  onPick: (preset: Preset) => void;
}

/** Fills a group from a table; says "own numbers" where the entries are no row of it. */
export function PresetPicker({ table: { label, presets }, design, onPick }: Props) {
  const id = fieldId(`preset.${label.toLowerCase().replaceAll(' ', '-')}`);
  const current = presets.findIndex((preset) =>
    Object.entries(preset.changes).every(([path, value]) => close(valueAt(design, path), value)),
  );
  return (
    <FieldRow id={id} label={label} meaning="Fills the entries below; each can still be changed">
      <NativeSelect
        id={id}
        value={String(current)}
        disableUnderline
        inputProps={{ id }}
        onChange={(event) => {
          const preset = presets[Number(event.target.value)];
          if (preset) onPick(preset);
        }}
        sx={boxStyle}
      >
        {current < 0 && <option value="-1">own numbers</option>}
        {presets.map((preset, i) => (
          <option key={preset.name} value={i}>
            {preset.name}
          </option>
        ))}
      </NativeSelect>
    </FieldRow>
  );
}

const close = (a: unknown, b: unknown) =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) : a === b;
