import { setView, viewStore } from './view';

export const presetTables = ['magnet', 'grade', 'wire', 'diode', 'battery'] as const;
export type Table = (typeof presetTables)[number];

/** Entries the user keeps under a name of their own, beside the rows of a table. */
export interface OwnPreset {
  table: Table;
  name: string;
  changes: Record<string, unknown>;
}

/** Keeps a row; one of the same name gives way to it. */
export function keepPreset(preset: OwnPreset): void {
  setView({ ownPresets: [...others(preset.table, preset.name), preset] });
}

export function forgetPreset(table: string, name: string): void {
  setView({ ownPresets: others(table, name) });
}

const others = (table: string, name: string) =>
  viewStore.getState().ownPresets.filter((each) => each.table !== table || each.name !== name);

/** Rows from a settings file; whatever is not one is left out. */
export function ownPresetsFrom(value: unknown): OwnPreset[] {
  return Array.isArray(value) ? value.filter(isOwnPreset) : [];
}

function isOwnPreset(value: unknown): value is OwnPreset {
  if (typeof value !== 'object' || value === null) return false;
  const { table, name, changes } = value as Record<string, unknown>;
  return presetTables.some((known) => known === table) && typeof name === 'string' && typeof changes === 'object' && changes !== null;
}
