import Box from '@mui/material/Box';
import Typography from '@mui/material/Typography';
import { memo, type ReactNode } from 'react';
import { entryAt, type Design, type FormEntry } from '../../core';
import { valueAt } from '../path';
import { choiceWord, quantityAt } from '../words';
import { ChoiceInput } from './choice-input';
import { PresetPicker, rowOf, type Preset, type PresetTable } from './preset-picker';
import { QuantityInput } from './quantity-input';
import { SectionToggle } from './section-toggle';
import { TextInput } from './text-input';

export interface FormGroup {
  title: string;
  /** Paths; one the design does not have now is left out. */
  entries: string[];
  table?: PresetTable;
  /** Below the table. */
  tool?: ReactNode;
}

/** What a form tells its owner. */
export interface FormEvents {
  onEdit: (path: string, value: unknown, typed: boolean) => void;
  onKind: (path: string, kind: string) => void;
  onToggle: (path: string, present: boolean) => void;
  onPreset: (preset: Preset) => void;
  onKeep: (table: string, name: string) => void;
  onForget: (table: string, name: string) => void;
  onFault: (path: string, message: string | null) => void;
  onSettle: () => void;
}

interface Props extends FormEvents {
  design: Design;
  groups: FormGroup[];
  /** Boxes whose text is not a usable value, by path. */
  faults: Record<string, string>;
  /** What is wrong with entries together, by path. */
  problems: Record<string, string>;
}

/** Paths to boxes: number, choice, kind, optional section or word, as the design file's own schema says. */
export function EntryForm({ design, groups, faults, problems, ...events }: Props) {
  return (
    <>
      {groups.map((group) => (
        <Box key={group.title} component="section" aria-label={group.title} sx={{ mb: 2.5 }}>
          <Typography variant="h2" sx={{ pb: 0.5, mb: 0.75, borderBottom: 1, borderColor: 'divider' }}>
            {group.title}
          </Typography>
          {group.table && (
            <PresetPicker
              table={group.table}
              current={rowOf(group.table, design)}
              onPick={events.onPreset}
              onKeep={events.onKeep}
              onForget={events.onForget}
            />
          )}
          {group.tool}
          {group.entries.map((path) => {
            const parent = path.includes('.') ? valueAt(design, path.slice(0, path.lastIndexOf('.'))) : design;
            const entry = entryAt(path, design);
            const value = valueAt(design, path);
            const isThere = value !== undefined || (entry?.optional && parent !== undefined);
            if (!entry || !isThere) return null;
            const needed = path === 'controller' && design.load.kind === 'tracker';
            const own = { path, value, entry, needed, fault: faults[path], problem: problems[path] };
            return <Entry key={path} {...own} {...events} />;
          })}
        </Box>
      ))}
    </>
  );
}

interface EntryProps extends FormEvents {
  path: string;
  value: unknown;
  entry: FormEntry;
  /** The section cannot be taken out. */
  needed: boolean;
  fault?: string;
  problem?: string;
}

/** A box is drawn anew only when something in it changed: the others wait while one is scrubbed. */
const Entry = memo(function Entry({ path, value, entry, needed, fault, problem, ...events }: EntryProps) {
  const quantity = quantityAt(path);
  const { label, meaning } = quantity;
  const words = { path, label, meaning, problem };
  if (entry.section)
    return (
      <SectionToggle {...words} present={value !== undefined} needed={needed} onChange={(present) => events.onToggle(path, present)} />
    );
  if (entry.choices) {
    const isKind = typeof value === 'object';
    const current = isKind ? (value as { kind: string }).kind : (value as string);
    return (
      <ChoiceInput
        {...words}
        value={current}
        choices={entry.choices.map((choice) => ({ value: choice, word: choiceWord(choice) }))}
        onChange={(chosen) => (isKind ? events.onKind(path, chosen) : events.onEdit(path, chosen, false))}
      />
    );
  }
  if (entry.number)
    return (
      <QuantityInput
        path={path}
        quantity={quantity}
        range={entry.number}
        value={value as number | undefined}
        optional={entry.optional}
        fault={fault}
        problem={problem}
        onChange={(next) => events.onEdit(path, next, true)}
        onFault={(message) => events.onFault(path, message)}
        onSettle={events.onSettle}
      />
    );
  return (
    <TextInput
      {...words}
      value={(value as string | undefined) ?? ''}
      maxLength={40}
      onChange={(text) => events.onEdit(path, text, true)}
      onSettle={events.onSettle}
    />
  );
}, isSame);

function isSame({ entry: a, ...before }: EntryProps, { entry: b, ...after }: EntryProps): boolean {
  const sameEntry = a.number === b.number && a.optional === b.optional && a.text === b.text && a.choices?.join() === b.choices?.join();
  return sameEntry && (Object.keys(after) as (keyof typeof after)[]).every((key) => before[key] === after[key]);
}
