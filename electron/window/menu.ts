import type { Menu, MenuItemConstructorOptions } from 'electron';
import type { MenuEntry } from '../contract';

/** Shows the renderer's entries, one menu per group, with the system's own beside them. */
export function showMenu(
  entries: MenuEntry[],
  menu: Pick<typeof Menu, 'buildFromTemplate' | 'setApplicationMenu'>,
  platform: NodeJS.Platform,
  choose: (id: string) => void,
): Promise<void> {
  menu.setApplicationMenu(menu.buildFromTemplate(menuTemplate(entries, platform, choose)));
  return Promise.resolve();
}

export function menuTemplate(entries: MenuEntry[], platform: NodeJS.Platform, choose: (id: string) => void): MenuItemConstructorOptions[] {
  const groups = new Map<string, MenuItemConstructorOptions[]>();
  for (const entry of entries) groups.set(entry.group, [...(groups.get(entry.group) ?? []), item(entry, choose)]);
  const edit = groups.get('Edit') ?? [];
  groups.set('Edit', [...edit, ...(edit.length ? [separator] : []), ...clipboard]);
  return [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } as const] : []),
    ...[...groups].map(([label, submenu]) => ({ label, submenu })),
    { label: 'Window', submenu: windowItems },
  ];
}

const separator: MenuItemConstructorOptions = { type: 'separator' };
const clipboard: MenuItemConstructorOptions[] = [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }];
const windowItems: MenuItemConstructorOptions[] = [
  { role: 'zoomIn' },
  { role: 'zoomOut' },
  { role: 'resetZoom' },
  separator,
  { role: 'togglefullscreen' },
  { role: 'minimize' },
  { role: 'close' },
];

/** The page sees every key first, as it does in a browser; the menu only shows the shortcut, or a key would act twice. */
function item({ id, label, shortcut, enabled }: MenuEntry, choose: (id: string) => void): MenuItemConstructorOptions {
  return {
    id,
    label,
    enabled,
    ...(shortcut ? { accelerator: shortcut.replace(/\bCtrl\b/, 'CmdOrCtrl'), registerAccelerator: false } : {}),
    click: () => choose(id),
  };
}
