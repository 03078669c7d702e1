import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { drawingOf } from './bounds';
import { checkRule, circle, cross, holes, LETTER, pilot, RIM, ring } from './cutting-strokes';
import { centred } from './dimensions';
import { hub } from './disc-parts';
import type { Drawing, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';

/** Resin left outside the mounting holes, and mould left outside the resin. Common practice, no source. [mm] */
const EDGE = 8;
const MOULD = 25;

/** Radii of the cast winding and of the circle its bolts stand on. [mm] */
function castOf({ workshop }: Design, { stages }: Results) {
  const { innerRadius, outerRadius } = stages.winding;
  const [copperInside, copperOutside] = [innerRadius * 1000, outerRadius * 1000];
  const studs = workshop ? (workshop.boltCircle + workshop.boltHole) * 500 : 0;
  const inside = Math.max(copperInside - RIM, (studs + copperInside) / 2);
  if (!workshop) return { inside, outside: copperOutside + RIM };
  const bolts = copperOutside + RIM + workshop.mountingHole * 500;
  return { inside, outside: bolts + workshop.mountingHole * 500 + EDGE, bolts };
}

/** The plate with the opening the winding is cast in, and the island that leaves its hole. */
export function windingMould(design: Design, results: Results): Drawing {
  const { inside, outside } = castOf(design, results);
  const thick = results.stages.winding.copperHeight + 2 * design.winding.skin;
  const edge = outside + MOULD;
  return drawingOf(`Mould of the winding, ${bareMm(thick)} mm thick: plate, opening and island`, [
    circle('outline', edge, 'mould edge'),
    circle('outline', outside, 'opening'),
    circle('outline', inside, 'island'),
    pilot('pilot hole'),
    ...mounting(design, results),
    ...coils(design, results),
    ...cross([0, 0], 10),
    ...checkRule([-50, -edge - 12]),
  ]);
}

/** Every hole of hub and mounting with its centre, to be laid on whatever is drilled. */
export function drillTemplate(design: Design, results: Results): Drawing | undefined {
  if (!design.workshop) return undefined;
  const { outside } = castOf(design, results);
  return drawingOf('Drill template: hub, studs and mounting', [
    ...hub(design),
    ...mounting(design, results),
    circle('construction', outside, 'edge of the cast winding'),
    ...checkRule([-50, -outside - 12]),
  ]);
}

/** Where each coil lies on the mould or on the jig. */
export function windingLayout(design: Design, results: Results): Drawing {
  const { outerRadius } = results.stages.winding;
  return drawingOf('Coils in place, seen from above', [
    circle('construction', design.discs.pitchRadius * 1000, 'pitch circle'),
    pilot('pilot hole'),
    ...coils(design, results),
    ...cross([0, 0], 10),
    ...checkRule([-50, -outerRadius * 1000 - 12]),
  ]);
}

function mounting(design: Design, results: Results): Stroke[] {
  const { bolts } = castOf(design, results);
  const { workshop } = design;
  if (!workshop || bolts === undefined) return [];
  return [
    circle('construction', bolts, 'mounting circle'),
    ...holes(ring(workshop.mountingBolts, bolts), workshop.mountingHole * 1000, 'mounting bolt'),
  ];
}

function coils({ winding: { layout }, discs }: Design, { stages }: Results): Stroke[] {
  const turns = [layout.legWidth, 0].map((offset) => turnOutline(layout, discs.poles, offset));
  const middle = 500 * (stages.winding.innerRadius + stages.winding.outerRadius);
  return stages.winding.coils.flatMap(({ coil, angle }) => [
    ...turns.map((turn, i) => outline(turn, angle, 'construction', i === 0 ? `coil ${coil}` : undefined)),
    ...(layout.kind === 'concentrated' ? [centred([middle * Math.cos(angle), middle * Math.sin(angle)], String(coil), LETTER)] : []),
  ]);
}
