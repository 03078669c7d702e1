import { plantOf } from '../../core/chain/plant';
import { solve } from '../../core/index';
import { demo } from '../demo';

/** The 12-pole demo at its rated wind, as the rectifier sees it. */
const design = demo('hill-cabin');
const { stages, rated } = solve(design);
const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
if (design.load.kind !== 'battery') throw new Error('the demo was one with a battery');

export const { bridge } = plant;
export const source = plant.sourceAt(rated.coilTemperature);
export const ratedSpeed = (rated.rpm * 2 * Math.PI) / 60;
export const load = { emf: design.load.voltage, resistance: design.load.resistance + plant.dcCableResistance };
