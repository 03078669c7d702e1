import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { disc, magnetHolder, spacer } from './disc-parts';
import type { Drawing } from './drawing';
import { cheek, core, foldingJig, pegBoard } from './former-parts';
import { drillTemplate, windingLayout, windingMould } from './mould-parts';

/** A part to cut or drill at natural size. What is cut is on the layer `outline`, what is only marked on `construction` and `text`. */
export interface CuttingDrawing {
  /** Good for a file name. */
  name: string;
  drawing: Drawing;
}

/** Discs, mould, formers and boards, one drawing a part. A part that the machine cannot have or need is left out. */
export function cuttingDrawings(design: Design, results: Results): CuttingDrawing[] {
  const parts: Record<string, Drawing | undefined> = {
    disc: disc(design),
    'magnet-holder': magnetHolder(design),
    spacer: spacer(design, results),
    'drill-template': drillTemplate(design, results),
    'winding-mould': windingMould(design, results),
    'winding-layout': windingLayout(design, results),
    ...formers(design, results),
  };
  return Object.entries(parts).flatMap(([name, drawing]) => (drawing ? [{ name, drawing }] : []));
}

function formers(design: Design, { stages }: Results): Record<string, Drawing | undefined> {
  const { layout } = design.winding;
  const { pegs } = stages.winding;
  if (layout.kind === 'concentrated') return { 'former-cheek': cheek(layout, design.discs.poles), 'former-core': core(layout, design) };
  return { 'peg-board': pegs && pegBoard(pegs), 'folding-jig': foldingJig(layout, design) };
}
