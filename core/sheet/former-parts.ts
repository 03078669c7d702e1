import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Layout } from '../winding/section';
import { drawingOf } from './bounds';
import { checkRule, circle, cross, LETTER, pilot, RIM } from './cutting-strokes';
import { line, rectangle, text } from './dimensions';
import type { Drawing, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

/** Width of a slot through which a tie is passed. Common practice, no source. [mm] */
const SLOT = 4;
const upwards = Math.PI / 2;

export function cheek(layout: Concentrated, poles: number): Drawing {
  const leg = layout.legWidth * 1000;
  const [low, high] = [layout.holeInnerRadius * 1000, layout.holeOuterRadius * 1000];
  const [bottom, top] = [low - leg - RIM, high + leg + RIM];
  const side = Math.max(layout.holeInnerWidth, layout.holeOuterWidth) * 500 + leg + RIM;
  return drawingOf('Cheek of the former, cut two', [
    rectangle('outline', -side, bottom, side, top, { name: 'cheek' }),
    outline(turnOutline(layout, poles, 0), upwards, 'construction', 'core'),
    outline(turnOutline(layout, poles, layout.legWidth), upwards, 'construction', 'copper'),
    ...slots(layout),
    pilot('spindle, pilot hole', [0, (low + high) / 2]),
    ...checkRule([-50, bottom - 12]),
  ]);
}

/** Across the copper in four places, so that the coil is tied before it leaves the former. */
function slots({ holeInnerRadius, holeOuterRadius, holeInnerWidth, holeOuterWidth, legWidth }: Concentrated): Stroke[] {
  const [low, high, leg] = [holeInnerRadius * 1000, holeOuterRadius * 1000, legWidth * 1000];
  const [middle, half] = [(low + high) / 2, 250 * (holeInnerWidth + holeOuterWidth)];
  const width = Math.min(SLOT, (holeInnerWidth * 1000) / 2, (holeOuterWidth * 1000) / 2, (high - low) / 2);
  // Past the copper by half the rim; begun beside the core, whose side leans.
  const end = leg + RIM / 2;
  const begin = Math.min(1 + Math.abs(holeOuterWidth - holeInnerWidth) * 250 * (width / (high - low)), end / 2);
  const name = { name: 'slot for a tie' };
  return [
    rectangle('outline', -width / 2, high + begin, width / 2, high + end, name),
    rectangle('outline', -width / 2, low - end, width / 2, low - begin, name),
    rectangle('outline', half + begin, middle - width / 2, half + end, middle + width / 2, name),
    rectangle('outline', -half - end, middle - width / 2, -half - begin, middle + width / 2, name),
  ];
}

export function core(layout: Concentrated, { winding, discs }: Design): Drawing {
  const [low, high] = [layout.holeInnerRadius * 1000, layout.holeOuterRadius * 1000];
  return drawingOf(`Core of the former, ${bareMm(winding.thickness)} mm thick`, [
    outline(turnOutline(layout, discs.poles, 0), upwards, 'outline', 'core'),
    pilot('spindle, pilot hole', [0, (low + high) / 2]),
    ...checkRule([-50, low - 12]),
  ]);
}

/** The channel a skein is folded into: an outer wall and an inner wall between which one ring lies. Undefined where the legs leave no wall. */
export function foldingJig(layout: Serpentine, { discs, winding }: Design): Drawing | undefined {
  const { innerRadius, outerRadius, legWidth } = layout;
  const tightest = 2 * (innerRadius - legWidth / 2) * Math.sin(Math.PI / discs.poles);
  if (tightest <= legWidth) return undefined;
  const edge = (outerRadius + legWidth / 2) * 1000 + 20;
  return drawingOf(`Jig to fold a ring in, channel ${bareMm(winding.thickness)} mm deep`, [
    circle('outline', edge, 'edge'),
    outline(turnOutline(layout, discs.poles, legWidth), 0, 'outline', 'outer wall'),
    outline(turnOutline(layout, discs.poles, 0), 0, 'outline', 'inner wall'),
    pilot('pilot hole'),
    ...cross([0, 0], 10),
    ...checkRule([-50, -edge - 12]),
  ]);
}

export function pegBoard({ distance, diameter, bundleDepth }: NonNullable<Results['stages']['winding']['pegs']>): Drawing {
  const half = distance * 500;
  const reach = (diameter / 2 + bundleDepth) * 1000 + 15;
  return drawingOf('Peg board', [
    rectangle('outline', -half - reach, -reach, half + reach, reach, { name: 'board' }),
    ...[-half, half].flatMap((x) => [circle('outline', diameter * 500, 'peg', [x, 0]), ...cross([x, 0], diameter * 500 + 5)]),
    line('construction', [-half, 0], [half, 0]),
    text([0, 4], `${bareMm(distance)} between centres`, LETTER),
    ...checkRule([-50, -reach - 12]),
  ]);
}
