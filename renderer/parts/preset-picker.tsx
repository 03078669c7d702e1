import Button from '@mui/material/Button';
import NativeSelect from '@mui/material/NativeSelect';
import { memo, useState } from 'react';
import type { Design } from '../../core';
import { valueAt } from '../path';
import { boxStyle } from './box-style';
import { fieldId, FieldRow } from './field-row';
import { TextInput } from './text-input';

/** A row of a table: entries that come together under one name. */
export interface Preset {
  name: string;
  changes: Record<string, unknown>;
}

export interface PresetTable<Id extends string = string> {
  id: Id;
  /** What a row of it is. */
  label: string;
  /** Where its numbers come from. */
  source: string;
  presets: Preset[];
  /** Rows the user keeps. */
  own: Preset[];
}

interface Props {
  table: PresetTable;
  /** Place of the row that the entries are, the user's own rows first; −1 for none. */
  current: number;
  onPick: (preset: Preset) => void;
  onKeep: (table: string, name: string) => void;
  onForget: (table: string, name: string) => void;
}

/** Place of the row that a design's entries are. */
export const rowOf = ({ own, presets }: PresetTable, design: Design): number =>
  [...own, ...presets].findIndex(({ changes }) => Object.entries(changes).every(([path, value]) => close(valueAt(design, path), value)));

/** Fills a group from a table; where the entries are no row of it they can be kept as the user's own. */
export const PresetPicker = memo(function PresetPicker({
  table: { id, label, source, presets, own },
  current,
  onPick,
  onKeep,
  onForget,
}: Props) {
  const box = fieldId(`preset.${id}`);
  const all = [...own, ...presets];
  const mine = own[current];
  const option = ({ name }: Preset, i: number) => (
    <option key={name} value={i}>
      {name}
    </option>
  );
  return (
    <>
      <FieldRow
        id={box}
        label={label}
        meaning="Fills the entries below; each can still be changed"
        note={mine ? 'Your own numbers.' : source}
      >
        <NativeSelect
          id={box}
          value={String(current)}
          disableUnderline
          inputProps={{ id: box }}
          onChange={(event) => {
            const preset = all[Number(event.target.value)];
            if (preset) onPick(preset);
          }}
          sx={boxStyle}
        >
          {current < 0 && <option value="-1">own numbers</option>}
          {own.length > 0 && <optgroup label="Your own">{own.map(option)}</optgroup>}
          {presets.map((preset, i) => option(preset, own.length + i))}
        </NativeSelect>
      </FieldRow>
      {current < 0 && <KeepAs table={id} label={label} onKeep={(name) => onKeep(id, name)} />}
      {mine && (
        <Button size="small" onClick={() => onForget(id, mine.name)} sx={{ py: 0, px: 0.5, ml: -0.5, mb: 0.5 }}>
          Forget “{mine.name}”
        </Button>
      )}
    </>
  );
});

/** Asks for a name, and keeps the numbers under it. */
function KeepAs({ table, label, onKeep }: { table: string; label: string; onKeep: (name: string) => void }) {
  const [name, setName] = useState<string | null>(null);
  if (name === null)
    return (
      <Button
        size="small"
        onClick={() => setName('')}
        sx={{ py: 0, px: 0.5, ml: -0.5, mb: 0.5 }}
        aria-label={`Keep these numbers: ${label}`}
      >
        Keep these numbers…
      </Button>
    );
  const keep = () => {
    if (name.trim() !== '') onKeep(name.trim());
    setName(null);
  };
  return (
    <>
      <TextInput
        path={`preset.name.${table}`}
        label="Keep them as"
        meaning="A name to find them under, in this and every other design"
        value={name}
        maxLength={40}
        autoFocus
        onChange={setName}
        onSettle={nothing}
        onEnter={keep}
      />
      <Button size="small" onClick={keep} disabled={name.trim() === ''} sx={{ py: 0, px: 0.5, ml: -0.5, mb: 0.5 }}>
        Keep
      </Button>
      <Button size="small" onClick={() => setName(null)} sx={{ py: 0, px: 0.5, ml: -0.5, mb: 0.5 }}>
        Cancel
      </Button>
    </>
  );
}

const nothing = () => undefined;

/** Equal but for rounding; whole shapes are compared side by side. */
function close(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a !== 'object' || typeof b !== 'object' || !a || !b) return a === b;
  return Object.keys({ ...a, ...b }).every((key) => close((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}
