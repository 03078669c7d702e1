import Button from '@mui/material/Button';
import Divider from '@mui/material/Divider';
import Menu from '@mui/material/Menu';
import MenuItem from '@mui/material/MenuItem';
import { memo, useState } from 'react';
import type { Action } from '../actions/action';
import { attempt } from '../actions/attempt';
import { shortcutText } from '../actions/keys';
import { isMac } from '../desktop';
import { MenuDownIcon } from '../parts/icons';

/** A drop-down of actions; `null` is a rule between them. What they are called and can do is looked up when it opens. */
export const MenuButton = memo(function MenuButton({ label, actions }: { label: string; actions: readonly (Action | null)[] }) {
  const [anchor, setAnchor] = useState<HTMLElement | null>(null);
  const close = () => setAnchor(null);
  const id = `menu-${label.toLowerCase()}`;
  return (
    <>
      <Button
        id={`${id}-button`}
        color="inherit"
        aria-haspopup="menu"
        aria-controls={anchor ? id : undefined}
        aria-expanded={anchor ? 'true' : 'false'}
        onClick={(event) => setAnchor(event.currentTarget)}
        endIcon={<MenuDownIcon />}
        sx={{ '& .MuiButton-endIcon': { ml: 0.25 } }}
      >
        {label}
      </Button>
      <Menu
        id={id}
        anchorEl={anchor}
        open={anchor !== null}
        onClose={close}
        slotProps={{ list: { 'aria-labelledby': `${id}-button`, dense: true } }}
      >
        {actions.map((action, i) =>
          action === null ? (
            <Divider key={i} component="li" />
          ) : (
            <MenuItem
              key={action.id}
              disabled={!action.enabled()}
              onClick={() => {
                close();
                void attempt(action);
              }}
            >
              <span style={{ flex: 1, paddingRight: 32 }}>{action.label()}</span>
              <kbd style={{ font: 'inherit', fontSize: 12, opacity: 0.75 }}>
                {action.shortcut && shortcutText(action.shortcut, isMac())}
              </kbd>
            </MenuItem>
          ),
        )}
      </Menu>
    </>
  );
});
