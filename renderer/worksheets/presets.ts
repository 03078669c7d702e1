import type { Design } from '../../core';
import type { Preset } from '../parts/preset-picker';
import type { EntryGroup } from './worksheet';

export function presetsFor(kind: NonNullable<EntryGroup['preset']>, design: Design, wireTable: 'metric' | 'awg'): Preset[] | undefined {
  void kind;
  void design;
  void wireTable;
  return undefined;
}
