import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import { memo } from 'react';
import type { Words } from '../../core';
import { told } from '../units';
import { quantityAt } from '../words';
import { DangerIcon, ErrorIcon, NoteIcon, WarningIcon } from './icons';
import { sentence } from './sentence';
import { useUnits } from './unit-preferences';

const severities = {
  error: { Icon: ErrorIcon, color: 'error.main', word: 'Error' },
  danger: { Icon: DangerIcon, color: 'error.main', word: 'Danger' },
  warning: { Icon: WarningIcon, color: 'warning.main', word: 'Warning' },
  note: { Icon: NoteIcon, color: 'info.main', word: 'Note' },
} as const;
type Severity = keyof typeof severities;
const order = Object.keys(severities) as Severity[];

/** A caution of the design, or an error that keeps it from being worked out. */
export interface ToHeed extends Words {
  severity: Severity;
  /** Path of the entry to look at. */
  where: string;
}

interface Props {
  cautions: readonly ToHeed[];
  onGo: (where: string) => void;
}

/** What a builder must know, the gravest first; each names the entry to look at. */
export function CautionList({ cautions, onGo }: Props) {
  const units = useUnits();
  const sorted = [...cautions].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return (
    <Box component="ul" sx={{ listStyle: 'none', m: 0, p: 0 }}>
      {sorted.map((caution, i) => (
        <Row key={i} severity={caution.severity} where={caution.where} text={sentence(told(caution, units))} onGo={onGo} />
      ))}
    </Box>
  );
}

const Row = memo(function Row({ severity, where, text, onGo }: { severity: Severity; where: string; text: string; onGo: Props['onGo'] }) {
  const { Icon, color, word } = severities[severity];
  return (
    <Box component="li" sx={{ display: 'flex', gap: 1, py: 0.75, borderBottom: 1, borderColor: 'divider', fontSize: 13 }}>
      <Icon titleAccess={word} sx={{ color, mt: 0.1 }} />
      <Box sx={{ flex: 1, minWidth: 0, overflowWrap: 'anywhere' }}>{text}</Box>
      {where && (
        <Button size="small" onClick={() => onGo(where)} sx={{ alignSelf: 'start', py: 0, whiteSpace: 'nowrap' }}>
          {quantityAt(where).label}
        </Button>
      )}
    </Box>
  );
});
