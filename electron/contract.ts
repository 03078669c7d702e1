/**
 * What the renderer may ask of the machine it runs on. The window host answers over IPC, the served host over loopback or with the browser's
 * own means. A file is known to the renderer by a token, never by its path.
 */
export interface OpenedFile extends KeptFile {
  text: string;
}

/** A design's file on the user's machine. */
export interface KeptFile {
  /** As long as the page is there. */
  token: string;
  /** The same for the same file in every run; absent where the host could not find it again. */
  id?: string;
  name: string;
}

export type FileKind = 'gapwright' | 'pdf' | 'csv' | 'svg' | 'png' | 'dxf';

export interface MenuEntry {
  id: string;
  label: string;
  /** As in `Ctrl+Shift+S`; the host turns Ctrl into ⌘ on macOS. */
  shortcut?: string;
  group: string;
  enabled: boolean;
}

export interface Host {
  /** Asks for a design; null when the user thinks better of it. */
  openDesign(): Promise<OpenedFile | null>;
  /** The design that the system asked the program to open, by a double click or on the command line; null when there is none (any more). */
  takeWaitingDesign(): Promise<OpenedFile | null>;
  /** Opens a file known from before, perhaps from an earlier run; null when the user thinks better of it. */
  reopenDesign(id: string): Promise<OpenedFile | null>;
  /** Whether another program has changed the file since it was last read or written here. */
  isChanged(token: string): Promise<boolean>;
  /** Writes a design back to where the token came from; asks first when another program has changed what is there. */
  saveDesign(token: string, text: string): Promise<void>;
  /** Asks where, then writes; null when the user thinks better of it. */
  saveDesignAs(suggestedName: string, text: string): Promise<KeptFile | null>;
  /** Asks where, then writes bytes that are not a design: a sheet, a cutting file, a table. */
  exportFile(suggestedName: string, kind: FileKind, bytes: Uint8Array): Promise<{ name: string } | null>;
  /** The newest text kept for recovery by a page that is gone. It is this page's from now on, to keep or to forget. */
  readRecovery(): Promise<string | null>;
  /** Keeps, or with null forgets, the recovery text. */
  writeRecovery(text: string | null): Promise<void>;
  readSettings(): Promise<string | null>;
  writeSettings(text: string): Promise<void>;
  /** Tells the host whether closing would lose work. */
  setUnsaved(unsaved: boolean): Promise<void>;
  /** Gives the host the menu to show; a chosen entry comes back through `onMenu`. */
  setMenu(entries: MenuEntry[]): Promise<void>;
}

export const hostCalls = {
  openDesign: true,
  takeWaitingDesign: true,
  reopenDesign: true,
  isChanged: true,
  saveDesign: true,
  saveDesignAs: true,
  exportFile: true,
  readRecovery: true,
  writeRecovery: true,
  readSettings: true,
  writeSettings: true,
  setUnsaved: true,
  setMenu: true,
} satisfies Record<keyof Host, true>;

/**
 * What the served host answers: the texts that must outlive a page. Several pages may be open at once, so each names itself and has a recovery
 * text of its own; the pages that are there are told, so that only the text of one that is gone is handed on.
 */
export interface KeepingHost {
  readRecovery(page: string, present: string[]): Promise<string | null>;
  writeRecovery(page: string, text: string | null): Promise<void>;
  readSettings(): Promise<string | null>;
  writeSettings(text: string): Promise<void>;
  setUnsaved(page: string, unsaved: boolean): Promise<void>;
}

/** What preload puts on `window.gapwrightHost` in the desktop window; absent in a browser. */
export interface WindowHost extends Host {
  /** The id `design-waiting` is the host's own: time to call `takeWaitingDesign`. Every other id is one that `setMenu` gave. */
  onMenu(listener: (id: string) => void): () => void;
}
