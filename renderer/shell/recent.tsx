import Box from '@mui/material/Box';
import List from '@mui/material/List';
import ListItem from '@mui/material/ListItem';
import ListItemButton from '@mui/material/ListItemButton';
import { openText } from '../actions/open-text';
import { unlessUnsaved } from '../actions/unless-unsaved';
import type { RecentDesign } from '../state/recent';
import { setView, useView } from '../state/view';

function open({ name, text }: RecentDesign) {
  setView({ dialog: null });
  unlessUnsaved(() => openText(text, { name }));
}

/** Designs last opened or saved here. */
export function RecentDesigns() {
  const recent = useView((s) => s.recent);
  return (
    <>
      <Box sx={{ color: 'text.secondary', mb: 1 }}>As they were when last opened or saved here. Saving one asks where.</Box>
      <List dense disablePadding>
        {recent.map((design) => (
          <ListItem key={design.name} disablePadding>
            <ListItemButton onClick={() => open(design)} sx={{ display: 'block', px: 1 }}>
              <div style={{ fontWeight: 500 }}>{design.title || 'Untitled'}</div>
              <div style={{ fontSize: 12.5, opacity: 0.8 }}>{design.name}</div>
            </ListItemButton>
          </ListItem>
        ))}
      </List>
    </>
  );
}
