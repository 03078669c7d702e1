import Box from '@mui/material/Box';
import Typography from '@mui/material/Typography';
import { entryAt, type Design } from '../../core';
import { valueAt } from '../path';
import { choiceWord, quantityAt } from '../words';
import { ChoiceInput } from './choice-input';
import { PresetPicker, type Preset, type PresetTable } from './preset-picker';
import { QuantityInput } from './quantity-input';
import { SectionToggle } from './section-toggle';
import { TextInput } from './text-input';

export interface FormGroup {
  title: string;
  /** Paths; one the design does not have now is left out. */
  entries: string[];
  table?: PresetTable;
}

/** What a form tells its owner. */
export interface FormEvents {
  onEdit: (path: string, value: unknown, typed: boolean) => void;
  onKind: (path: string, kind: string) => void;
  onToggle: (path: string, present: boolean) => void;
  onPreset: (preset: Preset) => void;
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
          {group.table && <PresetPicker table={group.table} design={design} onPick={events.onPreset} />}
          {group.entries.map((path) => (
            <Entry key={path} path={path} design={design} fault={faults[path]} problem={problems[path]} {...events} />
          ))}
        </Box>
      ))}
    </>
  );
}

interface EntryProps extends FormEvents {
  path: string;
  design: Design;
  fault?: string;
  problem?: string;
}

function Entry({ path, design, fault, problem, ...events }: EntryProps) {
  const value = valueAt(design, path);
  const quantity = quantityAt(path);
  const { label, meaning } = quantity;
  if (path === 'controller') {
    const needed = design.load.kind === 'tracker';
    return (
      <SectionToggle
        path={path}
        label={label}
        meaning={meaning}
        present={value !== undefined}
        needed={needed}
        problem={problem}
        onChange={(present) => events.onToggle(path, present)}
      />
    );
  }
  const entry = entryAt(path, design);
  const isThere = value !== undefined || (entry?.optional && valueAt(design, path.split('.').slice(0, -1).join('.')) !== undefined);
  if (!entry || !isThere) return null;
  if (entry.choices) {
    const isKind = typeof value === 'object';
    const current = isKind ? (value as { kind: string }).kind : (value as string);
    return (
      <ChoiceInput
        path={path}
        label={label}
        meaning={meaning}
        value={current}
        choices={entry.choices.map((choice) => ({ value: choice, word: choiceWord(choice) }))}
        problem={problem}
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
      path={path}
      label={label}
      meaning={meaning}
      value={(value as string | undefined) ?? ''}
      maxLength={40}
      problem={problem}
      onChange={(text) => events.onEdit(path, text, true)}
      onSettle={events.onSettle}
    />
  );
}
