import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const emf: Worksheet = {
  id: 'emf',
  title: 'Volts and amps',
  purpose: 'What comes out of the terminals, and what the rectifier and cable leave of it.',
  groups: [
    {
      title: 'Rectifier',
      preset: 'diode',
      entries: ['rectifier.arrangement', 'rectifier.diode.threshold', 'rectifier.diode.slope'],
    },
    { title: 'Cable', entries: ['cable.side', 'cable.length', 'cable.section', 'cable.metal'] },
    { title: 'Winding', entries: ['winding.turns', 'winding.connection', 'winding.parallelPaths'] },
  ],
  results: [
    'emf.phaseRmsPer1000rpm',
    'stages.emf.textbook.phaseRmsPer1000rpm',
    'stages.emf.textbook.departure',
    'emf.lineRmsPer1000rpm',
    'stages.emf.zeroSequenceRmsPer1000rpm',
    'stages.emf.circulatingAmpsPer1000rpm',
    'emf.distortion',
    'emf.hertzPer1000rpm',
    'cutIn.rpm',
    'cutIn.wind',
    'rated.dcVolts',
    'rated.dcAmps',
    'rated.dcWatts',
    'coils.phaseResistance',
    'coils.phaseInductance',
  ],
  cautions: ['rectifier', 'cable'],
  Figure,
  Panel,
};
