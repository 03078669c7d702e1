import type { Results } from '../../../core/chain/results';
import { solve } from '../../../core/chain/solve';
import { readDesign } from '../../../core/design/parse';
import type { Design } from '../../../core/design/schema';
import { designWith } from './fixture';

type Winding = Design['winding'];

interface Plan {
  title: string;
  poles: number;
  phases: number;
  /** Separate coils; without it a serpentine. */
  coils?: number;
  placement?: 'stacked' | 'interleaved';
  connection: Winding['connection'];
  parallelPaths?: number;
  turns: number;
  wire?: Partial<Winding['wire']>;
  arrangement?: Design['discs']['arrangement'];
  shape?: 'block' | 'cylinder' | 'sector';
  backing?: Design['discs']['backing'];
  room?: number;
}

const longTitle =
  'The machine for the upper meadow behind the second barn, third attempt, with more phases than anybody asked for and a good deal of hope, for whoever comes after us and wants to know';

/** Every layout, every number of phases, every connection, arrangement and shape of magnet; made so that the copper fits the disc. */
const plans: Plan[] = [
  { title: 'Nine coils in star', poles: 12, phases: 3, coils: 9, connection: 'star', turns: 47 },
  { title: 'Twelve coils in delta', poles: 16, phases: 3, coils: 12, connection: 'delta', parallelPaths: 2, turns: 61, room: 15 },
  { title: 'Two phases apart', poles: 10, phases: 2, coils: 8, connection: 'separate', turns: 33, shape: 'cylinder', wire: { inHand: 3 } },
  { title: 'Five phases', poles: 8, phases: 5, coils: 10, connection: 'star', turns: 29, shape: 'sector', backing: { kind: 'none' } },
  { title: longTitle, poles: 40, phases: 6, coils: 60, connection: 'star', parallelPaths: 2, turns: 18, room: -5 },
  { title: 'One phase, one disc', poles: 4, phases: 1, coils: 6, connection: 'separate', turns: 140, arrangement: 'single' },
  { title: 'Three rings stacked', poles: 16, phases: 3, placement: 'stacked', connection: 'star', turns: 24, room: 31 },
  {
    title: 'Three rings in one layer',
    poles: 20,
    phases: 3,
    placement: 'interleaved',
    connection: 'delta',
    turns: 9,
    wire: { metal: 'aluminium', inHand: 2 },
  },
  { title: 'Four rings apart', poles: 14, phases: 4, placement: 'stacked', connection: 'separate', turns: 7, shape: 'cylinder' },
  { title: longTitle, poles: 40, phases: 6, placement: 'stacked', connection: 'star', turns: 11, arrangement: 'single-with-return' },
];

function shapeOf(kind: Plan['shape'], pitch: number, radius: number, poles: number): Design['magnets']['shape'] {
  switch (kind) {
    case 'cylinder':
      return { kind: 'cylinder', diameter: 0.75 * pitch, axial: 0.01 };
    case 'sector':
      return { kind: 'sector', innerRadius: radius - 0.022, outerRadius: radius + 0.022, span: (0.75 * 2 * Math.PI) / poles, axial: 0.01 };
    default:
      return { kind: 'block', radial: 0.044, tangential: 0.55 * pitch, axial: 0.01 };
  }
}

function layoutOf({ coils, placement, phases, poles }: Plan, radius: number): Winding['layout'] {
  const [inner, outer] = [radius - 0.022, radius + 0.022];
  if (coils === undefined) {
    const room = (2 * Math.PI * inner) / poles / (placement === 'interleaved' ? phases : 1);
    return {
      kind: 'serpentine',
      innerRadius: inner,
      outerRadius: outer,
      legWidth: (placement === 'interleaved' ? 0.85 : 0.35) * room,
      placement: placement!,
    };
  }
  const pitchAt = (r: number) => (2 * Math.PI * r) / coils;
  const legWidth = Math.min(0.02, 0.26 * pitchAt(inner));
  const hole = (r: number) => Math.max(0.002, 0.93 * pitchAt(r) - 2 * legWidth);
  return {
    kind: 'concentrated',
    coils,
    holeInnerRadius: inner,
    holeOuterRadius: outer,
    holeInnerWidth: hole(inner),
    holeOuterWidth: hole(outer),
    legWidth,
  };
}

function designOf(plan: Plan): Design {
  const { poles, phases, connection, turns, parallelPaths = 1, room = 20 } = plan;
  const radius = Math.max(0.075, (0.034 * poles) / (2 * Math.PI) + 0.02);
  const blank = designWith({}, poles, plan.title);
  const arrangement = plan.arrangement ?? 'facing-pair';
  const layout = layoutOf(plan, radius);
  const design: Design = {
    ...blank,
    magnets: { ...blank.magnets, shape: shapeOf(plan.shape, (2 * Math.PI * radius) / poles, radius, poles) },
    discs: { ...blank.discs, arrangement, pitchRadius: radius, backing: plan.backing ?? blank.discs.backing },
    winding: {
      ...blank.winding,
      layout,
      phases,
      turns,
      connection,
      parallelPaths,
      thickness: layout.kind === 'serpentine' ? 0.006 : 0.011,
      wire: { ...blank.winding.wire, conductorDiameter: 0.95e-3, overallDiameter: 1.04e-3, ...plan.wire },
    },
    rectifier: { ...blank.rectifier, arrangement: connection === 'separate' && phases > 1 ? 'bridges-in-series' : 'bridge' },
    surroundings: { ...blank.surroundings, airTemperature: room },
    workshop: {
      magnetFit: 0.25e-3,
      shaftHole: 0.016,
      bolts: 4,
      boltCircle: 0.042,
      boltHole: 0.0085,
      mountingBolts: 5,
      mountingHole: 0.0065,
    },
  };
  const parsed = readDesign(design);
  if (!parsed.ok) throw new Error(`${plan.title}: ${parsed.problems.map((p) => `${p.where} ${p.message}`).join('; ')}`);
  return parsed.design;
}

/** Ten machines as a builder might draw them, worked out, with their names. */
export const generatedDesigns: [name: string, design: Design, results: Results][] = plans.map((plan, i) => {
  const design = designOf(plan);
  const wound = plan.coils ? `${plan.coils} coils` : `${plan.placement} rings`;
  return [`${i + 1}: ${plan.phases} phases, ${plan.poles} poles, ${wound}`, design, solve(design)];
});
