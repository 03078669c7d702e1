import { chargeCautions } from '../charging/battery';
import { shockCautions } from '../controller/shock';
import { brakeCautions } from '../controller/braking';
import { controllerCautions, outputCautions } from '../controller/cautions';
import { controllerCheck } from '../controller/check';
import type { Design } from '../design/schema';
import { emfFromShape, inductanceShape, linkageShape } from '../emf/stage';
import { bodyStack } from '../field/images';
import { gapLength } from '../field/gap';
import { fieldStage } from '../field/stage';
import { coilLimit } from '../heat/limits';
import { magnetsStage } from '../magnets/stage';
import { winterShare } from '../magnets/remanence';
import type { Caution } from '../problem';
import { cableCautions } from '../rectifier/cable';
import { openCircuitPeak, pathThreshold } from '../rectifier/open-circuit';
import { siteCautions } from '../turbine/cautions';
import { turbineStage } from '../turbine/stage';
import { windToReach } from '../turbine/match';
import { yearEnergy } from '../turbine/yearly';
import { windingStage } from '../winding/stage';
import { wireStage } from '../wire/stage';
import { temperatureFactor } from '../wire/resistance';
import { brakingOf } from './brake';
import { loadCurve } from './curve';
import { gustOf, windingCapacity } from './gust';
import { matchAt, matchCurve, pointAt, topWind } from './matching';
import { coolingOf, plantOf } from './plant';
import { gustHeatCautions, ratedHeatCautions, runawayCautions } from './heat-cautions';
import { runsAway } from './operating-point';
import { loadCutIn, responderOf } from './responder';
import type { Results } from './results';
import { shortedMagnets } from './shorted-magnets';
import { createStageCache, type StageCache } from './stage-cache';

/** The one pipeline. Each stage is cached on what it depends on, so an edit re-works only what it touches. */
export function solve(design: Design, cache: StageCache = createStageCache()): Results {
  const { magnets, discs, winding, surroundings, rectifier, cable, load, controller, turbine, site } = design;
  const { layout, thickness, skin, phases } = winding;
  const stacked = layout.kind === 'serpentine' && layout.placement === 'stacked';

  const gap = gapLength({ thickness, phases, stacked, skin, runningClearance: discs.runningClearance });
  const magnet = cache('magnets', [magnets, surroundings.magnetTemperature], () => magnetsStage(magnets, surroundings.magnetTemperature));
  const { wire: wireEntries, ...windingEntries } = winding;
  const placed = cache('winding', [windingEntries, discs.poles], () => windingStage(winding, discs.poles));
  const region = { gapLength: gap, innerRadius: placed.innerRadius, outerRadius: placed.outerRadius, halfHeight: placed.copperHeight / 2 };
  const field = cache('field', [magnets.shape, magnet, magnets.recoilPermeability, discs, region], () =>
    fieldStage(magnets.shape, magnet.remanence, magnets.recoilPermeability, discs, region, magnet.intrinsicCoercivity),
  );
  const wire = cache('wire', [winding, discs.poles], () => wireStage(winding, wireEntries, placed));
  const geometry = [layout, thickness, phases, discs.poles];
  const shape = cache('linkage', [geometry, magnets.shape, magnet, magnets.recoilPermeability, discs, region], () =>
    linkageShape(winding, placed, field.spectrum),
  );
  const steel = bodyStack(discs.arrangement, discs.backing.kind === 'steel', gap, magnets.shape.axial);
  const perTurn = cache('inductance', [geometry, steel.steelBelow, steel.steelAbove], () =>
    inductanceShape(winding, discs.poles, placed, steel),
  );
  const emf = cache('emf', [windingEntries, geometry, magnets, discs, region, surroundings.magnetTemperature, wireEntries], () =>
    emfFromShape(winding, placed, shape, perTurn, wire),
  );

  const plant = plantOf(design, field, placed, wire, emf);
  const wheel = turbineStage(turbine, site);
  const respond = responderOf(plant, load, controller, wheel);
  const windTop = topWind(site);
  const speedTop = (wheel.runawayRatio * windTop) / wheel.wheel.radius;
  const electrical = [magnets, discs, winding, surroundings, rectifier, cable, load, controller, turbine, site.airDensity];
  const cutIn = loadCutIn(plant, load, controller);
  const loaded = cache('curve', [electrical, speedTop], () => loadCurve(respond, cutIn, speedTop));
  const match = matchCurve(wheel, loaded, cutIn, windTop);
  const ratedMatch = matchAt(wheel, loaded, cutIn, site.ratedWind);
  const ratedPoint = pointAt(respond, loaded, ratedMatch.rpm);

  const source = plant.sourceAt(surroundings.airTemperature);
  const dcPeak = plant.openPeak;
  const reached = (speed: number) => windToReach(wheel, speed, plant.eddyLoss(speed) + plant.bearingLoss(speed));
  const runaway = (wind: number) => (wheel.runawayRatio * wind) / wheel.wheel.radius;
  const cold = winterShare(magnets.remanence, magnets.remanenceTempCoefficient, magnet.remanence);
  const demands = {
    gustVolts: dcPeak * cold * runaway(site.gustWind),
    ratedOpenVolts: dcPeak * runaway(site.ratedWind),
    lightVolts: dcPeak * runaway(site.meanWind),
    greatestWatts: Math.max(ratedPoint.dcWatts, ...match.filter(({ wind }) => wind <= site.ratedWind).map(({ dcWatts }) => dcWatts)),
  };
  const verdicts = controller
    ? controllerCheck(controller, {
        turns: winding.turns,
        connection: winding.connection,
        phases,
        rated: { amps: ratedPoint.dcAmps, watts: ratedPoint.dcWatts },
        ...demands,
        gustWind: site.gustWind,
        winds: match,
        ...(cutIn !== undefined && { cutInRpm: rpmOf(cutIn) }),
        inDelta: () => {
          const peak = openCircuitPeak({ ...source, connection: 'delta' }, plant.bridge);
          const then = loadCutIn({ ...plant, openPeak: peak }, load, controller);
          return { share: peak / dcPeak, ...(then !== undefined && { cutInRpm: rpmOf(then) }) };
        },
        wakeWind: reached((controller.minInputVoltage + pathThreshold(source, plant.bridge)) / dcPeak),
      })
    : [];
  const limit = coilLimit(wireEntries.thermalClass, surroundings.formerLimit);
  const atRated = {
    speed: (ratedMatch.rpm * 2 * Math.PI) / 60,
    coilTemperature: ratedPoint.coilTemperature,
    limit: limit.temperature,
  };
  const braking = brakingOf(plant, wheel, emf, wire, wireEntries.metal, { ...atRated, gustWind: site.gustWind });
  const gust = gustOf(plant, wheel, loaded, (of) => responderOf(of, load, controller, wheel), {
    ...atRated,
    wind: site.gustWind,
    cooling: coolingOf(design, placed),
    capacity: windingCapacity(wireEntries.metal, wire, placed, winding.turns),
  });
  const lineRms = (emf.lineRmsPer1000rpm * 60) / (2 * Math.PI * 1000);
  const cautions: Caution[] = [
    ...magnet.cautions,
    ...field.cautions,
    ...placed.cautions,
    ...wire.cautions,
    ...emf.cautions,
    ...wheel.cautions,
    ...siteCautions(site),
    ...ratedHeatCautions(plant, ratedPoint.coilTemperature, limit),
    ...runawayCautions(plant, match, limit),
    ...gustHeatCautions(gust, site.gustWind, limit),
    ...cableCautions(cable, ratedPoint.cableLoss, ratedPoint.dcWatts),
    ...(load.kind === 'battery' ? chargeCautions(load, ratedPoint.dcAmps, match) : []),
    ...(load.kind === 'tracker' && controller ? outputCautions(controller, demands.greatestWatts) : []),
    ...controllerCautions(verdicts),
    ...(ratedMatch.state === 'stalled'
      ? [
          {
            severity: 'warning',
            where: 'winding.turns',
            message:
              'At rated wind the load holds the wheel far below its best speed: it stalls. Fewer turns (a higher cut-in speed) or a smaller load let it run.',
          } as Caution,
        ]
      : []),
    ...shockCautions(lineRms, dcPeak, runaway(site.gustWind)),
    ...(braking ? brakeCautions(braking) : []),
    ...shortedMagnets(design, plant, emf, field, magnet, runaway(site.gustWind)),
  ];

  return {
    gap: { length: gap, peak: field.peak, fundamental: field.fundamental, ...(field.plate !== undefined && { plate: field.plate }) },
    coils: {
      count: placed.coils.length,
      wireLength: wire.wireLength,
      wireMass: wire.wireMass,
      fill: wire.fill,
      fits: wire.fits,
      coilResistance20: wire.coilResistance20,
      phaseResistance20: wire.phaseResistance20,
      phaseResistance: wire.phaseResistance20 * temperatureFactor(wireEntries.metal, ratedPoint.coilTemperature),
      phaseInductance: emf.phaseInductance,
      ...(placed.pegs && { pegDistance: placed.pegs.distance }),
      connections: placed.coils.map(({ coil, phase, direction }) => ({ coil, phase, direction })),
    },
    emf: {
      peakPerRadPerSecond: emf.peakPerRadPerSecond,
      phaseRmsPer1000rpm: emf.phaseRmsPer1000rpm,
      lineRmsPer1000rpm: emf.lineRmsPer1000rpm,
      distortion: emf.distortion,
      hertzPer1000rpm: emf.hertzPer1000rpm,
    },
    cutIn: {
      rpm: cutIn === undefined ? null : rpmOf(cutIn),
      wind: cutIn === undefined ? null : reached(cutIn),
    },
    curve: loaded.responses.map(({ point }) => point),
    match,
    rated: {
      wind: site.ratedWind,
      rpm: ratedMatch.rpm,
      dcVolts: ratedPoint.dcVolts,
      dcAmps: ratedPoint.dcAmps,
      dcWatts: ratedPoint.dcWatts,
      currentDensity: ratedPoint.phaseAmps / winding.parallelPaths / wire.metalSection,
      coilTemperature: ratedPoint.coilTemperature,
      runsAway: runsAway(plant, ratedPoint.coilTemperature),
      limitTemperature: limit.temperature,
    },
    year: {
      energy: yearEnergy(
        [{ wind: 0, watts: 0 }, ...match.map(({ wind, dcWatts }) => ({ wind, watts: dcWatts }))],
        site.meanWind,
        site.weibullShape,
      ),
    },
    controller: verdicts,
    cautions: byDanger(cautions),
    stages: {
      magnets: magnet,
      field,
      winding: placed,
      wire,
      emf,
      rated: ratedPoint,
      demands,
      balances: ratedMatch.balances,
      gust,
      ...(braking && { braking }),
      start: { wind: wheel.startWind },
    },
  };
}

const rpmOf = (speed: number) => (speed * 60) / (2 * Math.PI);

/** A solver that remembers its stages, and its last few answers, from design to design. */
export function createSolver(): (design: Design) => Results {
  const cache = createStageCache();
  return (design) => cache('answer', design, () => solve(design, cache));
}

const ORDER: Caution['severity'][] = ['danger', 'warning', 'note'];
const byDanger = (cautions: Caution[]) => [...cautions].sort((a, b) => ORDER.indexOf(a.severity) - ORDER.indexOf(b.severity));
