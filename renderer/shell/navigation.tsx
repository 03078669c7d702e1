import Box from '@mui/material/Box';
import ButtonBase from '@mui/material/ButtonBase';
import { useResults, type ResultsState } from '../state/results';
import { setView, useView } from '../state/view';
import { NARROW } from '../theme';
import { worksheetFor, worksheets } from '../worksheets/registry';

const tones = { danger: 'error.main', warning: 'warning.main', note: null } as const;

/** The gravest caution of each worksheet, as words in a line: the same words, the same navigation. */
function gravest({ results }: ResultsState): string {
  const all = results?.cautions ?? [];
  return worksheets
    .map(({ id }) => {
      const own = all.filter((c) => worksheetFor(c.where)?.id === id);
      return (['danger', 'warning'] as const).find((severity) => own.some((c) => c.severity === severity)) ?? 'note';
    })
    .join(' ');
}

export function Navigation() {
  const current = useView((s) => s.worksheet);
  const severities = useResults(gravest).split(' ') as (keyof typeof tones)[];
  return (
    <Box
      component="nav"
      aria-label="Worksheets"
      sx={{
        borderRight: 1,
        borderColor: 'divider',
        py: 1,
        overflowY: 'auto',
        [NARROW]: { display: 'flex', flexWrap: 'wrap', py: 0, borderRight: 0, borderBottom: 1, borderColor: 'divider' },
      }}
    >
      {worksheets.map(({ id, title }, i) => {
        const severity = severities[i] ?? 'note';
        const tone = tones[severity];
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
              [NARROW]: { width: 'auto', gap: 1 },
              fontSize: 13.5,
              textAlign: 'left',
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
                aria-label={`has a ${severity}`}
                sx={{ width: 7, height: 7, borderRadius: '50%', bgcolor: tone }}
              />
            )}
          </ButtonBase>
        );
      })}
    </Box>
  );
}
