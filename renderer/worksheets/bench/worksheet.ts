import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const bench: Worksheet = {
  id: 'bench',
  title: 'Bench',
  purpose: 'What the meter must read, what it did read, and what that means.',
  groups: [],
  results: [
    'coils.coilResistance20',
    'coils.phaseResistance20',
    'stages.emf.coilRmsPer1000rpm',
    'emf.phaseRmsPer1000rpm',
    'emf.lineRmsPer1000rpm',
    'emf.hertzPer1000rpm',
  ],
  cautions: ['bench'],
  Figure,
  Panel,
};
