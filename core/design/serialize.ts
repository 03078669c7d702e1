import type { Design } from './schema';

/** The text of a design file: two-space JSON in the schema's order, one newline at the end. */
export function serializeDesign(design: Design): string {
  return `${JSON.stringify(design, null, 2)}\n`;
}
