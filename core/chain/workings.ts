import { demandWorkings } from '../controller/workings';
import type { Design } from '../design/schema';
import { emfWorkings } from '../emf/workings';
import { fieldWorkings } from '../field/workings';
import { heatWorkings } from '../heat/workings';
import { winterShare } from '../magnets/remanence';
import { magnetsWorkings } from '../magnets/workings';
import { turbineStage } from '../turbine/stage';
import { windingWorkings } from '../winding/workings';
import { wireWorkings } from '../wire/workings';
import { givenBy, type Working } from '../working';
import { electricalWorkings } from './electrical-workings';
import { enduranceWorkings } from './endurance-workings';
import { lossWorkings } from './loss-workings';
import { SETTLED } from './operating-point';
import { coolingOf, plantOf } from './plant';
import type { Results } from './results';
import { windWorkings } from './wind-workings';

export interface WorkingGroup {
  title: string;
  workings: Working[];
}

/** How every result of a design comes about, in the order in which the power flows. Worked out when asked for: no solve pays for it. */
export function workingsOf(design: Design, results: Results): WorkingGroup[] {
  const { magnets, discs, winding, surroundings } = design;
  const { stages, rated } = results;
  const given = givenBy(design, results);
  const stacked = winding.layout.kind === 'serpentine' && winding.layout.placement === 'stacked';
  const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
  const turbine = turbineStage(design.turbine, design.site);
  const warming = {
    speed: (rated.rpm * 2 * Math.PI) / 60,
    coilTemperature: rated.coilTemperature,
    runsAway: rated.runsAway,
    airTemperature: surroundings.airTemperature,
    settledTo: SETTLED,
  };
  return [
    { title: 'Magnets and field', workings: [...magnetsWorkings(given), ...fieldWorkings(given, magnets, discs, stacked, stages.field)] },
    { title: 'Coils', workings: windingWorkings(given, winding, discs.poles, stages.winding) },
    { title: 'Wire', workings: wireWorkings(given, winding.wire, winding.layout.legWidth, winding.thickness) },
    { title: 'Volts', workings: emfWorkings(given, winding, stages.winding, stages.field.spectrum, stages.emf) },
    {
      title: 'Rectifier and load',
      workings: [...electricalWorkings(given, design, plant, results), ...lossWorkings(given, design, plant, stages.rated)],
    },
    { title: 'Heat', workings: heatWorkings(given, coolingOf(design, stages.winding), warming) },
    { title: 'Wind', workings: windWorkings(given, design, plant, turbine, results) },
    { title: 'Start, gust and brake', workings: enduranceWorkings(given, design, plant, turbine, results) },
    {
      title: 'Open circuit and greatest power',
      workings: demandWorkings(given, {
        openPeak: plant.openPeak,
        runawayRatio: turbine.runawayRatio,
        cold: winterShare(magnets.remanence, magnets.remanenceTempCoefficient, stages.magnets.remanence),
      }),
    },
  ];
}

/** How one result comes about. */
export function workingOf(path: string, design: Design, results: Results): Working | undefined {
  return workingsOf(design, results)
    .flatMap(({ workings }) => workings)
    .find(({ result }) => result === path);
}
