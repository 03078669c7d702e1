import type { Worksheet } from '../worksheet';
import { Figure } from './figure';

export const winding: Worksheet = {
  id: 'winding',
  title: 'Coils',
  purpose: 'What shape the coils have, how many there are and how they join.',
  groups: [
    {
      title: 'Shape',
      entries: [
        'winding.layout',
        'winding.layout.coils',
        'winding.layout.innerRadius',
        'winding.layout.outerRadius',
        'winding.layout.holeInnerRadius',
        'winding.layout.holeOuterRadius',
        'winding.layout.holeInnerWidth',
        'winding.layout.holeOuterWidth',
        'winding.layout.legWidth',
        'winding.layout.placement',
        'winding.thickness',
        'winding.skin',
      ],
    },
    {
      title: 'Turns and joints',
      entries: ['winding.turns', 'winding.phases', 'winding.connection', 'winding.parallelPaths', 'winding.leadLength'],
    },
  ],
  results: [
    'coils.count',
    'stages.winding.seriesCoils',
    'stages.winding.meanTurn',
    'coils.pegDistance',
    'stages.winding.factors.winding',
    'stages.winding.unbalance',
    'coils.phaseInductance',
    'gap.length',
  ],
  cautions: ['winding.layout', 'winding.phases', 'winding.connection', 'winding.parallelPaths', 'winding.skin', 'winding.leadLength'],
  Figure,
};
