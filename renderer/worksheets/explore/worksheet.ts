import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const explore: Worksheet = {
  id: 'explore',
  title: 'Shelf search',
  purpose: 'What the reels already in hand can become.',
  groups: [],
  results: [],
  cautions: ['shelf'],
  Figure,
  Panel,
};
