import type { DesignState } from './design';
import type { ResultsState } from './results';
import type { ViewState } from './view';

/** In the design's file, in the user's settings, or only until the window closes. */
export type Kept = 'file' | 'settings' | 'nowhere';

/** Every key of every store with its answer; a new key without one does not compile. */
export const whereKept = {
  design: 'file',
  history: 'nowhere',
  file: 'nowhere',
  saved: 'nowhere',
  faults: 'nowhere',

  length: 'settings',
  wire: 'settings',
  temperature: 'settings',
  theme: 'settings',
  paper: 'settings',
  worksheet: 'settings',
  ownPresets: 'settings',
  recent: 'settings',
  message: 'nowhere',
  working: 'nowhere',
  dialog: 'nowhere',

  results: 'nowhere',
  solvedFor: 'nowhere',
  baseline: 'nowhere',
  variants: 'nowhere',
  problems: 'nowhere',
  busy: 'nowhere',
} as const satisfies Record<keyof DesignState | keyof ViewState | keyof ResultsState, Kept>;
