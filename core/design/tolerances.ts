import { z } from 'zod';
import { quantity } from '../entries';
import { toleranceRanges } from './tolerance-ranges';

const limit = (id: keyof typeof toleranceRanges) =>
  quantity({ min: 0, max: toleranceRanges[id].most, default: toleranceRanges[id].usual }).optional();

/** How far a machine may come out from its drawing, SI; left out means: the usual. */
export const tolerancesSection = z.strictObject({
  gap: limit('gap'),
  runOut: limit('runOut'),
  remanence: limit('remanence') /* as a share */,
  magnetPlace: limit('magnetPlace'),
  turns: limit('turns'),
  wire: limit('wire') /* as a share */,
  airTemperature: limit('airTemperature') /* K */,
  magnetTemperature: limit('magnetTemperature') /* K */,
  wind: limit('wind') /* as a share */,
});
