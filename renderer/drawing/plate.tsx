import Box from '@mui/material/Box';
import ButtonBase from '@mui/material/ButtonBase';
import type { ReactNode } from 'react';

/** A drawing or chart with its name over it and its buttons beside the name. */
export function Plate({ title, tools, note, children }: { title: string; tools?: ReactNode; note?: ReactNode; children: ReactNode }) {
  return (
    <Box
      component="section"
      aria-label={title}
      sx={{ minWidth: 0, border: 1, borderColor: 'divider', bgcolor: (t) => t.palette.tones.well, borderRadius: '3px' }}
    >
      <Box
        sx={{ display: 'flex', alignItems: 'center', gap: 1, pl: 1.25, pr: 0.75, minHeight: 30, borderBottom: 1, borderColor: 'divider' }}
      >
        <Box component="h3" sx={{ m: 0, fontSize: 13, fontWeight: 500, flex: 1, minWidth: 0 }}>
          {title}
        </Box>
        {tools}
      </Box>
      {children}
      {note && <Box sx={{ px: 1.25, pb: 1, fontSize: 12.5, color: 'text.secondary' }}>{note}</Box>}
    </Box>
  );
}

/** A small button over a drawing. */
export function Tool({ label, onClick, children }: { label: string; onClick: () => void; children: ReactNode }) {
  return (
    <ButtonBase
      aria-label={label}
      title={label}
      onClick={onClick}
      sx={{
        minWidth: 24,
        height: 22,
        px: 0.75,
        fontSize: 12,
        color: 'text.secondary',
        borderRadius: '3px',
        '&:hover': { color: 'text.primary', bgcolor: 'action.hover' },
      }}
    >
      {children}
    </ButtonBase>
  );
}

/** From here on the lettering is legible. [px] */
const LEAST = { drawings: 400, charts: 320 };

/** Columns of plates, side by side where there is room for them. */
export function Plates({ of, children }: { of: keyof typeof LEAST; children: ReactNode }) {
  return (
    <Box
      sx={{
        display: 'grid',
        gridTemplateColumns: `repeat(auto-fit, minmax(min(${LEAST[of]}px, 100%), 1fr))`,
        gap: 1.5,
        alignItems: 'start',
      }}
    >
      {children}
    </Box>
  );
}

/** Plates that stay below one another. */
export function Column({ children }: { children: ReactNode }) {
  return <Box sx={{ display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', gap: 1.5 }}>{children}</Box>;
}

/** A plate across all columns. */
export function Wide({ children }: { children: ReactNode }) {
  return <Box sx={{ gridColumn: '1 / -1', minWidth: 0 }}>{children}</Box>;
}
