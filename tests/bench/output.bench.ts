import { readFileSync } from 'node:fs';
import path from 'node:path';
import { sheetPdf, solve, turbineStage } from '../../core/index';
import { loadCurve } from '../../core/chain/curve';
import { matchCurve, topWind } from '../../core/chain/matching';
import { plantOf } from '../../core/chain/plant';
import { loadCutIn, responderOf } from '../../core/chain/responder';
import { demo } from '../demo';

/** 60 speeds of the generator, and the wheel with it in 40 winds; everything before that given. */
function curves(name: string) {
  const design = demo(name);
  const { stages } = solve(design);
  const wheel = turbineStage(design.turbine, design.site);
  const top = topWind(design.site);
  return () => {
    const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
    const cutIn = loadCutIn(plant, design.load, design.controller);
    const respond = responderOf(plant, design.load, design.controller, wheel);
    const curve = loadCurve(respond, cutIn, (wheel.runawayRatio * top) / wheel.wheel.radius);
    return matchCurve(wheel, curve, cutIn, top);
  };
}

const design = demo('hill-cabin');
const results = solve(design);
const fontBase64 = readFileSync(path.resolve('assets/fonts/DejaVuSans.ttf')).toString('base64');
const sheet = () => sheetPdf(design, results, { paper: 'a4', fileName: 'hill-cabin.gapwright', date: '2026-01-01', fontBase64 });

export default [
  { name: 'curve of 60 speeds and 40 winds, hill-cabin', run: curves('hill-cabin') },
  { name: 'curve of 60 speeds and 40 winds, farm-tracker', run: curves('farm-tracker') },
  { name: 'winding sheet as PDF, hill-cabin', run: sheet, note: () => `${(sheet().length / 1000).toFixed(0)} kB` },
];
