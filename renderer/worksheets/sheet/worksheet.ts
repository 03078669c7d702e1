import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Parts, Tables } from './files';
import { Paper } from './paper';

export const sheet: Worksheet = {
  id: 'sheet',
  title: 'Winding sheet',
  purpose: 'What lies on the bench while the coils are wound.',
  groups: [
    { title: 'Paper', entries: [], Tool: Paper },
    {
      title: 'What the parts must fit',
      entries: [
        'workshop',
        'workshop.magnetFit',
        'workshop.shaftHole',
        'workshop.bolts',
        'workshop.boltCircle',
        'workshop.boltHole',
        'workshop.mountingBolts',
        'workshop.mountingHole',
      ],
    },
    { title: 'Parts to cut', entries: [], Tool: Parts },
    { title: 'Tables', entries: [], Tool: Tables },
  ],
  results: [],
  cautions: ['title', 'notes', 'workshop'],
  Figure,
};
