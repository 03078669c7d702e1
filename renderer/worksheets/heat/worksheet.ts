import type { Worksheet } from '../worksheet';
import { Figure } from './figure';

export const heat: Worksheet = {
  id: 'heat',
  title: 'Heat',
  purpose: 'How hot the copper gets, and what gives way first.',
  groups: [
    { title: 'Surroundings', entries: ['surroundings.airTemperature', 'surroundings.magnetTemperature'] },
    { title: 'Limits', entries: ['winding.wire.thermalClass', 'surroundings.formerLimit', 'magnets.maxTemperature'] },
    { title: 'Copper', entries: ['winding.thickness', 'winding.wire.inHand', 'winding.wire.conductorDiameter', 'site.ratedWind'] },
  ],
  results: [
    'rated.coilTemperature',
    'rated.limitTemperature',
    'stages.gust.coilTemperature',
    'stages.gust.seconds',
    'stages.braking.seconds',
    'stages.braking.amps',
    'rated.currentDensity',
    'coils.phaseResistance',
    'stages.rated.phaseAmps',
    'stages.rated.copperLoss',
    'stages.rated.eddyLoss',
    'stages.rated.diodeLoss',
    'stages.rated.cableLoss',
    'stages.rated.bearingLoss',
    'stages.rated.shaftWatts',
  ],
  cautions: ['surroundings', 'winding.wire.thermalClass'],
  Figure,
};
