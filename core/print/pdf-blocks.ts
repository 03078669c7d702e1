import type { Block, Column } from '../sheet/document';
import { type Flow, lineHeight, MARGIN, TYPE } from './page-flow';
import { drawOn, scaleToFit } from './pdf-drawing';

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
    least: () => 3 * lineHeight(TYPE.body),
    print(flow, { rows }) {
      const nameWidth = 0.3 * flow.width;
      for (const [name, value] of rows) {
        const [names, values] = [flow.wrap(name, nameWidth - 3, TYPE.body), flow.wrap(value, flow.width - nameWidth, TYPE.body)];
        const height = Math.max(names.length, values.length) * lineHeight(TYPE.body) + 1.6;
        flow.room(height);
        flow.write(names, MARGIN, flow.y, TYPE.body);
        flow.write(values, MARGIN + nameWidth, flow.y, TYPE.body);
        flow.y += height;
        rule(flow, flow.y - 0.6, 0.1);
      }
      flow.y += AFTER;
    },
  },
  table: {
    least: (flow, { columns, rows }) =>
      rowHeight(
        flow,
        columns,
        columns.map((c) => c.head),
      ) + (rows.length > 0 ? 2 * rowHeight(flow, columns, rows[0]) : 0),
    print(flow, { columns, rows }) {
      const head = columns.map((c) => c.head);
      const begin = () => {
        tableRow(flow, columns, head, false);
        rule(flow, flow.y, 0.4);
      };
      begin();
      for (const row of rows) {
        if (flow.room(rowHeight(flow, columns, row))) begin();
        tableRow(flow, columns, row, true);
        rule(flow, flow.y, 0.1);
      }
      flow.y += AFTER;
    },
  },
  drawing: {
    least: (flow, block) => drawingHeight(flow, block) + lineHeight(TYPE.body),
    print(flow, block) {
      const { drawing } = block;
      const scale = scaleToFit(drawing, flow.width, drawingHeight(flow, block));
      const { minX, maxX, minY, maxY } = drawing.bounds;
      flow.y += flow.write([drawing.title], MARGIN, flow.y, TYPE.body) + 1;
      drawOn(flow.doc, drawing, { left: MARGIN + (flow.width - (maxX - minX) * scale) / 2, top: flow.y, scale });
      flow.y += (maxY - minY) * scale + AFTER;
    },
  },
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

/** Lays the blocks down the pages; a heading stays with what follows it. */
export function printBlocks(flow: Flow, blocks: readonly Block[]): void {
  blocks.forEach((block, i) => {
    const next = blocks[i + 1];
    const least = printerOf(block.kind).least(flow, block);
    flow.room(block.kind === 'heading' && next ? least + printerOf(next.kind).least(flow, next) : least);
    printerOf(block.kind).print(flow, block);
  });
}

function drawingHeight(flow: Flow, { drawing, height }: Of<'drawing'>): number {
  const { minX, maxX, minY, maxY } = drawing.bounds;
  const most = Math.min(height, flow.height - 2 * lineHeight(TYPE.heading) - 12);
  return Math.min(most, ((maxY - minY) * flow.width) / (maxX - minX));
}

const PAD = 1.6;
const cellLines = (flow: Flow, column: Column, text: string) => flow.wrap(text, column.share * flow.width - 2 * PAD, TYPE.body);

function rowHeight(flow: Flow, columns: Column[], cells: string[]): number {
  const lines = Math.max(1, ...cells.map((cell, i) => cellLines(flow, columns[i], cell).length));
  return lines * lineHeight(TYPE.body) + PAD;
}

function tableRow(flow: Flow, columns: Column[], cells: string[], boxed: boolean): void {
  const height = rowHeight(flow, columns, cells);
  let x = MARGIN;
  columns.forEach((column, i) => {
    const width = column.share * flow.width;
    const lines = cellLines(flow, column, cells[i]);
    lines.forEach((line, k) => {
      const left = column.align === 'right' ? x + width - PAD - flow.doc.getTextWidth(line) : x + PAD;
      flow.write([line], left, flow.y + PAD / 2 + k * lineHeight(TYPE.body), TYPE.body);
    });
    if (boxed && column.box) frame(flow, x, flow.y, width, height);
    x += width;
  });
  flow.y += height;
}

function rule({ doc, width }: Flow, y: number, thick: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(thick);
  doc.line(MARGIN, y, MARGIN + width, y);
}

function frame({ doc }: Flow, x: number, y: number, width: number, height: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(0.3);
  doc.rect(x, y, width, height);
}

function bar({ doc, y }: Flow, height: number): void {
  doc.setFillColor('#000000');
  doc.rect(MARGIN, y, 1.4, height, 'F');
}
