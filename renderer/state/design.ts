import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { blankDesign, kindDefaults, sectionDefaults, type Design } from '../../core';
import { committed, historyOf, redone, settled, undone, type History } from './history';
import { valueAt, withValueAt } from '../path';

export interface OpenFile {
  /** Given by the host; absent until the design has been saved once. */
  token?: string;
  /** By which the host finds it again in a later run. */
  id?: string;
  name: string;
}

export interface DesignState {
  design: Design;
  history: Omit<History<Design>, 'present'>;
  file: OpenFile | null;
  /** As last saved or opened; null when the design on screen never was (a recovered one). */
  saved: Design | null;
  /** Entry boxes whose text is not a usable value, by path. */
  faults: Record<string, string>;
}

/** How a step reads in "undo …": the label and the values in the user's own units. Set by the shell, which knows the words. */
export type StepName = (path: string, before: unknown, after: unknown) => string;

const fresh = (design: Design): DesignState => ({ design, history: { past: [], future: [] }, file: null, saved: design, faults: {} });

export const designStore = createStore<DesignState>(() => fresh(blankDesign()));

export function useDesign<T>(select: (state: DesignState) => T): T {
  return useStore(designStore, select);
}

const historyNow = (): History<Design> => ({ ...designStore.getState().history, present: designStore.getState().design });

function put({ present, past, future, merging }: History<Design>): void {
  designStore.setState({ design: present, history: { past, future, merging } });
}

/** Whether there is something that closing would lose. */
export const isUnsaved = (state: DesignState): boolean =>
  state.saved === null || JSON.stringify(state.saved) !== JSON.stringify(state.design);

/** Changes one entry. `typed` steps in the same box merge into one until the box is left. */
export function editEntry(path: string, value: unknown, name: StepName, typed = false): void {
  const now = historyNow();
  put(
    committed(now, withValueAt(now.present, path, value), (before) => name(path, valueAt(before, path), value), typed ? path : undefined),
  );
}

/** Changes a list from what it is now, not from what a screen last showed: two boxes filled in quick turn both count. */
export function editList<T>(path: string, change: (list: T[]) => T[], name: StepName): void {
  editEntry(path, change((valueAt(historyNow().present, path) as T[] | undefined) ?? []), name, true);
}

/** Changes several entries as one step. */
export function editEntries(changes: Record<string, unknown>, name: string): void {
  const now = historyNow();
  const next = Object.entries(changes).reduce((design, [path, value]) => withValueAt(design, path, value), now.present);
  put(committed(now, next, () => name));
}

/** Puts a whole other design in the place of this one, as one step to undo. */
export function takeOver(design: Design, name: string): void {
  put(committed(historyNow(), design, () => name));
  designStore.setState({ faults: {} });
}

/** Another kind of shape, backing, layout or load, keeping what the two kinds have in common. */
export function changeKind(path: string, kind: string, name: StepName): void {
  const now = historyNow();
  const old = valueAt(now.present, path) as Record<string, unknown>;
  const made = kindDefaults(path, kind) as Record<string, unknown>;
  const shared = Object.fromEntries(Object.keys(made).map((key) => [key, key !== 'kind' && key in old ? old[key] : made[key]]));
  let next = withValueAt(now.present, path, { ...shared, kind });
  // A tracker is nothing without its data sheet: the two come together.
  if (path === 'load' && kind === 'tracker' && !next.controller) next = withValueAt(next, 'controller', sectionDefaults('controller'));
  put(committed(now, next, () => name(`${path}.kind`, old.kind, kind)));
  clearFaults(path);
}

/** Sections of the design that a form adds and takes out. */
export type OptionalSection = 'controller' | 'workshop';

/** Adds an optional section at its defaults, or takes it out. */
export function toggleSection(section: OptionalSection, present: boolean, name: string): void {
  const now = historyNow();
  put(committed(now, withValueAt(now.present, section, present ? sectionDefaults(section) : undefined), () => name));
  clearFaults(section);
}

export function settleEntry(): void {
  put(settled(historyNow()));
}

export function setFault(path: string, message: string | null): void {
  const { [path]: old, ...others } = designStore.getState().faults;
  if ((old ?? null) !== message) designStore.setState({ faults: message === null ? others : { ...others, [path]: message } });
}

function clearFaults(under: string): void {
  const { faults } = designStore.getState();
  designStore.setState({ faults: Object.fromEntries(Object.entries(faults).filter(([p]) => p !== under && !p.startsWith(`${under}.`))) });
}

/** Takes back what is typed and not usable, if there is such; else the last step. */
export function undo(): void {
  if (Object.keys(designStore.getState().faults).length === 0) put(undone(historyNow()));
  designStore.setState({ faults: {} });
}

export function redo(): void {
  put(redone(historyNow()));
  designStore.setState({ faults: {} });
}

/** Another design altogether: a new one, an opened one, a demo. Its history starts here. */
export function loadDesign(design: Design, file: OpenFile | null): void {
  const { past, future } = historyOf(design);
  designStore.setState({ design, history: { past, future }, file, saved: design, faults: {} });
}

/** A design from the recovery copy: on screen, nowhere else. */
export function recoverDesign(design: Design): void {
  loadDesign(design, null);
  designStore.setState({ saved: null });
}

export function markSaved(design: Design, file: OpenFile): void {
  designStore.setState({ saved: design, file });
}
