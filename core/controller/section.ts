import { z } from 'zod';
import { quantity } from '../entries';

export const controllerSection = z.strictObject({
  maxInputVoltage: quantity({ min: 1, max: 2000, default: 100 }),
  minInputVoltage: quantity({ min: 0, max: 1000, default: 20 }),
  maxInputCurrent: quantity({ min: 0.1, max: 1000, default: 40 }),
  maxPower: quantity({ min: 1, max: 1e5, default: 1500 }),
  batteryVoltage: quantity({ min: 1, max: 1000, default: 24 }),
  maxChargeCurrent: quantity({ min: 0.1, max: 2000, default: 50 }),
});

export type ControllerSection = z.infer<typeof controllerSection>;
