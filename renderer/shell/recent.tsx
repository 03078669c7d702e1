import Box from '@mui/material/Box';
import List from '@mui/material/List';
import ListItem from '@mui/material/ListItem';
import ListItemButton from '@mui/material/ListItemButton';
import { openAgain } from '../actions/open-again';
import { unlessUnsaved } from '../actions/unless-unsaved';
import type { RecentDesign } from '../state/recent';
import { setView, useView } from '../state/view';

function open(recent: RecentDesign) {
  setView({ dialog: null });
  unlessUnsaved(() => void openAgain(recent));
}

/** Designs last opened or saved here. */
export function RecentDesigns() {
  const recent = useView((s) => s.recent);
  return (
    <>
      <Box sx={{ color: 'text.secondary', mb: 1 }}>
        Each from its file; where that cannot be had, as it was when last opened or saved here.
      </Box>
      <List dense disablePadding>
        {recent.map((design) => (
          <ListItem key={design.id ?? design.name} disablePadding>
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
