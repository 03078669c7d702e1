import type { Design } from '../design/schema';
import type { EmfResult } from '../emf/stage';
import { spectrumReader } from '../field/harmonics';
import type { FieldResult, GapSpectrum } from '../field/stage';
import { bearingTorque } from '../heat/bearing';
import { settledTemperature, type Cooling } from '../heat/cooling';
import { eddyCoefficient, meanSquareField } from '../heat/eddy';
import { METALS } from '../constants';
import { cableResistance } from '../rectifier/cable';
import { openCircuitPeak } from '../rectifier/open-circuit';
import type { Bridge, Source } from '../rectifier/steady-state';
import { layoutModel } from '../winding/layouts';
import type { WindingResult } from '../winding/stage';
import { temperatureFactor } from '../wire/resistance';
import type { WireResult } from '../wire/stage';
import type { Plant } from './operating-point';

/** The parts of a design that decide what the generator does at a speed. */
export type PlantEntries = Pick<Design, 'discs' | 'winding' | 'surroundings' | 'rectifier' | 'cable' | 'turbine'>;

/** Copper taken at this rise for the eddy loss, which falls a little as the copper warms. [K] */
const EDDY_RISE = 40;

/** Generator, rectifier, cable and cooling of a design, ready to be turned. */
export function plantOf(design: PlantEntries, field: FieldResult, winding: WindingResult, wire: WireResult, emf: EmfResult): Plant {
  const { surroundings, rectifier, turbine } = design;
  const { metal, conductorDiameter } = design.winding.wire;
  const cable = cableResistance(design.cable, surroundings.airTemperature);
  const cold: Source = {
    connection: design.winding.connection,
    polePairs: emf.polePairs,
    orders: emf.orders,
    phaseEmf: emf.phaseEmf,
    resistance: wire.phaseResistance20,
    inductance: emf.inductance,
    lineResistance: cable.acLine,
  };
  const bridge: Bridge = { arrangement: rectifier.arrangement, ...rectifier.diode };
  const air = surroundings.airTemperature;
  const meanSquare = meanSquareOf(field.spectrum, emf.orders, winding);
  const resistivity = METALS[metal].resistivity * temperatureFactor(metal, air + EDDY_RISE);
  const volume = winding.coils.length * wire.coilLength * wire.metalSection;
  const eddy = eddyCoefficient(meanSquare, emf.polePairs, conductorDiameter, resistivity, volume);
  const drag = bearingTorque(turbine.diameter);
  const cooling = coolingOf(design, winding);
  return {
    sourceAt: (temperature) => ({ ...cold, resistance: wire.phaseResistance20 * temperatureFactor(metal, temperature) }),
    bridge,
    openPeak: openCircuitPeak(cold, bridge),
    dcCableResistance: cable.dc,
    eddyLoss: (speed) => eddy * speed ** 2,
    bearingLoss: (speed) => drag * speed,
    settle: (loss, speed, guess) => settledTemperature(loss, air, cooling, speed, METALS[metal].meltingPoint, guess),
    airTemperature: air,
    melts: METALS[metal].meltingPoint,
  };
}

/** As often as a field is looked at by another load, wire or number of turns, it is still the same. */
const meanSquares = new WeakMap<GapSpectrum, { region: string; meanSquare: number }>();

function meanSquareOf(spectrum: GapSpectrum, orders: readonly number[], { innerRadius, outerRadius, copperHeight }: WindingResult): number {
  const region = [innerRadius, outerRadius, copperHeight, orders.length].join();
  const known = meanSquares.get(spectrum);
  if (known?.region === region) return known.meanSquare;
  const meanSquare = meanSquareField(spectrumReader(spectrum), orders, innerRadius, outerRadius, copperHeight / 2);
  meanSquares.set(spectrum, { region, meanSquare });
  return meanSquare;
}

/** Both faces of the copper that can be seen from the gap; stacked rings share two faces between them. */
export function coolingOf({ discs, winding }: Pick<Design, 'discs' | 'winding'>, { coils, meanTurn, outerRadius }: WindingResult): Cooling {
  const layers = layoutModel(winding.layout).layers(winding.layout, winding.phases);
  return {
    area: (2 * coils.length * meanTurn * winding.layout.legWidth) / layers,
    height: 2 * outerRadius,
    discRadius: Math.max(discs.pitchRadius, outerRadius),
    skin: winding.skin,
    clearance: discs.arrangement === 'single' ? 0 : discs.runningClearance,
  };
}
