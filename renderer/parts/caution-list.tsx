import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import type { Caution } from '../../core';
import { told } from '../units';
import { quantityAt } from '../words';
import { DangerIcon, NoteIcon, WarningIcon } from './icons';
import { useUnits } from './unit-preferences';

const severities = {
  danger: { Icon: DangerIcon, color: 'error.main', word: 'Danger' },
  warning: { Icon: WarningIcon, color: 'warning.main', word: 'Warning' },
  note: { Icon: NoteIcon, color: 'info.main', word: 'Note' },
} as const;
const order = ['danger', 'warning', 'note'] as const;

interface Props {
  cautions: Caution[];
  onGo: (where: string) => void;
}

/** What a builder must know, the gravest first; each names the entry to look at. */
export function CautionList({ cautions, onGo }: Props) {
  const units = useUnits();
  const sorted = [...cautions].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return (
    <Box component="ul" sx={{ listStyle: 'none', m: 0, p: 0 }}>
      {sorted.map((caution, i) => {
        const { Icon, color, word } = severities[caution.severity];
        return (
          <Box component="li" key={i} sx={{ display: 'flex', gap: 1, py: 0.75, borderBottom: 1, borderColor: 'divider', fontSize: 13 }}>
            <Icon titleAccess={word} sx={{ color, mt: 0.1 }} />
            <Box sx={{ flex: 1, minWidth: 0, overflowWrap: 'anywhere' }}>{told(caution, units)}</Box>
            {caution.where && (
              <Button size="small" onClick={() => onGo(caution.where)} sx={{ alignSelf: 'start', py: 0, whiteSpace: 'nowrap' }}>
                {quantityAt(caution.where).label}
              </Button>
            )}
          </Box>
        );
      })}
    </Box>
  );
}
