import type { Worksheet } from '../worksheet';
import { Figure } from './figure';

export const wire: Worksheet = {
  id: 'wire',
  title: 'Wire and fit',
  purpose: 'Which wire goes in the room there is, and how much of it.',
  groups: [
    {
      title: 'Wire',
      preset: 'wire',
      entries: [
        'winding.wire.metal',
        'winding.wire.conductorDiameter',
        'winding.wire.overallDiameter',
        'winding.wire.inHand',
        'winding.wire.thermalClass',
      ],
    },
    { title: 'Room', entries: ['winding.turns', 'winding.thickness', 'winding.layout.legWidth', 'winding.leadLength'] },
  ],
  results: [
    'coils.fill',
    'stages.wire.turnsTooMany',
    'stages.winding.windowArea',
    'stages.wire.metalSection',
    'stages.wire.coilLength',
    'coils.wireLength',
    'coils.wireMass',
    'coils.coilResistance20',
    'coils.phaseResistance20',
  ],
  cautions: ['winding.wire', 'winding.turns', 'winding.thickness'],
  Figure,
};
