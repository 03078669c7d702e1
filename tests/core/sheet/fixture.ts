import type { Results } from '../../../core/chain/results';
import { blankDesign } from '../../../core/design/form';
import type { Design } from '../../../core/design/schema';
import type { Coil } from '../../../core/winding/stage';

type Layout = Design['winding']['layout'];

/** A machine whose numbers stand here, whatever a blank design begins with, and its winding changed at will. */
export function designWith(winding: Partial<Design['winding']>, poles = 12, title = 'Hill-top machine'): Design {
  const blank = blankDesign();
  return {
    ...blank,
    title,
    magnets: { ...blank.magnets, shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 } },
    discs: {
      arrangement: 'facing-pair',
      poles,
      pitchRadius: 0.127,
      backing: { kind: 'steel', thickness: 0.008 },
      runningClearance: 0.0015,
    },
    winding: {
      ...blank.winding,
      layout: {
        kind: 'concentrated',
        coils: 9,
        holeInnerRadius: 0.104,
        holeOuterRadius: 0.15,
        holeInnerWidth: 0.0255,
        holeOuterWidth: 0.0368,
        legWidth: 0.018,
      },
      thickness: 0.01,
      skin: 0.0005,
      phases: 3,
      turns: 60,
      connection: 'star',
      parallelPaths: 1,
      leadLength: 1,
      wire: { metal: 'copper', conductorDiameter: 1.4e-3, overallDiameter: 1.474e-3, inHand: 1, thermalClass: 180 },
      ...winding,
    },
    surroundings: { ...blank.surroundings, airTemperature: 20 },
  };
}

export const serpentine: Layout = { kind: 'serpentine', innerRadius: 0.104, outerRadius: 0.15, legWidth: 0.01, placement: 'stacked' };

export function concentrated(coils: number): Layout {
  const pitch = (2 * Math.PI) / coils;
  const leg = 0.2 * 0.104 * pitch;
  const hole = (radius: number) => Math.max(0.001, radius * pitch - 2 * leg - 0.001);
  return {
    kind: 'concentrated',
    coils,
    holeInnerRadius: 0.104,
    holeOuterRadius: 0.15,
    holeInnerWidth: hole(0.104),
    holeOuterWidth: hole(0.15),
    legWidth: leg,
  };
}

/** Results by hand, each number different from every other so that a swapped one shows. Coils go round the phases in turn, every second one reversed. */
export function resultsFor(design: Design): Results {
  const { winding, discs } = design;
  const { layout, phases, parallelPaths } = winding;
  const count = layout.kind === 'concentrated' ? layout.coils : phases;
  const perPath = count / phases / parallelPaths;
  const coils = Array.from({ length: count }, (_, k): Coil => {
    const turn = layout.kind === 'concentrated' ? (2 * Math.PI * k) / count : ((2 * k) / phases) * ((2 * Math.PI) / discs.poles);
    const ordinal = Math.floor(k / phases);
    const stacked = layout.kind === 'serpentine' && layout.placement === 'stacked';
    return {
      coil: k + 1,
      phase: (k % phases) + 1,
      direction: ordinal % 2 === 0 ? 1 : -1,
      angle: turn,
      height: stacked ? (k - (count - 1) / 2) * winding.thickness : 0,
      path: 1 + Math.floor(ordinal / perPath),
    };
  });
  const copperHeight = Math.max(...coils.map((c) => c.height)) * 2 + winding.thickness;
  const gap = copperHeight + 2 * winding.skin + 2 * discs.runningClearance;
  const flat = { cos: [1], sin: [0] };
  return {
    gap: { length: gap, peak: 0.612, fundamental: 0.645 },
    coils: {
      count,
      wireLength: 187.3,
      wireMass: 2.563,
      fill: 0.574,
      fits: true,
      coilResistance20: 0.2213,
      phaseResistance20: 0.6817,
      phaseResistance: 0.853,
      phaseInductance: 1.47e-3,
      ...(layout.kind === 'serpentine' && { pegDistance: 0.7435 }),
      connections: coils.map(({ coil, phase, direction }) => ({ coil, phase, direction })),
    },
    emf: {
      peakPerRadPerSecond: 0.6,
      phaseRmsPer1000rpm: 44.4,
      lineRmsPer1000rpm: 76.9,
      distortion: 0.05,
      hertzPer1000rpm: (discs.poles / 2 / 60) * 1000,
    },
    cutIn: { rpm: 231, wind: 3.6 },
    curve: [],
    match: [],
    rated: {
      wind: 10,
      rpm: 418,
      dcVolts: 27.1,
      dcAmps: 24.8,
      dcWatts: 672,
      currentDensity: 7.9e6,
      coilTemperature: 88,
      runsAway: false,
      limitTemperature: 110,
    },
    year: { energy: 3e9 },
    controller: [
      {
        situation: 'gust, load lost',
        verdict: 'fail',
        value: 143,
        limit: 100,
        unit: 'V',
        margin: -0.43,
        advice: 'Wind fewer turns, or brake before the controller is disconnected.',
      },
      { situation: 'rated wind', verdict: 'pass', value: 24.8, limit: 40, unit: 'A', margin: 0.38, advice: 'Nothing to change.' },
    ],
    cautions: [
      {
        severity: 'danger',
        where: 'winding.turns',
        message: 'Run away the open winding reaches 87 V AC: enough to kill. Keep the terminals covered.',
      },
      { severity: 'warning', where: 'winding.wire', message: 'The covering is loaded close to its class at rated wind.' },
      { severity: 'note', where: 'discs.backing', message: 'Plates of 8 mm carry the flux.' },
    ],
    stages: {
      magnets: { remanence: 1.25, permeance: 0.8, cautions: [] },
      field: {
        gapLength: gap,
        peak: 0.612,
        fundamental: 0.645,
        saturation: 1,
        recoil: 0.97,
        demagnetizingField: 3e5,
        profile: { angle: [0], bz: [0.612], harmonics: [0.645] },
        spectrum: { poles: discs.poles, orders: [1], radii: [0.1], heights: [0], bz: Float64Array.of(0.6), bTheta: Float64Array.of(0) },
        cautions: [],
      },
      winding: {
        coils,
        seriesCoils: perPath,
        copperHeight,
        innerRadius: layout.kind === 'concentrated' ? layout.holeInnerRadius - layout.legWidth : layout.innerRadius - layout.legWidth / 2,
        outerRadius: layout.kind === 'concentrated' ? layout.holeOuterRadius + layout.legWidth : layout.outerRadius + layout.legWidth / 2,
        windowArea: layout.legWidth * winding.thickness,
        meanTurn: 0.2513,
        ...(layout.kind === 'serpentine' && { pegs: { distance: 0.7435, diameter: 0.012, bundleDepth: 0.0067 } }),
        factors: { distribution: 1, pitch: 0.933, winding: 0.933 },
        balanced: true,
        unbalance: 0,
        nearestBalanced: [],
        cautions: [],
      },
      wire: {
        coilLength: 15.08,
        wireLength: 187.3,
        wireMass: 2.563,
        fill: 0.574,
        fits: true,
        turnsTooMany: 0,
        metalSection: 1.54e-6,
        coilResistance20: 0.2213,
        phaseResistance20: 0.6817,
        cautions: [],
      },
      emf: {
        polePairs: discs.poles / 2,
        orders: [1],
        coilEmf: coils.map(() => flat),
        phaseEmf: Array.from({ length: phases }, () => flat),
        peakPerRadPerSecond: 0.6,
        coilRmsPer1000rpm: 15.2,
        phaseRmsPer1000rpm: 44.4,
        lineRmsPer1000rpm: 76.9,
        distortion: 0.05,
        hertzPer1000rpm: (discs.poles / 2 / 60) * 1000,
        waveform: { angle: [], phase: [], line: [] },
        inductance: [],
        coilInductance: 4e-4,
        mutualInPhase: 2.7e-4,
        phaseInductance: 1.47e-3,
        cautions: [],
      },
      rated: {
        rpm: 418,
        dcVolts: 27.1,
        dcAmps: 24.8,
        dcAmpsRms: 25.1,
        dcWatts: 672,
        phaseAmps: 20.4,
        copperLoss: 96.3,
        diodeLoss: 44.2,
        cableLoss: 21.7,
        eddyLoss: 6.4,
        bearingLoss: 1.8,
        shaftWatts: 842.4,
        coilTemperature: 88,
      },
      balances: [{ rpm: 418, stable: true }],
      gust: { rpm: 900, coilTemperature: 180, runsAway: false, shaftWatts: 2900, heat: 700, mostHeat: 700, seconds: 240 },
      start: { wind: 1.2 },
      demands: { gustVolts: 131, ratedOpenVolts: 62, lightVolts: 29, greatestWatts: 672 },
    },
  };
}
