import Box from '@mui/material/Box';
import IconButton from '@mui/material/IconButton';
import InputBase from '@mui/material/InputBase';
import Tooltip from '@mui/material/Tooltip';
import type { ComponentType } from 'react';
import type { Action } from '../actions/action';
import { attempt } from '../actions/attempt';
import { shortcutText } from '../actions/keys';
import { compare } from '../actions/compare';
import { newDesign } from '../actions/new-design';
import { newFromDemo } from '../actions/new-from-demo';
import { newFromHand } from '../actions/new-from-hand';
import { open } from '../actions/open';
import { openRecent } from '../actions/open-recent';
import { pin } from '../actions/pin';
import { printReport, printSheet } from '../actions/print';
import { redo } from '../actions/redo';
import { save } from '../actions/save';
import { saveAs } from '../actions/save-as';
import { sideBySide } from '../actions/side-by-side';
import { theme } from '../actions/theme';
import { undo } from '../actions/undo';
import { lengthUnit, temperatureUnit, wireSizes } from '../actions/units';
import { isMac } from '../desktop';
import { DarkIcon, LightIcon, PrintIcon, RedoIcon, SystemIcon, UndoIcon } from '../parts/icons';
import { editEntry, isUnsaved, settleEntry, useDesign } from '../state/design';
import { useResults } from '../state/results';
import { useView } from '../state/view';
import { NARROW } from '../theme';
import { MenuButton } from './menu-button';

const menus = {
  File: [newDesign, newFromHand, newFromDemo, open, openRecent, null, save, saveAs, null, printSheet, printReport],
  Variants: [pin, compare, sideBySide],
  Units: [lengthUnit, wireSizes, temperatureUnit],
};
const themeIcons = { system: SystemIcon, light: LightIcon, dark: DarkIcon };

export function TopBar() {
  const themeChoice = useView((s) => s.theme);
  return (
    <Box
      component="header"
      sx={{
        display: 'flex',
        alignItems: 'center',
        gap: 0.5,
        px: 1.5,
        height: 44,
        [NARROW]: { flexWrap: 'wrap', height: 'auto', py: 0.5 },
        borderBottom: 1,
        borderColor: 'divider',
        bgcolor: 'background.paper',
      }}
    >
      <Wordmark />
      {Object.entries(menus).map(([label, entries]) => (
        <MenuButton key={label} label={label} actions={entries} />
      ))}
      <IconAction action={undo} Icon={UndoIcon} />
      <IconAction action={redo} Icon={RedoIcon} />
      <Title />
      <Box sx={{ display: 'none', flex: 1, [NARROW]: { display: 'block' } }} />
      <IconAction action={printSheet} Icon={PrintIcon} />
      <IconAction action={theme} Icon={themeIcons[themeChoice]} />
    </Box>
  );
}

/** The design's title, to be typed over, and where it is kept. */
function Title() {
  const title = useDesign((s) => s.design.title);
  const file = useDesign((s) => s.file);
  const unsaved = useDesign(isUnsaved);
  return (
    <Box
      sx={{
        flex: 1,
        display: 'flex',
        alignItems: 'center',
        justifyContent: 'center',
        gap: 1.25,
        minWidth: 0,
        px: 2,
        [NARROW]: { flex: '1 0 100%', order: 1 },
      }}
    >
      <InputBase
        value={title}
        onChange={(event) => editEntry('title', event.target.value, () => 'title', true)}
        onBlur={settleEntry}
        placeholder="Untitled"
        inputProps={{ 'aria-label': 'Title of the design', maxLength: 200 }}
        sx={(t) => ({
          width: 'min(420px, 100%)',
          height: 30,
          borderRadius: '3px',
          border: '1px solid transparent',
          '&:hover': { borderColor: t.palette.divider },
          '&:focus-within': { outline: `1px solid ${t.palette.tones.accent}`, borderColor: 'primary.main', bgcolor: t.palette.tones.well },
          '& input': { textAlign: 'center', fontSize: 15, fontWeight: 500, py: 0, '&:focus-visible': { outline: 'none' } },
        })}
      />
      <Box component="span" sx={{ fontSize: 12, color: unsaved ? 'primary.main' : 'text.secondary', whiteSpace: 'nowrap', minWidth: 112 }}>
        {unsaved ? '● not saved' : (file?.name ?? '')}
      </Box>
    </Box>
  );
}

function IconAction({ action, Icon }: { action: Action; Icon: ComponentType }) {
  // What an action may do and is called depends on any of the stores.
  const state = () => `${action.label()}${action.enabled()}`;
  useDesign(state);
  useResults(state);
  useView(state);
  const label = action.label();
  const keys = action.shortcut ? ` (${shortcutText(action.shortcut, isMac())})` : '';
  return (
    <Tooltip title={`${label}${keys}`}>
      <span>
        <IconButton size="small" aria-label={label} color="inherit" disabled={!action.enabled()} onClick={() => void attempt(action)}>
          <Icon />
        </IconButton>
      </span>
    </Tooltip>
  );
}

/** Two magnet faces and the coil between them. */
function Wordmark() {
  return (
    <Box sx={{ display: 'flex', alignItems: 'center', gap: 1, mr: 1.5 }}>
      <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden>
        <rect x="2" y="2" width="18" height="5" fill="currentColor" />
        <rect x="2" y="15" width="18" height="5" fill="currentColor" />
        <path d="M2 11h3.5m3.5 0h4m3.5 0H20" stroke="currentColor" strokeWidth="1" opacity="0.5" />
        <Box component="g" sx={{ color: 'primary.main' }}>
          <circle cx="7.2" cy="11" r="1.9" fill="currentColor" />
          <circle cx="14.8" cy="11" r="1.9" fill="currentColor" />
        </Box>
      </svg>
      <Box component="span" sx={{ fontWeight: 500, letterSpacing: '0.02em', fontSize: 15 }}>
        Gapwright
      </Box>
    </Box>
  );
}
