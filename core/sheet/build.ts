import type { Results } from '../chain/results';
import { standingCautions } from '../controller/cautions';
import type { Design } from '../design/schema';
import { serializeDesign } from '../design/serialize';
import type { Caution } from '../problem';
import { benchPage } from './bench-page';
import { boardDrawing } from './board-drawing';
import { coilDrawing } from './coil-drawing';
import { connectionDrawings } from './connection-drawing';
import { connectionBlocks } from './connection-table';
import type { Block, SheetDocument } from './document';
import type { Drawing } from './drawing';
import { machineFacts, machineLine } from './machine-facts';
import { planDrawing } from './plan-drawing';
import { ratingBlocks } from './ratings';
import { readingsBlocks } from './readings-table';
import { rectifierDrawing } from './rectifier-drawing';
import { sectionDrawing } from './section-drawing';
import { shoppingBlocks } from './shopping';
import { traceOf } from './trace';
import { windingFacts } from './winding-facts';
import { windingSteps } from './winding-steps';

interface Section {
  heading: string;
  newPage?: boolean;
  /** None: the section is left out, heading and all. */
  blocks: (design: Design, results: Results) => Block[];
}

const drawn = (drawing: Drawing): Block => ({ kind: 'drawing', drawing });

/** In the order in which they are needed on the bench. To add one: its blocks in a file of their own, one entry here. */
const sections: Section[] = [
  {
    heading: 'What to wind',
    blocks: (design, results) => [{ kind: 'facts', rows: windingFacts(design, results), large: true }, drawn(coilDrawing(design, results))],
  },
  {
    heading: 'Steps',
    blocks: (design, results) => [{ kind: 'steps', steps: windingSteps(design, results) }, drawn(boardDrawing(design, results))],
  },
  {
    heading: 'The machine',
    blocks: (design, results) => [
      drawn(planDrawing(design, results)),
      drawn(sectionDrawing(design, results)),
      { kind: 'facts', rows: machineFacts(design, results) },
    ],
  },
  {
    heading: 'Connections',
    blocks: (design, results) => [
      ...connectionBlocks(design, results),
      ...connectionDrawings(design, results).map(drawn),
      drawn(rectifierDrawing(design)),
    ],
  },
  { heading: 'What the meter must read', blocks: readingsBlocks },
  { heading: 'Ratings and limits', blocks: ratingBlocks },
  { heading: 'To buy', blocks: shoppingBlocks },
  {
    heading: 'Cautions',
    blocks: (_, { cautions }) => [{ kind: 'cautions', cautions: bySeverity([...cautions, ...standingCautions]) }],
  },
  { heading: 'Notes', blocks: ({ notes }) => (notes ? [{ kind: 'text', text: notes }] : []) },
  { heading: 'Bench record', newPage: true, blocks: benchPage },
];

const severities = ['danger', 'warning', 'note'];
export const bySeverity = (cautions: Caution[]) =>
  cautions.toSorted((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));

/** The winding sheet: all that is needed on the bench, in the order in which it is needed. */
export function windingSheet(design: Design, results: Results): SheetDocument {
  return {
    title: design.title || 'Untitled machine',
    machine: machineLine(design, results),
    trace: traceOf(serializeDesign(design)),
    blocks: [
      { kind: 'text', text: 'Read the cautions at the end before you begin. Lengths in mm unless another unit stands beside them.' },
      ...sections.flatMap(({ heading, newPage, blocks }): Block[] => {
        const found = blocks(design, results);
        return found.length ? [{ kind: 'heading', text: heading, newPage }, ...found] : [];
      }),
    ],
  };
}
