import type { MagnetShape } from '../magnets/section';
import { shapeModel } from '../magnets/shapes';
import type { Caution } from '../problem';
import type { DiscsSection } from './section';

/**
 * What a builder must know about the magnets' places on their discs.
 *
 * @param shape  Magnet. [m]
 * @param discs  Poles, pitch radius, arrangement. [-]
 * @returns      Cautions. [-]
 *
 * Source    geometry.
 * Checked   tests/core/field/discs.test.ts
 */
export function discCautions(shape: MagnetShape, discs: DiscsSection): Caution[] {
  const model = shapeModel(shape);
  const { inner, outer } = model.radii(shape, discs.pitchRadius);
  const pitch = (2 * Math.PI) / discs.poles;
  const taken = model.angleTaken(shape, discs.pitchRadius);
  const cautions: Caution[] = [];
  if (inner <= 0) {
    cautions.push({
      severity: 'danger',
      where: 'discs.pitchRadius',
      message: `At a pitch radius of ${millimetres(discs.pitchRadius)} the magnets, ${millimetres(model.radialLength(shape))} along the radius, reach the axle. Set them farther out.`,
    });
  } else if (taken > pitch) {
    const most = Math.max(2, 2 * Math.floor(Math.PI / taken));
    cautions.push({
      severity: 'danger',
      where: 'discs.poles',
      message: `${discs.poles} magnets overlap on one disc: each takes ${degrees(taken)} and has ${degrees(pitch)}. At most ${most} fit; else set them farther out or take narrower ones.`,
    });
  }
  if (shape.kind === 'sector' && (discs.pitchRadius < inner || discs.pitchRadius > outer)) {
    cautions.push({
      severity: 'warning',
      where: 'discs.pitchRadius',
      message: `The pitch radius of ${millimetres(discs.pitchRadius)} lies outside the sectors, which reach from ${millimetres(inner)} to ${millimetres(outer)}; results “at pitch radius” then mean little.`,
    });
  }
  const { misalignment = 0 } = discs;
  if (misalignment > 0 && discs.arrangement !== 'facing-pair') {
    cautions.push({
      severity: 'note',
      where: 'discs.misalignment',
      message: 'Only two facing discs can be misaligned; with one disc this angle is left out of account.',
    });
  } else if (misalignment > pitch / 2) {
    cautions.push({
      severity: 'danger',
      where: 'discs.misalignment',
      message: `Magnets ${degrees(misalignment)} off those they face stand nearer the next ones, ${degrees(pitch)} on, which are of the other pole: the discs push each other off. Enter at most ${degrees(pitch / 2)}.`,
    });
  }
  if (discs.arrangement === 'single-with-return') {
    cautions.push({
      severity: 'warning',
      where: 'discs.arrangement',
      message:
        'The return plate must turn with the magnets. One that stands still is heated and braked by eddy currents, which are not worked out here.',
    });
  }
  return cautions;
}

const millimetres = (length: number) => `${(length * 1000).toFixed(1)} mm`;
const degrees = (angle: number) => `${((angle * 180) / Math.PI).toFixed(1)}°`;
