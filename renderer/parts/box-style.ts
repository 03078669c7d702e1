import type { SxProps, Theme } from '@mui/material/styles';

/** The look of every entry box and list of choices. */
export const boxStyle: SxProps<Theme> = (theme) => ({
  height: 28,
  width: '100%',
  background: theme.palette.tones.well,
  border: `1px solid ${theme.palette.tones.edge}`,
  borderRadius: '3px',
  fontSize: 13,
  color: theme.palette.tones.ink,
  '&:hover': { borderColor: theme.palette.tones.ink },
  '&:focus-within': { borderColor: theme.palette.tones.accent, outline: `1px solid ${theme.palette.tones.accent}` },
  '&.Mui-error': { borderColor: theme.palette.tones.bad, outline: `1px solid ${theme.palette.tones.bad}` },
  '& input': { padding: '0 4px 0 8px', height: '100%', textAlign: 'right', '&:focus-visible': { outline: 'none' } },
  '& select': { padding: '0 22px 0 8px !important', fontSize: 13, '&:focus': { background: 'transparent' } },
});
