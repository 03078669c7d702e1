import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const sheet: Worksheet = {
  id: 'sheet',
  title: 'Winding sheet',
  purpose: 'What lies on the bench while the coils are wound.',
  groups: [],
  results: [],
  cautions: ['title', 'notes'],
  Figure,
  Panel,
};
