import { expect, test } from 'vitest';
import { loadCurve } from '../../../core/chain/curve';
import { plantOf } from '../../../core/chain/plant';
import { loadCutIn, responderOf } from '../../../core/chain/responder';
import { solve, turbineStage } from '../../../core/index';
import { demo } from '../../demo';

// A maximum-power controller seeks to 0.2 % in power; where it turns from one limit to the next the curve has a kink between two places.
test.each([
  ['shed-light', 7e-3],
  ['hill-cabin', 7e-3],
  ['farm-tracker', 2e-2],
])('%s: read anywhere, the curve is what is found by solving there', (name, near) => {
  const design = demo(name);
  const { stages, rated } = solve(design);
  const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
  const respond = responderOf(plant, design.load, design.controller, turbineStage(design.turbine, design.site));
  const cutIn = loadCutIn(plant, design.load, design.controller)!;
  const top = (1.4 * rated.rpm * 2 * Math.PI) / 60;
  const curve = loadCurve(respond, cutIn, top);
  const most = Math.max(...curve.responses.map(({ point }) => point.shaftWatts));
  const off = { power: 0, temperature: 0 };
  for (let i = 1; i <= 60; i++) {
    const speed = (top * i) / 60.5;
    const [read, found] = [curve.at(speed).point, respond(speed, curve.at(speed)).point];
    for (const key of ['dcWatts', 'shaftWatts', 'copperLoss'] as const)
      off.power = Math.max(off.power, Math.abs(read[key] - found[key]) / (found.shaftWatts + 0.02 * most));
    off.temperature = Math.max(off.temperature, Math.abs(read.coilTemperature - found.coilTemperature));
    const losses = read.copperLoss + read.diodeLoss + read.cableLoss + read.eddyLoss + read.bearingLoss;
    expect(Math.abs(losses + read.dcWatts - read.shaftWatts)).toBeLessThan(1e-6 * Math.max(1, read.shaftWatts));
  }

  expect(off.power).toBeLessThan(near);
  expect(off.temperature).toBeLessThan(1.5);
});
