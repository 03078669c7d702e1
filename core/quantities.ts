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
  | 'temperatureDifference'
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
  | 'resistivity'
  | 'flux'
  | 'fluxPerLength'
  | 'thermalConductance'
  | 'duration'
  | 'time'
  | 'heatCapacity'
  | 'price'
  | 'word';

export interface Quantity {
  label: string;
  /** As in `B_r20`: what follows the underscore is set below the line. */
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
    'B_r20',
  ),
  'magnets.remanenceTempCoefficient': q(
    'Remanence per kelvin',
    'temperatureCoefficient',
    'Share of the remanence lost per degree of warming',
    'α_B',
  ),
  'magnets.intrinsicCoercivity': q('Intrinsic coercivity at 20 °C', 'fieldStrength', 'Opposing field that demagnetises for good', 'H_cJ'),
  'magnets.recoilPermeability': q(
    'Recoil permeability',
    'ratio',
    'Slope of the magnet’s working line relative to air; 1.05 for NdFeB',
    'μ_r',
  ),
  'magnets.maxTemperature': q('Magnet limit', 'temperature', 'Working temperature the grade must not pass'),

  'discs.arrangement': q('Discs', 'word', 'Two discs facing, one disc, or one disc with a plain steel plate turning opposite it'),
  'discs.poles': q('Magnets on one disc', 'count', 'Even: north and south alternate', '2p'),
  'discs.pitchRadius': q('Pitch radius', 'length', 'Radius of the circle through the magnets’ centres', 'r_p'),
  'discs.backing': q('Backing', 'word', 'What stands behind the magnets: nothing magnetic (wood, plastic, resin) or a steel plate'),
  'discs.backing.thickness': q('Plate thickness', 'length', 'Thickness of the steel behind the magnets', 't_p'),
  'discs.runningClearance': q('Running clearance', 'length', 'Free air between magnet face and winding, each side', 'c'),
  'discs.misalignment': q(
    'Misalignment of the discs',
    'angle',
    'Angle by which one disc’s magnets stand off those facing them; 0 or empty where they are in line',
    'δ',
  ),

  'winding.layout': q(
    'Layout',
    'word',
    'Serpentine: one ring a phase, a leg under every magnet. Concentrated: separate coils side by side',
  ),
  'winding.layout.innerRadius': q('Legs begin at', 'length', 'Radius of the inner arcs, middle of the bundle', 'r_i'),
  'winding.layout.outerRadius': q('Legs end at', 'length', 'Radius of the outer arcs, middle of the bundle', 'r_o'),
  'winding.layout.legWidth': q('Leg width', 'length', 'Width of one bundle of turns, in the plane of the winding', 'w'),
  'winding.layout.placement': q('Rings of several phases', 'word', 'Stacked along the axle, or legs side by side in one layer'),
  'winding.layout.coils': q('Coils', 'count', 'Coils round the winding, all phases together', 'Q'),
  'winding.layout.holeInnerRadius': q(
    'Hole begins at',
    'length',
    'Inner edge of the coil’s hole, from the axle along the coil’s own axis',
    'x_1',
  ),
  'winding.layout.holeOuterRadius': q(
    'Hole ends at',
    'length',
    'Outer edge of the coil’s hole, from the axle along the coil’s own axis',
    'x_2',
  ),
  'winding.layout.holeInnerWidth': q('Hole width, inner end', 'length', 'Width of the hole at its inner edge', 'y_1'),
  'winding.layout.holeOuterWidth': q('Hole width, outer end', 'length', 'Width of the hole at its outer edge', 'y_2'),
  'winding.thickness': q('Copper thickness', 'length', 'Axial height of one layer of copper', 't'),
  'winding.skin': q('Skin over the copper', 'length', 'Former or resin between copper and air, each face', 's'),
  'winding.phases': q('Phases', 'count', 'Separate EMFs, evenly spaced in time', 'm'),
  'winding.turns': q('Turns', 'count', 'Turns in each coil, or in each ring of a serpentine', 'N'),
  'winding.connection': q('Connection', 'word', 'Star, delta, or each phase on a bridge of its own'),
  'winding.parallelPaths': q('Parallel paths', 'count', 'Equal groups of a phase’s coils joined side by side', 'a'),
  'winding.leadLength': q(
    'Leads per phase',
    'longLength',
    'Wire from the coils to the rectifier or terminal, start and finish together',
    'ℓ_lead',
  ),
  'winding.wire.metal': q('Metal', 'word', 'Copper or aluminium'),
  'winding.wire.conductorDiameter': q('Conductor diameter', 'wireDiameter', 'Bare metal', 'd'),
  'winding.wire.overallDiameter': q('Diameter over the covering', 'length', 'Metal and enamel together; measure it', 'd_o'),
  'winding.wire.inHand': q('Wires in hand', 'count', 'Strands wound together as one turn', 'n_s'),
  'winding.wire.thermalClass': q('Covering class', 'temperature', 'Temperature class of the enamel, IEC 60085', 'T_class'),

  'surroundings.airTemperature': q('Air temperature', 'temperature', 'Air around the running machine', 'T_air'),
  'surroundings.magnetTemperature': q('Magnet temperature', 'temperature', 'Magnets of the running machine', 'T_m'),
  'surroundings.formerLimit': q(
    'Former or resin limit',
    'temperature',
    'Temperature at which the resin, printed plastic or glue softens',
    'T_former',
  ),

  'rectifier.arrangement': q('Bridges', 'word', 'One bridge for all phases, or one each with DC sides in parallel or series'),
  'rectifier.diode.threshold': q('Diode threshold', 'voltage', 'Volts a diode drops before it carries much current', 'V_D'),
  'rectifier.diode.slope': q('Diode slope', 'resistance', 'Further volts per ampere', 'R_D'),
  'cable.side': q('Cable carries', 'word', 'AC between generator and rectifier, or DC between rectifier and load'),
  'cable.length': q('Cable length', 'longLength', 'One way', 'ℓ_cable'),
  'cable.section': q('Conductor section', 'area', 'Of each conductor', 'A_cable'),
  'cable.metal': q('Cable metal', 'word', 'Copper or aluminium'),

  load: q('Load', 'word', 'What the rectifier feeds'),
  'load.chemistry': q('Chemistry', 'word', 'Flooded, AGM, gel, LiFePO4 or another by name'),
  'load.voltage': q('Battery voltage', 'voltage', 'EMF while charging, half-charged', 'E_B'),
  'load.resistance': q('Resistance', 'resistance', 'Internal resistance of the battery, or the resistor itself', 'R_load'),
  'load.capacity': q('Capacity', 'charge', 'At the 20-hour rate'),
  'load.turnOn': q('Turn-on voltage', 'voltage', 'Volts at which the load starts to draw', 'V_on'),
  'load.slope': q('Slope above turn-on', 'resistance', 'Further volts per ampere', 'R_slope'),

  controller: q('Charge controller', 'word', 'Numbers from the controller’s data sheet'),
  'controller.maxInputVoltage': q('Greatest input voltage', 'voltage', 'Above it the controller is destroyed', 'V_most'),
  'controller.minInputVoltage': q('Least input voltage', 'voltage', 'Below it the controller does nothing', 'V_least'),
  'controller.maxInputCurrent': q('Greatest input current', 'current', 'At its input'),
  'controller.maxPower': q('Greatest power', 'power', 'It can convert'),
  'controller.batteryVoltage': q('Battery at its output', 'voltage', 'Nominal'),
  'controller.maxChargeCurrent': q('Greatest charge current', 'current', 'At its output'),

  'turbine.rows': q('Wind wheels in a row', 'count', 'Wheels one behind the other on one shaft'),
  'turbine.diameter': q('Wheel diameter', 'longLength', 'Tip to tip', 'D'),
  'turbine.peakCp': q('Best power coefficient', 'ratio', 'Share of the wind’s power the wheel takes at its best', 'C_p'),
  'turbine.tipSpeedRatio': q('Tip-speed ratio there', 'ratio', 'Blade-tip speed over wind speed at the best power coefficient', 'λ_opt'),
  'turbine.runawayRatio': q('Tip-speed ratio run away', 'ratio', 'Unloaded', 'λ_run'),
  'turbine.curve': q('Measured curve', 'word', 'Power coefficient against tip-speed ratio, in place of the three numbers above'),
  'site.ratedWind': q('Rated wind', 'windSpeed', 'Wind for which heat and controller are checked', 'v_r'),
  'site.gustWind': q('Greatest gust', 'windSpeed', 'Wind in which the load may be lost', 'v_gust'),
  'site.meanWind': q('Mean wind', 'windSpeed', 'Year’s mean at the wheel’s height', 'v_mean'),
  'site.weibullShape': q('Weibull shape', 'ratio', '2 where nothing is known (Rayleigh)', 'k'),
  'site.airDensity': q('Air density', 'density', '1.225 at sea level and 15 °C', 'ρ_air'),

  workshop: q(
    'Hub and bolts known',
    'word',
    'Holes for shaft, hub and mounting go into the parts to cut; without them there is a pilot hole only',
  ),
  'workshop.magnetFit': q('Air round a magnet', 'length', 'On each side of it in its pocket'),
  'workshop.shaftHole': q('Shaft hole', 'length', 'Its diameter in the discs'),
  'workshop.bolts': q('Hub bolts', 'count', 'Studs that hold the discs, evenly spaced, the first on the line of magnet 1'),
  'workshop.boltCircle': q('Hub bolt circle', 'length', 'Diameter through the middles of the hub’s bolts'),
  'workshop.boltHole': q('Hub bolt hole', 'length', 'Its diameter'),
  'workshop.mountingBolts': q('Mounting bolts', 'count', 'Bolts at the winding’s edge that hold it to the frame'),
  'workshop.mountingHole': q('Mounting hole', 'length', 'Its diameter'),
} satisfies Record<string, Quantity>;

/** Results by path, as `solve --json` names them. */
export const resultQuantities = {
  'gap.length': q('Magnet face to magnet face', 'length', 'Copper, skins and running clearances together', 'g'),
  'gap.peak': q('Peak field', 'fluxDensity', 'At pitch radius, mid-plane, on the magnet’s centre line', 'B_max'),
  'gap.fundamental': q('Fundamental of the field', 'fluxDensity', 'The part of the field that makes the volts', 'b_1'),
  'gap.plate': q(
    'Flux density in the plate',
    'fluxDensity',
    'Greatest mean in the steel’s section; above 1.6 T the plate is too thin',
    'B_p',
  ),
  'coils.count': q('Coils to wind', 'count', 'All phases together', 'Q'),
  'coils.wireLength': q('Wire in all', 'longLength', 'Every strand, coil and lead', 'ℓ_w'),
  'coils.wireMass': q('Wire mass', 'mass', 'Metal of all that wire', 'm_w'),
  'coils.fill': q('Fill', 'percent', 'Covered wires over the window; hand winding reaches 55–65 %', 'k_f'),
  'coils.fits': q('Turns fit', 'word', 'Whether the turns go into the window by hand'),
  'coils.coilResistance20': q('Coil resistance, 20 °C', 'resistance', 'What the meter reads on one coil', 'R_c'),
  'coils.phaseResistance20': q('Phase resistance, 20 °C', 'resistance', 'Leads and parallel paths counted', 'R_20'),
  'coils.phaseResistance': q('Phase resistance, hot', 'resistance', 'At the rated coil temperature', 'R'),
  'coils.phaseInductance': q('Phase inductance', 'inductance', 'Self-inductance of one phase', 'L'),
  'coils.pegDistance': q('Peg distance', 'length', 'Between the centres of the two pegs the skein is wound on', 's_p'),
  'emf.peakPerRadPerSecond': q('EMF constant', 'emfConstant', 'Peak of the fundamental of one phase per rad/s of the shaft', 'K_e'),
  'emf.phaseRmsPer1000rpm': q('Phase volts at 1000 rpm', 'voltage', 'RMS, open circuit', 'E'),
  'emf.lineRmsPer1000rpm': q('Line volts at 1000 rpm', 'voltage', 'RMS between terminals, open circuit', 'E_L'),
  'emf.distortion': q('Distortion', 'percent', 'Harmonics over the fundamental', 'k_THD'),
  'emf.hertzPer1000rpm': q('Frequency at 1000 rpm', 'frequency', 'Pole pairs times turns a second', 'f'),
  'cutIn.rpm': q('Cut-in speed', 'rpm', 'Where the rectified peak first passes the load’s volts and the diodes', 'n_c'),
  'cutIn.wind': q('Cut-in wind', 'windSpeed', 'Wind in which the free-running wheel reaches that speed', 'v_c'),
  'rated.wind': q('Rated wind', 'windSpeed', 'As entered', 'v'),
  'rated.rpm': q('Speed', 'rpm', 'Where wheel and generator settle at rated wind', 'n'),
  'rated.dcVolts': q('DC volts', 'voltage', 'At the load', 'V'),
  'rated.dcAmps': q('DC amps', 'current', 'Into the load', 'I'),
  'rated.dcWatts': q('DC watts', 'power', 'Into the load', 'P'),
  'rated.currentDensity': q('Current density', 'currentDensity', 'RMS current over the metal of one turn', 'J'),
  'rated.coilTemperature': q('Coil temperature', 'temperature', 'Settled at rated wind', 'T'),
  'rated.limitTemperature': q('Temperature limit', 'temperature', 'The lowest of covering and former or resin', 'T_max'),
  'year.energy': q('Energy in a year', 'energy', 'Into the load, at the site’s winds', 'W'),
} satisfies Record<string, Quantity>;

/** Results of single stages that a worksheet shows beside those above. */
export const stageQuantities = {
  'stages.magnets.remanence': q('Remanence, warm', 'fluxDensity', 'At the magnets’ temperature', 'B_r'),
  'stages.field.saturation': q(
    'Kept after saturation',
    'ratio',
    'Share of the field left when the steel saturates; 1 when it does not',
    'k_sat',
  ),
  'stages.field.recoil': q('Kept after recoil', 'ratio', 'Share of the field left by the magnets’ recoil permeability', 'k_rec'),
  'stages.field.textbook.peak': q('Peak by magnetic circuit', 'fluxDensity', 'Textbook short cut, beside the full sum', 'B_c'),
  'stages.field.textbook.departure': q('Short cut over full sum', 'percent', 'What the magnetic circuit gives too much', 'd_B'),
  'stages.emf.textbook.phaseRmsPer1000rpm': q(
    'Phase volts by winding factor',
    'voltage',
    'Textbook short cut, beside the integrated volts: RMS at 1000 rpm, open circuit',
    'E_w',
  ),
  'stages.emf.textbook.departure': q('Short cut over integral', 'percent', 'What the winding factor gives too much', 'd_E'),
  'stages.emf.coilRmsPer1000rpm': q('Coil volts at 1000 rpm', 'voltage', 'RMS of one coil alone, open circuit', 'E_c'),
  'stages.emf.zeroSequenceRmsPer1000rpm': q(
    'Zero-sequence volts at 1000 rpm',
    'voltage',
    'RMS that all phases have in common, third harmonics above all: no line shows it, a closed delta shorts it',
    'E_0',
  ),
  'stages.emf.circulatingAmpsPer1000rpm': q(
    'Amps round the delta at 1000 rpm',
    'current',
    'RMS that the zero-sequence volts drive round the closed delta, nothing connected, coils at 20 °C',
    'I_0',
  ),
  'stages.winding.seriesCoils': q('Coils in series', 'count', 'In each parallel path of a phase', 'q'),
  'stages.winding.meanTurn': q('Mean turn', 'length', 'Length of the middle turn, corners rounded', 'ℓ_t'),
  'stages.winding.factors.winding': q('Winding factor', 'ratio', 'Textbook value, beside the integrated one', 'k_w'),
  'stages.winding.unbalance': q('Unbalance', 'percent', 'Greatest departure of a phase from the mean of all', 'u'),
  'stages.winding.windowArea': q('Window of one leg', 'area', 'Leg width times copper thickness', 'A_w'),
  'stages.wire.turnsTooMany': q('Turns too many', 'count', 'To take out so that the winding fits; 0 when it does', 'N_over'),
  'stages.wire.metalSection': q('Metal in a turn', 'area', 'Section of all strands of one turn', 'A'),
  'stages.wire.coilLength': q('Wire in a coil', 'longLength', 'One strand, without leads', 'ℓ_c'),
  'stages.rated.phaseAmps': q('Phase amps', 'current', 'RMS at rated wind; the greatest of the phases', 'I_ph'),
  'stages.rated.shaftWatts': q('Shaft watts', 'power', 'What the wheel gives at rated wind', 'P_shaft'),
  'stages.rated.copperLoss': q('Copper loss', 'power', 'In all phases at rated wind', 'P_cu'),
  'stages.rated.eddyLoss': q('Eddy loss', 'power', 'Eddy currents in the wire at rated wind', 'P_eddy'),
  'stages.rated.diodeLoss': q('Diode loss', 'power', 'In all diodes at rated wind', 'P_D'),
  'stages.rated.cableLoss': q('Cable loss', 'power', 'In all conductors at rated wind', 'P_cable'),
  'stages.rated.bearingLoss': q('Bearing loss', 'power', 'Bearings and seals at rated wind', 'P_b'),
  'stages.demands.gustVolts': q(
    'Open volts in the greatest gust',
    'voltage',
    'DC, nothing connected: the wheel run away, magnets at −20 °C',
    'V_g',
  ),
  'stages.demands.ratedOpenVolts': q('Open volts at rated wind', 'voltage', 'DC, nothing connected: the wheel run away', 'V_o'),
  'stages.demands.lightVolts': q('Open volts at the mean wind', 'voltage', 'DC, nothing connected: the wheel run away', 'V_m'),
  'stages.start.wind': q('Start-up wind', 'windSpeed', 'Least wind that turns the wheel from standstill against its bearings', 'v_s'),
  'stages.gust.rpm': q('Speed in the greatest gust', 'rpm', 'Where wheel and loaded generator settle in a gust that lasts', 'n_g'),
  'stages.gust.coilTemperature': q(
    'Coil temperature in the gust',
    'temperature',
    'Where the coils would settle in a gust that lasts',
    'T_g',
  ),
  'stages.gust.seconds': q(
    'Time to the limit in the gust',
    'time',
    'From the rated point, the load connected, until the coils reach their limit',
    't_g',
  ),
  'stages.braking.stopsTo': q('Shorting stops it up to', 'windSpeed', 'Greatest wind in which a wheel that runs free is stopped', 'v_b'),
  'stages.braking.amps': q('Shorted amps', 'current', 'RMS in each phase, shorted at rated speed', 'I_sc'),
  'stages.braking.seconds': q(
    'Time to the limit, shorted',
    'time',
    'Turning on at rated speed with its terminals shorted, all heat kept in the metal',
    't_sc',
  ),
  'stages.demands.greatestWatts': q('Greatest watts', 'power', 'Into the load in any wind up to the rated one', 'P_most'),
} satisfies Record<string, Quantity>;

export type EntryPath = keyof typeof entryQuantities;
export type ResultPath = keyof typeof resultQuantities | keyof typeof stageQuantities;

/** Words for the choices of the design file. */
const choices: Record<string, string> = {
  block: 'Block',
  cylinder: 'Round',
  sector: 'Ring sector',
  'facing-pair': 'Two discs facing',
  single: 'One disc',
  'single-with-return': 'Disc and plate',
  none: 'Not magnetic',
  steel: 'Steel plate',
  serpentine: 'Serpentine',
  concentrated: 'Separate coils',
  stacked: 'Stacked',
  interleaved: 'In one layer',
  star: 'Star',
  delta: 'Delta',
  separate: 'Separate',
  copper: 'Copper',
  aluminium: 'Aluminium',
  bridge: 'One bridge',
  'bridges-in-parallel': 'In parallel',
  'bridges-in-series': 'In series',
  ac: 'AC',
  dc: 'DC',
  battery: 'Battery',
  resistor: 'Resistor',
  threshold: 'LED string',
  tracker: 'Power tracker',
  open: 'Nothing',
};

export const choiceWord = (value: string): string => choices[value] ?? value;

const known: Record<string, Quantity> = { ...stageQuantities, ...resultQuantities, ...entryQuantities };

/** The quantity at a path of the design file or of the results. */
export function quantityAt(path: string): Quantity {
  return known[path] ?? { label: capitalised(path.split('.').at(-1) ?? path), unit: 'word', meaning: '' };
}

const capitalised = (word: string) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
