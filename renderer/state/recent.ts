import { serializeDesign } from '../../core';
import { designStore } from './design';
import { setView, viewStore } from './view';

/** A file that was opened or saved here, and what was in it then: it may have been moved since, or lie where this program may not look again. */
export interface RecentDesign {
  /** By which the host finds the file again; absent where it cannot. */
  id?: string;
  /** The file's. */
  name: string;
  title: string;
  text: string;
}

const MOST = 8;
/** Larger ones would make the settings slow to write. [characters] */
const LONGEST = 200_000;

/** Notes every design that is opened from a file or saved to one, the last first. */
export function startRecent(): void {
  designStore.subscribe(({ file, saved }, before) => {
    if (!file || !saved || (file === before.file && saved === before.saved)) return;
    const text = serializeDesign(saved);
    const { id, name } = file;
    const others = viewStore.getState().recent.filter((each) => (each.id ?? each.name) !== (id ?? name));
    const latest = { ...(id !== undefined && { id }), name, title: saved.title, text };
    if (text.length <= LONGEST) setView({ recent: [latest, ...others].slice(0, MOST) });
  });
}

/** Designs from a settings file; whatever is not one is left out. */
export function recentFrom(value: unknown): RecentDesign[] {
  return Array.isArray(value) ? value.filter(isRecent).slice(0, MOST) : [];
}

function isRecent(value: unknown): value is RecentDesign {
  if (typeof value !== 'object' || value === null) return false;
  const { id = '', name, title, text } = value as Record<string, unknown>;
  return [id, name, title, text].every((each) => typeof each === 'string');
}
