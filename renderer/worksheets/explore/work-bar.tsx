import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import LinearProgress from '@mui/material/LinearProgress';
import type { ReactNode } from 'react';

interface Props {
  label: string;
  /** Of 1; undefined while nothing runs. */
  share: number | undefined;
  disabled?: boolean;
  onStart: () => void;
  onStop: () => void;
  children: ReactNode;
}

/** Starts and stops long work, and says how far it is. */
export function WorkBar({ label, share, disabled, onStart, onStop, children }: Props) {
  return (
    <Box sx={{ py: 1 }}>
      <Box sx={{ display: 'flex', gap: 1.5, alignItems: 'center', fontSize: 13, color: 'text.secondary' }}>
        {share === undefined ? (
          <Button variant="outlined" disabled={disabled} onClick={onStart} sx={{ flexShrink: 0 }}>
            {label}
          </Button>
        ) : (
          <Button variant="outlined" onClick={onStop} sx={{ flexShrink: 0 }}>
            Stop
          </Button>
        )}
        <span role="status">{children}</span>
      </Box>
      <LinearProgress
        variant="determinate"
        aria-label={`${label}: how far it is`}
        value={100 * Math.min(1, share ?? 0)}
        sx={{
          mt: 0.75,
          height: 3,
          visibility: share === undefined ? 'hidden' : 'visible',
          '& .MuiLinearProgress-bar': { transition: 'none' },
        }}
      />
    </Box>
  );
}
