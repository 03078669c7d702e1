import type { Worksheet } from '../worksheet';
import { Figure } from './figure';
import { Panel } from './panel';

export const controller: Worksheet = {
  id: 'controller',
  title: 'Battery and controller',
  purpose: 'Whether what is fed can take what comes.',
  groups: [
    {
      title: 'Load',
      preset: 'battery',
      entries: ['load', 'load.chemistry', 'load.voltage', 'load.resistance', 'load.capacity', 'load.turnOn', 'load.slope'],
    },
    {
      title: 'Controller, from its data sheet',
      entries: [
        'controller',
        'controller.maxInputVoltage',
        'controller.minInputVoltage',
        'controller.maxInputCurrent',
        'controller.maxPower',
        'controller.batteryVoltage',
        'controller.maxChargeCurrent',
      ],
    },
  ],
  results: [
    'rated.dcVolts',
    'rated.dcAmps',
    'rated.dcWatts',
    'stages.demands.greatestWatts',
    'stages.demands.gustVolts',
    'stages.demands.ratedOpenVolts',
    'stages.demands.lightVolts',
  ],
  cautions: ['load', 'controller'],
  Figure,
  Panel,
};
