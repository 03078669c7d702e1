import { z } from 'zod';
import { loadSection } from '../charging/section';
import { controllerSection } from '../controller/section';
import { discsSection } from '../field/section';
import { surroundingsSection } from '../heat/section';
import { magnetsSection } from '../magnets/section';
import { cableSection, rectifierSection } from '../rectifier/section';
import { siteSection, turbineSection } from '../turbine/section';
import { windingSection } from '../winding/section';
import { wireSection } from '../wire/section';
import { readingSection } from './readings';
import { searchSection } from './search';
import { reelSection } from './shelf';
import { tolerancesSection } from './tolerances';
import { workshopSection } from './workshop';

/** The one definition of a design file: types, messages and the published JSON Schema come from it. */
export const designSchema = z.strictObject({
  kind: z.literal('gapwright-design'),
  version: z.literal(1),
  title: z.string().max(200),
  notes: z.string().max(20_000).optional(),
  magnets: magnetsSection,
  discs: discsSection,
  winding: windingSection.extend({ wire: wireSection }),
  surroundings: surroundingsSection,
  rectifier: rectifierSection,
  cable: cableSection,
  load: loadSection,
  controller: controllerSection.optional(),
  turbine: turbineSection,
  site: siteSection,
  shelf: z.array(reelSection).max(200).optional(),
  search: searchSection.optional(),
  tolerances: tolerancesSection.optional(),
  bench: z.array(readingSection).max(1000).optional(),
  workshop: workshopSection.optional(),
});

export type Design = z.infer<typeof designSchema>;
