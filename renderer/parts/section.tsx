import Box from '@mui/material/Box';
import Typography from '@mui/material/Typography';
import type { ReactNode } from 'react';

/** A titled part of a page. */
export function Section({ title, children }: { title: string; children: ReactNode }) {
  return (
    <Box component="section" aria-label={title} sx={{ mb: 2.5, minWidth: 0 }}>
      <Typography variant="h2" sx={{ pb: 0.5, borderBottom: 1, borderColor: 'divider' }}>
        {title}
      </Typography>
      {children}
    </Box>
  );
}
