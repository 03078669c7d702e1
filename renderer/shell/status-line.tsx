import Box from '@mui/material/Box';
import { useEffect, useState } from 'react';

/** What the entry or result with the focus means; quiet, always in the same place. */
export function StatusLine() {
  const [meaning, setMeaning] = useState('');
  useEffect(() => {
    const look = (event: FocusEvent) => {
      const holder = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-meaning]') : null;
      setMeaning(holder?.dataset['meaning'] ?? '');
    };
    document.addEventListener('focusin', look);
    return () => document.removeEventListener('focusin', look);
  }, []);
  return (
    <Box
      component="footer"
      sx={{
        height: 26,
        px: 1.75,
        display: 'flex',
        alignItems: 'center',
        justifyContent: 'space-between',
        borderTop: 1,
        borderColor: 'divider',
        bgcolor: 'background.paper',
        fontSize: 12,
        color: 'text.secondary',
        whiteSpace: 'nowrap',
        overflow: 'hidden',
      }}
    >
      <span>{meaning}</span>
      <span>↑ ↓, or dragging its label, step an entry; with Shift ten times, with Alt a tenth</span>
    </Box>
  );
}
