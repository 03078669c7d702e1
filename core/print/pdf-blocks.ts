import type { Block as SheetBlock, EntriesBlock, WorkingBlock } from '../sheet/document';
import type { Drawing } from '../sheet/drawing';
import { type Flow, frame, lineHeight, MARGIN, rule, TYPE } from './page-flow';
import { drawOn, scaleToFit } from './pdf-drawing';
import { KEPT, leastOfTable, printTable } from './pdf-table';
import { leastOfEntries, leastOfWorking, printEntries, printWorking } from './pdf-working';

type Block = SheetBlock | EntriesBlock | WorkingBlock;
type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;
type Printer<K extends Block['kind']> = {
  /** Height of the smallest part that may stand at the foot of a page. [mm] */
  least(flow: Flow, block: Of<K>): number;
  print(flow: Flow, block: Of<K>): void;
};

const AFTER = 4;
const TICK = 4.5;

/** How each kind of block is laid on paper. To add one: a member of `Block`, one entry here. */
const printers: { [K in Block['kind']]: Printer<K> } = {
  heading: {
    least: () => lineHeight(TYPE.heading) + 6,
    print(flow, { text }) {
      flow.y += flow.y > MARGIN ? 3 : 0;
      flow.y += flow.write([text], MARGIN, flow.y, TYPE.heading);
      rule(flow, flow.y + 0.5, 0.6);
      flow.y += 3;
    },
  },
  text: {
    least: (flow, { text }) => flow.wrap(text, flow.width, TYPE.body).slice(0, 3).length * lineHeight(TYPE.body),
    print(flow, { text }) {
      for (const line of flow.wrap(text, flow.width, TYPE.body)) {
        flow.room(lineHeight(TYPE.body));
        flow.y += flow.write([line], MARGIN, flow.y, TYPE.body);
      }
      flow.y += AFTER / 2;
    },
  },
  facts: {
    least(flow, facts) {
      const heights = factsOf(flow, facts).map(({ height }) => height);
      const whole = heights.reduce((sum, height) => sum + height, 0);
      return whole <= KEPT ? whole : heights.slice(0, 3).reduce((sum, height) => sum + height, 0);
    },
    print(flow, facts) {
      for (const { name, value, size, height } of factsOf(flow, facts)) {
        flow.room(height);
        flow.write(name, MARGIN, flow.y, size);
        flow.write(value, MARGIN + FACT_NAME * flow.width, flow.y, size);
        flow.y += height;
        rule(flow, flow.y - 0.6, 0.1);
      }
      flow.y += AFTER;
    },
  },
  table: {
    least: leastOfTable,
    print(flow, table) {
      printTable(flow, table);
      flow.y += AFTER;
    },
  },
  drawing: {
    least: (flow, { drawing }) => TITLE + (drawing.paper ? SHRUNK : 1) * drawingHeight(drawing) * wholeScale(flow, drawing),
    print(flow, { drawing }) {
      const { minX, maxX } = drawing.bounds;
      const scale = Math.min(wholeScale(flow, drawing), (flow.left() - TITLE) / drawingHeight(drawing));
      flow.write([drawing.title], MARGIN, flow.y, TYPE.body);
      flow.y += TITLE;
      drawOn(flow.doc, drawing, { left: MARGIN + (flow.width - (maxX - minX) * scale) / 2, top: flow.y, scale });
      flow.y += drawingHeight(drawing) * scale + AFTER;
    },
  },
  entries: { least: leastOfEntries, print: printEntries },
  working: { least: leastOfWorking, print: printWorking },
  steps: {
    least: () => 3 * lineHeight(TYPE.body),
    print(flow, { steps }) {
      const indent = 15;
      steps.forEach((step, i) => {
        const lines = flow.wrap(step, flow.width - indent, TYPE.body);
        flow.room(lines.length * lineHeight(TYPE.body) + 2);
        frame(flow, MARGIN, flow.y + 0.3, TICK, TICK);
        flow.write([`${i + 1}`], MARGIN + TICK + 2, flow.y, TYPE.body);
        flow.y += flow.write(lines, MARGIN + indent, flow.y, TYPE.body) + 2;
      });
      flow.y += AFTER / 2;
    },
  },
  cautions: {
    least: () => 3 * lineHeight(TYPE.body),
    print(flow, { cautions }) {
      const indent = 27;
      const words = { danger: 'DANGER', warning: 'Warning', note: 'Note' };
      for (const { severity, message } of cautions) {
        const lines = flow.wrap(message, flow.width - indent, TYPE.body);
        const height = lines.length * lineHeight(TYPE.body);
        flow.room(height + 2);
        flow.write([words[severity]], MARGIN + 3, flow.y, TYPE.body);
        flow.write(lines, MARGIN + indent, flow.y, TYPE.body);
        if (severity === 'danger') bar(flow, height);
        flow.y += height + 2;
      }
      flow.y += AFTER / 2;
    },
  },
};

const printerOf = (kind: Block['kind']) => printers[kind] as Printer<Block['kind']>;

const startsPage = (block: Block) => block.kind === 'heading' && block.newPage;

/** Lays the blocks down the pages; a heading, and words under it, stay with what follows them. */
export function printBlocks(flow: Flow, blocks: readonly Block[]): void {
  const least = (i: number): number => {
    const block = blocks[i];
    if (!block || startsPage(block)) return 0;
    const leads = block.kind === 'heading' || block.kind === 'text';
    return printerOf(block.kind).least(flow, block) + (leads ? least(i + 1) : 0);
  };
  blocks.forEach((block, i) => {
    flow.room(startsPage(block) ? flow.height : least(i));
    printerOf(block.kind).print(flow, block);
  });
}

/** Share of the width for a fact's name. */
const FACT_NAME = 0.3;

function factsOf(flow: Flow, { rows, large }: Of<'facts'>) {
  const size = large ? TYPE.large : TYPE.body;
  return rows.map(([words, figures]) => {
    const name = flow.wrap(words, FACT_NAME * flow.width - 3, size);
    const value = flow.wrap(figures, (1 - FACT_NAME) * flow.width, size);
    return { name, value, size, height: Math.max(name.length, value.length) * lineHeight(size) + 1.6 };
  });
}

/** How much a drawing may be shrunk rather than leave the foot of a page empty; its lettering stays above ten points. */
const SHRUNK = 0.86;
const TITLE = lineHeight(TYPE.body) + 1;
const drawingHeight = ({ bounds }: Drawing) => bounds.maxY - bounds.minY;

/** Leaves room on an empty page for a heading. */
function wholeScale(flow: Flow, drawing: Drawing): number {
  return scaleToFit(drawing, flow.width, flow.height - TITLE - lineHeight(TYPE.heading) - 6);
}

function bar({ doc, y }: Flow, height: number): void {
  doc.setFillColor('#000000');
  doc.rect(MARGIN, y, 1.4, height, 'F');
}
