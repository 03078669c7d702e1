import { batteryPresets } from '../charging/battery';
import type { Design } from '../design/schema';
import { gradeNamed } from '../magnets/grades';
import type { MagnetShape } from '../magnets/section';
import { shapeModel } from '../magnets/shapes';

/** What someone has who has not designed anything yet. SI units. */
export interface InHand {
  wheelDiameter: number;
  meanWind: number;
  /** Batteries of 12 V in series. */
  battery: { inSeries: number; chemistry: string; capacity: number };
  magnets: { shape: Exclude<MagnetShape, { kind: 'sector' }>; grade: string; count: number };
  wire: { metal: Design['winding']['wire']['metal']; conductorDiameter: number; overallDiameter: number; mass: number };
}

type Shape = InHand['magnets']['shape'];

/** Share of the pitch circle that magnets take. Common practice, no source. */
const MAGNET_SHARE = 0.5;
/** Free between neighbouring magnets at their inner end. Common practice, no source. [m] */
const LEAST_GAP = 4e-3;

/** Where magnets take their share of the pitch circle and do not touch within; to a millimetre. [m] */
export function pitchRadiusFor(shape: Shape, poles: number): number {
  const across = shape.kind === 'block' ? shape.tangential : shape.diameter;
  const least = (across + LEAST_GAP) / (2 * Math.tan(Math.PI / poles)) + shapeModel(shape).radialLength(shape) / 2;
  return Math.ceil(1000 * Math.max((across * poles) / (2 * Math.PI * MAGNET_SHARE), least)) / 1000;
}

/** Across the magnets of a disc. [m] */
export const discDiameter = (shape: Shape, poles: number): number => 2 * shapeModel(shape).radii(shape, pitchRadiusFor(shape, poles)).outer;

/** A blank design with all that is in hand and nothing yet wound of it. */
export function designWith(blank: Design, { wheelDiameter, meanWind, battery, magnets, wire }: InHand): Design {
  const grade = gradeNamed(magnets.grade);
  const charging = batteryPresets.find(({ chemistry }) => chemistry === battery.chemistry)?.charging ?? batteryPresets[0].charging;
  return {
    ...blank,
    title: `First design, ${Number(wheelDiameter.toFixed(2))} m wheel, ${12 * battery.inSeries} V`,
    magnets: {
      ...blank.magnets,
      shape: magnets.shape,
      ...(grade && {
        grade: grade.name,
        remanence: grade.remanence[0],
        remanenceTempCoefficient: grade.remanenceTempCoefficient,
        intrinsicCoercivity: grade.intrinsicCoercivity,
        recoilPermeability: grade.recoilPermeability,
        maxTemperature: grade.maxTemperature,
      }),
    },
    // Of another kind than is wanted, so that the coils are laid on the magnets anew.
    winding: {
      ...blank.winding,
      layout: { kind: 'serpentine', innerRadius: 0.1, outerRadius: 0.15, legWidth: 0.01, placement: 'stacked' },
    },
    load: {
      kind: 'battery',
      chemistry: battery.chemistry,
      voltage: Number((charging * battery.inSeries).toFixed(2)),
      resistance: 0.03,
      capacity: battery.capacity,
    },
    turbine: { ...blank.turbine, diameter: wheelDiameter },
    site: { ...blank.site, meanWind },
    shelf: [{ label: 'Wire in hand', ...wire }],
  };
}
