import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const turbine: Worksheet = {
  id: 'turbine',
  title: 'Wind match',
  purpose: 'Whether blades and generator suit each other in the wind the site has.',
  groups: [
    {
      title: 'Wind wheel',
      entries: ['turbine.rows', 'turbine.diameter', 'turbine.peakCp', 'turbine.tipSpeedRatio', 'turbine.runawayRatio'],
    },
    { title: 'Site', entries: ['site.ratedWind', 'site.gustWind', 'site.meanWind', 'site.weibullShape', 'site.airDensity'] },
  ],
  results: [
    'stages.start.wind',
    'cutIn.wind',
    'cutIn.rpm',
    'rated.wind',
    'rated.rpm',
    'rated.dcWatts',
    'year.energy',
    'stages.gust.rpm',
    'stages.braking.stopsTo',
  ],
  cautions: ['turbine', 'site'],
  Figure,
  Panel,
};
