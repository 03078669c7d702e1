import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const bench: Worksheet = {
  id: 'bench',
  title: 'Bench',
  purpose: 'What the meter must read, what it did read, and what that means.',
  groups: [],
  results: [],
  cautions: ['bench'],
  Figure,
  Panel,
};
