import { METALS } from '../constants';
import { evaluate, fixed, floor, greatest, minus, over, PI, plus, squared, times, type Formula } from '../formula';
import { found, type Given, type Working } from '../working';
import { HAND_FILL } from './fill';
import type { Metal, WireSection } from './section';

/** How the wire's results come about. Source of each beside it. */
export function wireWorkings(given: Given, wire: WireSection, legWidth: number, thickness: number): Working[] {
  const { entry, result } = given;
  const { density } = METALS[wire.metal];
  const turns = entry('winding.turns');
  const section = result('stages.wire.metalSection');
  const coil = times(turns, result('stages.winding.meanTurn'));
  const path = plus(times(result('coils.count'), coil), times(entry('winding.phases'), entry('winding.leadLength')));
  const covered = times(entry('winding.wire.inHand'), over(times(PI, squared(entry('winding.wire.overallDiameter'))), 4));
  const window = times(entry('winding.layout.legWidth'), entry('winding.thickness'));
  const tooThick = wire.overallDiameter > Math.min(legWidth, thickness);
  const most = tooThick ? fixed(0, 'count') : floor(over(times(fixed(HAND_FILL, 'ratio'), window), covered));
  const handWinding = `Hand winding fills 0.55 to 0.65 of the window; ${HAND_FILL.toFixed(2)} is taken as the most${tooThick ? ', and a strand thicker than the leg does not go in at all' : ''}.`;
  return [
    {
      result: 'stages.wire.metalSection',
      formula: times(entry('winding.wire.inHand'), over(times(PI, squared(entry('winding.wire.conductorDiameter'))), 4)),
      limits: 'Round wire.',
      source: 'Plain geometry.',
    },
    {
      result: 'coils.fill',
      formula: over(times(turns, covered), window),
      limits: handWinding,
      source: 'Area of circles; the limit is common practice, no source.',
    },
    {
      result: 'coils.fits',
      check: {
        says: 'Whether the turns are no more than go in by hand.',
        left: turns,
        sign: turns.value > evaluate(most) ? '>' : '≤',
        right: most,
        unit: 'count',
      },
      limits: handWinding,
      source: 'Common practice, no source.',
    },
    {
      result: 'stages.wire.turnsTooMany',
      formula: greatest(0, minus(turns, most)),
      limits: handWinding,
      source: 'Common practice, no source.',
    },
    {
      result: 'stages.wire.coilLength',
      formula: coil,
      limits: 'One strand, without leads and waste.',
      source: 'Mean length of the turns as drawn.',
    },
    {
      result: 'coils.wireLength',
      formula: times(path, entry('winding.wire.inHand')),
      limits: 'No waste; the sheet adds an allowance.',
      source: 'Mean length of the turns as drawn.',
    },
    {
      result: 'coils.wireMass',
      formula: times(path, section, found('ρ_m', `Density of ${wire.metal}`, density, 'density', 'winding.wire.metal')),
      limits: 'Metal only: a covering weighs one or two parts in a hundred more.',
      source: SOURCES[wire.metal],
    },
    ...resistanceWorkings(given, wire.metal, coil),
  ];
}

const SOURCES: Record<Metal, string> = {
  copper: 'IEC 60028: 1/58 Ω·mm²/m, 0.00393 /K, 8890 kg/m³.',
  aluminium: 'IEC 60889: 28.264 nΩ·m, 0.00403 /K, 2703 kg/m³ (from memory).',
};

function resistanceWorkings({ entry, result }: Given, metal: Metal, coil: Formula): Working[] {
  const { resistivity, temperatureCoefficient } = METALS[metal];
  const section = result('stages.wire.metalSection');
  const perLength = found('ρ_20', `Resistivity of ${metal} at 20 °C`, resistivity, 'resistivity', 'winding.wire.metal');
  return [
    {
      result: 'coils.coilResistance20',
      formula: over(times(perLength, coil), section),
      limits: 'Direct current, all strands joined side by side; joints left out.',
      source: SOURCES[metal],
    },
    {
      result: 'coils.phaseResistance20',
      formula: plus(
        over(times(result('coils.coilResistance20'), result('stages.winding.seriesCoils')), entry('winding.parallelPaths')),
        over(times(perLength, entry('winding.leadLength')), section),
      ),
      limits: 'Direct current; joints and terminals left out.',
      source: SOURCES[metal],
    },
    {
      result: 'coils.phaseResistance',
      formula: times(
        result('coils.phaseResistance20'),
        plus(
          1,
          times(
            found('α_20', `Temperature coefficient of ${metal}`, temperatureCoefficient, 'temperatureCoefficient', 'winding.wire.metal'),
            minus(result('rated.coilTemperature'), fixed(20, 'temperature')),
          ),
        ),
      ),
      limits: 'One temperature for all the wire, leads included; skin effect left out.',
      source: SOURCES[metal],
    },
  ];
}
