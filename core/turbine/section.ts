import { z } from 'zod';
import { quantity } from '../entries';

const curvePoint = z.tuple([quantity({ min: 0, max: 30, default: 0 }), quantity({ min: -1, max: 1, default: 0 })]);

export const turbineSection = z.strictObject({
  rows: quantity({ min: 1, max: 6, default: 1, whole: 'any' }),
  diameter: quantity({ min: 0.1, max: 20, default: 2 }),
  peakCp: quantity({ min: 0.01, max: 0.66, default: 0.35 }),
  tipSpeedRatio: quantity({ min: 0.3, max: 15, default: 5.5 }),
  runawayRatio: quantity({ min: 0.5, max: 30, default: 10 }),
  /** Points [tip-speed ratio, power coefficient]; they replace the peak-and-run-away curve. */
  curve: z.array(curvePoint).min(3).max(200).optional(),
});

export const siteSection = z.strictObject({
  ratedWind: quantity({ min: 1, max: 30, default: 10 }),
  gustWind: quantity({ min: 1, max: 80, default: 25 }),
  meanWind: quantity({ min: 0.5, max: 20, default: 4.5 }),
  weibullShape: quantity({ min: 0.8, max: 6, default: 2 }),
  airDensity: quantity({ min: 0.5, max: 1.6, default: 1.225 }),
});

export type TurbineSection = z.infer<typeof turbineSection>;
export type SiteSection = z.infer<typeof siteSection>;
