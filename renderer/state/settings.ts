import { desktop } from '../desktop';
import { ownPresetsFrom } from './own-presets';
import { recentFrom } from './recent';
import { viewStore, type ViewState } from './view';
import { whereKept } from './where-kept';

const allowed: Partial<Record<keyof ViewState, readonly string[]>> = {
  length: ['mm', 'in'],
  wire: ['metric', 'awg'],
  temperature: ['C', 'F'],
  theme: ['system', 'light', 'dark'],
  paper: ['a4', 'letter'],
};

/** The part of the view that is kept in the user's settings. */
export function settingsOf(view: ViewState): Partial<ViewState> {
  return Object.fromEntries(Object.entries(view).filter(([key]) => whereKept[key as keyof ViewState] === 'settings'));
}

/** Settings from their text; what is unknown or out of place is left at its default. */
export function settingsFrom(text: string | null, worksheets: readonly string[]): Partial<ViewState> {
  let value: unknown;
  try {
    value = JSON.parse(text ?? '{}');
  } catch {
    return {};
  }
  if (typeof value !== 'object' || value === null) return {};
  const choices: Partial<Record<string, readonly string[]>> = { ...allowed, worksheet: worksheets };
  const chosen = Object.entries(value).filter(([key, v]) => typeof v === 'string' && choices[key]?.includes(v));
  return {
    ...Object.fromEntries(chosen),
    ...('ownPresets' in value && { ownPresets: ownPresetsFrom(value.ownPresets) }),
    ...('recent' in value && { recent: recentFrom(value.recent) }),
  };
}

/**
 * Reads the settings, then keeps them as they change.
 *
 * @returns  Whether there were none: the program runs for the first time.
 */
export async function startSettings(worksheets: readonly string[]): Promise<boolean> {
  const kept = await desktop.readSettings().catch(() => null);
  viewStore.setState(settingsFrom(kept, worksheets));
  let written = JSON.stringify(settingsOf(viewStore.getState()));
  if (kept === null) await desktop.writeSettings(written).catch(() => undefined);
  viewStore.subscribe((view) => {
    const text = JSON.stringify(settingsOf(view));
    if (text === written) return;
    written = text;
    void desktop.writeSettings(text).catch(() => undefined);
  });
  return kept === null;
}
