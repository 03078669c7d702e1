/** Kinds of quantity; the renderer's `units.ts` knows how each is shown. */
export type UnitKind =
  | 'length'
  | 'wireDiameter'
  | 'area'
  | 'longLength'
  | 'angle'
  | 'count'
  | 'ratio'
  | 'percent'
  | 'temperature'
  | 'temperatureCoefficient'
  | 'fluxDensity'
  | 'fieldStrength'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'inductance'
  | 'power'
  | 'energy'
  | 'charge'
  | 'mass'
  | 'speed'
  | 'rpm'
  | 'windSpeed'
  | 'frequency'
  | 'currentDensity'
  | 'density'
  | 'emfConstant'
  | 'price'
  | 'word';

export interface Quantity {
  label: string;
  symbol?: string;
  unit: UnitKind;
  /** One line for whoever hovers the label. */
  meaning: string;
}

const q = (label: string, unit: UnitKind, meaning: string, symbol?: string): Quantity => ({
  label,
  unit,
  meaning,
  ...(symbol && { symbol }),
});

/** Entries of the design file by path, the words every screen, sheet and message uses for them. */
export const entryQuantities = {
  title: q('Title', 'word', 'The name printed on the sheet'),
  notes: q('Notes', 'word', 'Anything worth keeping with the design'),

  'magnets.shape': q('Magnet shape', 'word', 'Block, round, or a sector of a ring; magnetised along the axle'),
  'magnets.shape.radial': q('Length along the radius', 'length', 'Block: its side that lies along the radius'),
  'magnets.shape.tangential': q('Width round the disc', 'length', 'Block: its side that lies along the direction of turning'),
  'magnets.shape.axial': q('Thickness', 'length', 'Size along the axle, the direction of magnetisation', 'h'),
  'magnets.shape.diameter': q('Diameter', 'length', 'Round magnet: its diameter'),
  'magnets.shape.innerRadius': q('Inner radius', 'length', 'Sector: radius of its inner arc about the axle'),
  'magnets.shape.outerRadius': q('Outer radius', 'length', 'Sector: radius of its outer arc about the axle'),
  'magnets.shape.span': q('Angle spanned', 'angle', 'Sector: angle between its two straight sides'),
  'magnets.grade': q('Grade', 'word', 'The maker’s grade, as N42 or N35SH'),
  'magnets.remanence': q(
    'Remanence at 20 °C',
    'fluxDensity',
    'Flux density left in a closed magnet; from the grade, or from a gaussmeter',
    'Br',
  ),
  'magnets.remanenceTempCoefficient': q(
    'Remanence per kelvin',
    'temperatureCoefficient',
    'Share of the remanence lost per degree of warming',
    'α',
  ),
  'magnets.intrinsicCoercivity': q('Intrinsic coercivity at 20 °C', 'fieldStrength', 'Opposing field that demagnetises for good', 'Hci'),
  'magnets.recoilPermeability': q(
    'Recoil permeability',
    'ratio',
    'Slope of the magnet’s working line relative to air; 1.05 for NdFeB',
    'μr',
  ),
  'magnets.maxTemperature': q('Magnet limit', 'temperature', 'Working temperature the grade must not pass'),

  'discs.arrangement': q('Discs', 'word', 'Two discs facing, one disc, or one disc with a plain steel plate turning opposite it'),
  'discs.poles': q('Magnets on one disc', 'count', 'Even: north and south alternate', '2p'),
  'discs.pitchRadius': q('Pitch radius', 'length', 'Radius of the circle through the magnets’ centres', 'rp'),
  'discs.backing': q('Backing', 'word', 'What stands behind the magnets: nothing magnetic (wood, plastic, resin) or a steel plate'),
  'discs.backing.thickness': q('Plate thickness', 'length', 'Thickness of the steel behind the magnets'),
  'discs.runningClearance': q('Running clearance', 'length', 'Free air between magnet face and winding, each side'),

  'winding.layout': q(
    'Layout',
    'word',
    'Serpentine: one ring a phase, a leg under every magnet. Concentrated: separate coils side by side',
  ),
  'winding.layout.innerRadius': q('Legs begin at', 'length', 'Radius of the inner arcs, middle of the bundle'),
  'winding.layout.outerRadius': q('Legs end at', 'length', 'Radius of the outer arcs, middle of the bundle'),
  'winding.layout.legWidth': q('Leg width', 'length', 'Width of one bundle of turns, in the plane of the winding'),
  'winding.layout.placement': q('Rings of several phases', 'word', 'Stacked along the axle, or legs side by side in one layer'),
  'winding.layout.coils': q('Coils', 'count', 'Coils round the winding, all phases together', 'Q'),
  'winding.layout.holeInnerRadius': q('Hole begins at', 'length', 'Inner edge of the coil’s hole, from the axle along the coil’s own axis'),
  'winding.layout.holeOuterRadius': q('Hole ends at', 'length', 'Outer edge of the coil’s hole, from the axle along the coil’s own axis'),
  'winding.layout.holeInnerWidth': q('Hole width, inner end', 'length', 'Width of the hole at its inner edge'),
  'winding.layout.holeOuterWidth': q('Hole width, outer end', 'length', 'Width of the hole at its outer edge'),
  'winding.thickness': q('Copper thickness', 'length', 'Axial height of one layer of copper'),
  'winding.skin': q('Skin over the copper', 'length', 'Former or resin between copper and air, each face'),
  'winding.phases': q('Phases', 'count', 'Separate EMFs, evenly spaced in time', 'm'),
  'winding.turns': q('Turns', 'count', 'Turns in each coil, or in each ring of a serpentine', 'N'),
  'winding.connection': q('Connection', 'word', 'Star, delta, or each phase on a bridge of its own'),
  'winding.parallelPaths': q('Parallel paths', 'count', 'Equal groups of a phase’s coils joined side by side', 'a'),
  'winding.leadLength': q('Leads per phase', 'longLength', 'Wire from the coils to the rectifier or terminal, start and finish together'),
  'winding.wire.metal': q('Metal', 'word', 'Copper or aluminium'),
  'winding.wire.conductorDiameter': q('Conductor diameter', 'wireDiameter', 'Bare metal'),
  'winding.wire.overallDiameter': q('Diameter over the covering', 'wireDiameter', 'Metal and enamel together; measure it'),
  'winding.wire.inHand': q('Wires in hand', 'count', 'Strands wound together as one turn'),
  'winding.wire.thermalClass': q('Covering class', 'temperature', 'Temperature class of the enamel, IEC 60085'),

  'surroundings.airTemperature': q('Air temperature', 'temperature', 'Air around the running machine'),
  'surroundings.magnetTemperature': q('Magnet temperature', 'temperature', 'Magnets of the running machine'),
  'surroundings.formerLimit': q('Former or resin limit', 'temperature', 'Temperature at which the resin, printed plastic or glue softens'),

  'rectifier.arrangement': q('Bridges', 'word', 'One bridge for all phases, or one each with DC sides in parallel or series'),
  'rectifier.diode.threshold': q('Diode threshold', 'voltage', 'Volts a diode drops before it carries much current'),
  'rectifier.diode.slope': q('Diode slope', 'resistance', 'Further volts per ampere'),
  'cable.side': q('Cable carries', 'word', 'AC between generator and rectifier, or DC between rectifier and load'),
  'cable.length': q('Cable length', 'longLength', 'One way'),
  'cable.section': q('Conductor section', 'area', 'Of each conductor'),
  'cable.metal': q('Cable metal', 'word', 'Copper or aluminium'),

  load: q('Load', 'word', 'What the rectifier feeds'),
  'load.chemistry': q('Chemistry', 'word', 'Flooded, AGM, gel, LiFePO4 or another by name'),
  'load.voltage': q('Battery voltage', 'voltage', 'EMF while charging, half-charged'),
  'load.resistance': q('Resistance', 'resistance', 'Internal resistance of the battery, or the resistor itself'),
  'load.capacity': q('Capacity', 'charge', 'At the 20-hour rate'),
  'load.turnOn': q('Turn-on voltage', 'voltage', 'Volts at which the load starts to draw'),
  'load.slope': q('Slope above turn-on', 'resistance', 'Further volts per ampere'),

  controller: q('Charge controller', 'word', 'Numbers from the controller’s data sheet'),
  'controller.maxInputVoltage': q('Greatest input voltage', 'voltage', 'Above it the controller is destroyed'),
  'controller.minInputVoltage': q('Least input voltage', 'voltage', 'Below it the controller does nothing'),
  'controller.maxInputCurrent': q('Greatest input current', 'current', 'At its input'),
  'controller.maxPower': q('Greatest power', 'power', 'It can convert'),
  'controller.batteryVoltage': q('Battery at its output', 'voltage', 'Nominal'),
  'controller.maxChargeCurrent': q('Greatest charge current', 'current', 'At its output'),

  'turbine.rows': q('Wind wheels in a row', 'count', 'Wheels one behind the other on one shaft'),
  'turbine.diameter': q('Wheel diameter', 'longLength', 'Tip to tip', 'D'),
  'turbine.peakCp': q('Best power coefficient', 'ratio', 'Share of the wind’s power the wheel takes at its best', 'Cp'),
  'turbine.tipSpeedRatio': q('Tip-speed ratio there', 'ratio', 'Blade-tip speed over wind speed at the best power coefficient', 'λ'),
  'turbine.runawayRatio': q('Tip-speed ratio run away', 'ratio', 'Unloaded'),
  'turbine.curve': q('Measured curve', 'word', 'Power coefficient against tip-speed ratio, in place of the three numbers above'),
  'site.ratedWind': q('Rated wind', 'windSpeed', 'Wind for which heat and controller are checked'),
  'site.gustWind': q('Greatest gust', 'windSpeed', 'Wind in which the load may be lost'),
  'site.meanWind': q('Mean wind', 'windSpeed', 'Year’s mean at the wheel’s height'),
  'site.weibullShape': q('Weibull shape', 'ratio', '2 where nothing is known (Rayleigh)', 'k'),
  'site.airDensity': q('Air density', 'density', '1.225 at sea level and 15 °C', 'ρ'),
} satisfies Record<string, Quantity>;

/** Results by path, as `solve --json` names them. */
export const resultQuantities = {
  'gap.length': q('Magnet face to magnet face', 'length', 'Copper, skins and running clearances together', 'g'),
  'gap.peak': q('Peak field', 'fluxDensity', 'At pitch radius, mid-plane, on the magnet’s centre line', 'B̂'),
  'gap.fundamental': q('Fundamental of the field', 'fluxDensity', 'The part of the field that makes the volts', 'b₁'),
  'gap.plate': q('Flux density in the plate', 'fluxDensity', 'Greatest mean in the steel’s section; above 1.6 T the plate is too thin'),
  'coils.count': q('Coils to wind', 'count', 'All phases together'),
  'coils.wireLength': q('Wire in all', 'longLength', 'Every strand, coil and lead'),
  'coils.wireMass': q('Wire mass', 'mass', 'Metal of all that wire'),
  'coils.fill': q('Fill', 'percent', 'Covered wires over the window; hand winding reaches 55–65 %'),
  'coils.fits': q('Turns fit', 'word', 'Whether the turns go into the window by hand'),
  'coils.coilResistance20': q('Coil resistance, 20 °C', 'resistance', 'What the meter reads on one coil'),
  'coils.phaseResistance20': q('Phase resistance, 20 °C', 'resistance', 'Leads and parallel paths counted'),
  'coils.phaseResistance': q('Phase resistance, hot', 'resistance', 'At the rated coil temperature'),
  'coils.phaseInductance': q('Phase inductance', 'inductance', 'Self-inductance of one phase'),
  'coils.pegDistance': q('Peg distance', 'length', 'Between the centres of the two pegs the skein is wound on'),
  'emf.peakPerRadPerSecond': q('EMF constant', 'emfConstant', 'Peak of the fundamental of one phase per rad/s of the shaft', 'Ke'),
  'emf.phaseRmsPer1000rpm': q('Phase volts at 1000 rpm', 'voltage', 'RMS, open circuit'),
  'emf.lineRmsPer1000rpm': q('Line volts at 1000 rpm', 'voltage', 'RMS between terminals, open circuit'),
  'emf.distortion': q('Distortion', 'percent', 'Harmonics over the fundamental'),
  'emf.hertzPer1000rpm': q('Frequency at 1000 rpm', 'frequency', 'Pole pairs times turns a second'),
  'cutIn.rpm': q('Cut-in speed', 'rpm', 'Where the rectified peak first passes the load’s volts and the diodes'),
  'cutIn.wind': q('Cut-in wind', 'windSpeed', 'Wind in which the free-running wheel reaches that speed'),
  'rated.wind': q('Rated wind', 'windSpeed', 'As entered'),
  'rated.rpm': q('Speed', 'rpm', 'Where wheel and generator settle at rated wind'),
  'rated.dcVolts': q('DC volts', 'voltage', 'At the load'),
  'rated.dcAmps': q('DC amps', 'current', 'Into the load'),
  'rated.dcWatts': q('DC watts', 'power', 'Into the load'),
  'rated.currentDensity': q('Current density', 'currentDensity', 'RMS current over the metal of one turn'),
  'rated.coilTemperature': q('Coil temperature', 'temperature', 'Settled at rated wind'),
  'rated.limitTemperature': q('Temperature limit', 'temperature', 'The lowest of covering and former or resin'),
  'year.energy': q('Energy in a year', 'energy', 'Into the load, at the site’s winds'),
} satisfies Record<string, Quantity>;

export type EntryPath = keyof typeof entryQuantities;
export type ResultPath = keyof typeof resultQuantities;
