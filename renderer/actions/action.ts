/** One thing the user can ask for; menu, keys and buttons all read it. */
export interface Action {
  id: string;
  /** As menus show it now; what it will do may depend on the state, as in "Undo turns 60 → 64". */
  label: () => string;
  /** As in `Ctrl+Shift+S`; Ctrl is ⌘ on a Mac. */
  shortcut?: string;
  group: 'File' | 'Edit' | 'View' | 'Go';
  enabled: () => boolean;
  perform: () => void | Promise<void>;
}

export const always = () => true;
