import { z } from 'zod';
import { entryMeta } from '../entries';
import { designSchema } from './schema';

/** The published JSON Schema of a design file, ranges and whole numbers included; what entries must be together is not in it. */
export function designJsonSchema(): unknown {
  return z.toJSONSchema(designSchema, {
    override: ({ zodSchema, jsonSchema }) => {
      const entry = entryMeta(zodSchema);
      delete jsonSchema.entry;
      if (!entry) return;
      Object.assign(jsonSchema, { minimum: entry.min, maximum: entry.max, default: entry.default });
      if (entry.whole) Object.assign(jsonSchema, { multipleOf: entry.whole === 'even' ? 2 : 1 });
    },
  });
}
