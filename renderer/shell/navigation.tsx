import Box from '@mui/material/Box';
import ButtonBase from '@mui/material/ButtonBase';
import { useResults } from '../state/results';
import { setView, useView } from '../state/view';
import { worksheetFor, worksheets } from '../worksheets/registry';

const tones = { danger: 'error.main', warning: 'warning.main', note: null } as const;

export function Navigation() {
  const current = useView((s) => s.worksheet);
  const cautions = useResults((s) => s.results?.cautions);
  const gravest = (id: string) => {
    const own = cautions?.filter((c) => worksheetFor(c.where)?.id === id) ?? [];
    return own.some((c) => c.severity === 'danger') ? 'danger' : own.some((c) => c.severity === 'warning') ? 'warning' : 'note';
  };
  return (
    <Box component="nav" aria-label="Worksheets" sx={{ borderRight: 1, borderColor: 'divider', py: 1, overflowY: 'auto' }}>
      {worksheets.map(({ id, title }) => {
        const tone = tones[gravest(id)];
        return (
          <ButtonBase
            key={id}
            aria-current={id === current ? 'page' : undefined}
            onClick={() => setView({ worksheet: id })}
            sx={(t) => ({
              display: 'flex',
              width: '100%',
              justifyContent: 'space-between',
              px: 1.75,
              height: 34,
              fontSize: 13.5,
              borderLeft: '3px solid transparent',
              color: 'text.secondary',
              '&:hover': { color: 'text.primary' },
              '&:focus-visible': { outlineOffset: -2 },
              '&[aria-current]': {
                color: 'text.primary',
                fontWeight: 500,
                borderLeftColor: 'primary.main',
                background: t.palette.background.paper,
              },
            })}
          >
            {title}
            {tone && (
              <Box
                component="span"
                role="img"
                aria-label={`has a ${gravest(id)}`}
                sx={{ width: 7, height: 7, borderRadius: '50%', bgcolor: tone }}
              />
            )}
          </ButtonBase>
        );
      })}
    </Box>
  );
}
