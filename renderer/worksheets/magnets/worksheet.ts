import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Gaussmeter } from './gaussmeter';

export const magnets: Worksheet = {
  id: 'magnets',
  title: 'Magnets and gap',
  purpose: 'How strong the field is where the copper will be.',
  groups: [
    {
      title: 'Magnet',
      preset: 'magnet',
      entries: [
        'magnets.shape',
        'magnets.shape.radial',
        'magnets.shape.tangential',
        'magnets.shape.diameter',
        'magnets.shape.innerRadius',
        'magnets.shape.outerRadius',
        'magnets.shape.span',
        'magnets.shape.axial',
      ],
    },
    {
      title: 'Grade',
      preset: 'grade',
      Tool: Gaussmeter,
      entries: [
        'magnets.remanence',
        'magnets.remanenceTempCoefficient',
        'magnets.intrinsicCoercivity',
        'magnets.recoilPermeability',
        'magnets.maxTemperature',
        'surroundings.magnetTemperature',
      ],
      optional: ['magnets.intrinsicCoercivity'],
    },
    {
      title: 'Discs',
      entries: [
        'discs.arrangement',
        'discs.poles',
        'discs.pitchRadius',
        'discs.runningClearance',
        'discs.misalignment',
        'discs.backing',
        'discs.backing.thickness',
      ],
    },
  ],
  results: [
    'gap.length',
    'gap.peak',
    'stages.field.textbook.peak',
    'stages.field.textbook.departure',
    'gap.fundamental',
    'gap.plate',
    'stages.magnets.remanence',
    'stages.field.saturation',
    'stages.field.recoil',
  ],
  cautions: ['magnets', 'discs', 'surroundings.magnetTemperature'],
  Figure,
};
