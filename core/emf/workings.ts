import { fixed, minus, over, plus, root, squared, times, type Formula, type Term } from '../formula';
import type { GapSpectrum } from '../field/stage';
import { written } from '../notation';
import { layoutModel } from '../winding/layouts';
import type { WindingSection } from '../winding/section';
import type { WindingResult } from '../winding/stage';
import { found, type Given, type Working } from '../working';
import { linkageShape, type EmfResult, type PhaseEmf } from './stage';
import { combined, harmonicPeak } from './waveform';
import { circulatingCurrent, zeroSequence } from './zero-sequence';

/** Harmonics shown one by one; the rest goes into one term. */
const SHOWN = 4;
const AT = fixed((1000 * 2 * Math.PI) / 60, 'speed');

/** How the volts come about. Source of each beside it. */
export function emfWorkings(
  given: Given,
  winding: WindingSection,
  placed: WindingResult,
  spectrum: GapSpectrum,
  emf: EmfResult,
): Working[] {
  const { result } = given;
  const spread = squared(result('emf.distortion'));
  return [
    constantWorking(given, winding, placed, spectrum, emf),
    {
      result: 'emf.phaseRmsPer1000rpm',
      formula: times(over(times(result('emf.peakPerRadPerSecond'), AT), root(2)), root(plus(1, spread))),
      limits: 'Open circuit, magnets at their running temperature.',
      source: 'Root mean square of a sum of harmonics (Parseval).',
    },
    ...textbookWorkings(given, winding, emf),
    lineWorking(given, winding, emf),
    coilWorking(emf),
    ...zeroSequenceWorkings(given, emf, result('coils.phaseResistance20').value),
    distortionWorking(emf),
    {
      result: 'emf.hertzPer1000rpm',
      formula: over(times(found('p', 'Pole pairs', emf.polePairs, 'count', 'discs.poles'), fixed(1000, 'rpm')), 60),
      limits: 'Nothing is left out.',
      source: 'One period for each pair of poles that passes.',
    },
    inductanceWorking(given, winding, placed, emf),
  ];
}

function constantWorking({ entry }: Given, winding: WindingSection, placed: WindingResult, spectrum: GapSpectrum, emf: EmfResult): Working {
  const { linkage, misaligned } = linkageShape(winding, placed, spectrum);
  const fundamental = Math.hypot(linkage[0][0], misaligned?.skew[0][0] ?? 0);
  const phasors = placed.coils
    .filter(({ phase }) => phase === 1)
    .map(({ direction, angle }) => ({ x: direction * Math.cos(emf.polePairs * angle), y: direction * Math.sin(emf.polePairs * angle) }));
  const together = Math.hypot(
    phasors.reduce((sum, { x }) => sum + x, 0),
    phasors.reduce((sum, { y }) => sum + y, 0),
  );
  return {
    result: 'emf.peakPerRadPerSecond',
    law: written('λ_1 = ∮ A · d ℓ , e = − { d Λ / d t }'),
    method:
      'The fundamental’s flux through one turn, summed along its straight edges over all radii and averaged over width and height of the leg; then the coils of a phase added as phasors.',
    formula: over(
      times(
        found('p', 'Pole pairs', emf.polePairs, 'count', 'discs.poles'),
        entry('winding.turns'),
        found('λ_1', 'Flux linked by one turn, fundamental', fundamental, 'flux', 'winding.layout'),
        found('Σ_c', 'Coils of a phase added as phasors', together, 'ratio', 'coils.count'),
      ),
      entry('winding.parallelPaths'),
    ),
    from: ['gap.fundamental', 'winding.thickness'],
    limits: 'Turns spread evenly over the leg; no teeth, no iron in the coils.',
    source: 'Faraday’s law on the three-dimensional field; Stokes’s theorem along each turn.',
  };
}

/** What books reckon with, beside the integral over the real coil. */
function textbookWorkings({ entry, result }: Given, { layout }: WindingSection, { polePairs, textbook }: EmfResult): Working[] {
  if (!textbook) return [];
  const linked = found(
    'n_p',
    'Poles of one sense that a turn links',
    layoutModel(layout).polesLinked(polePairs),
    'count',
    'winding.layout',
  );
  return [
    {
      result: 'stages.emf.textbook.phaseRmsPer1000rpm',
      law: written('Φ = { 2 · B_1 · r · L / p } , E = { ω · p · N · k_w · Φ / √{ 2 } }'),
      method: 'The flux of a pole, the field taken as a sine of one height all along the leg, times turns in series and winding factor.',
      formula: over(
        times(
          AT,
          found('p', 'Pole pairs', polePairs, 'count', 'discs.poles'),
          entry('winding.turns'),
          result('stages.winding.seriesCoils'),
          linked,
          result('stages.winding.factors.winding'),
          found('Φ', 'Flux of one pole', textbook.poleFlux, 'flux', 'gap.fundamental'),
        ),
        root(2),
      ),
      limits:
        'Beside the volts, not in them: the field’s fall-off towards the magnets’ ends, width and height of the leg, end turns and harmonics are left out.',
      source: 'Pyrhönen, Jokinen & Hrabovcová 2008, Design of Rotating Electrical Machines, ch. 2 (from memory).',
    },
    {
      result: 'stages.emf.textbook.departure',
      formula: minus(over(result('stages.emf.textbook.phaseRmsPer1000rpm'), result('emf.phaseRmsPer1000rpm')), 1),
      limits: 'Open circuit, magnets at their running temperature.',
      source: 'By definition.',
    },
  ];
}

function lineWorking({ result }: Given, { connection, phases }: WindingSection, { phaseEmf }: EmfResult): Working {
  const path = 'emf.lineRmsPer1000rpm';
  const limits = 'Open circuit, magnets at their running temperature.';
  if (connection === 'separate' || phases === 1)
    return {
      result: path,
      formula: result('emf.phaseRmsPer1000rpm'),
      method: phases === 1 ? 'One phase: its ends are the terminals.' : 'Each phase has terminals of its own.',
      limits,
      source: 'By definition.',
    };
  const star = connection === 'star';
  const line = combined([phaseEmf[0], star ? phaseEmf[1] : zeroSequence(phaseEmf)], [1, -1]);
  return {
    result: path,
    law: written(star ? 'e_L = e_1 − e_2' : 'e_L = e_1 − { 1 / m } · Σ_j e_j'),
    method: `Harmonic by harmonic, ${star ? 'the difference of two phases' : 'a phase less what all have in common'}: third harmonics of three phases fall out.`,
    formula: rmsAt1000rpm(
      found('K_L', 'Peak between lines, fundamental', harmonicPeak(line, 0), 'emfConstant', 'emf.peakPerRadPerSecond'),
      found('K_Lh', 'Peak between lines, harmonics together', together(peaks(line).slice(1)), 'emfConstant'),
    ),
    from: ['winding.connection', 'winding.phases'],
    limits,
    source: 'Superposition; root mean square of a sum of harmonics (Parseval).',
  };
}

function coilWorking({ coilEmf }: EmfResult): Working {
  const [first, ...rest] = peaks(coilEmf[0]);
  return {
    result: 'stages.emf.coilRmsPer1000rpm',
    formula: rmsAt1000rpm(
      found('K_c', 'Peak of one coil, fundamental', first, 'emfConstant', 'emf.peakPerRadPerSecond'),
      found('K_ch', 'Peak of one coil, harmonics together', together(rest), 'emfConstant'),
    ),
    from: ['winding.turns', 'winding.layout'],
    limits: 'Open circuit, magnets at their running temperature.',
    source: 'Root mean square of a sum of harmonics (Parseval).',
  };
}

/** What all phases have in common, and the current it drives round a closed delta. */
function zeroSequenceWorkings({ result }: Given, emf: EmfResult, resistance: number): Working[] {
  if (emf.zeroSequenceRmsPer1000rpm === undefined) return [];
  const common = peaks(zeroSequence(emf.phaseEmf));
  const others = common.filter((_, h) => h !== 1);
  const volts: Working = {
    result: 'stages.emf.zeroSequenceRmsPer1000rpm',
    law: written('e_0 = { 1 / m } · Σ_j e_j'),
    formula: rmsAt1000rpm(
      found('K_03', 'Peak in common, third harmonic', common[1] ?? 0, 'emfConstant', 'emf.distortion'),
      found('K_0r', 'Peak in common, all others together', together(others), 'emfConstant'),
    ),
    from: ['winding.phases', 'winding.connection'],
    limits: 'Open circuit, magnets at their running temperature.',
    source: 'Symmetrical components, Fortescue 1918, Trans. AIEE 37, 1027 (from memory).',
  };
  if (emf.circulatingAmpsPer1000rpm === undefined) return [volts];
  const omega = (emf.polePairs * 1000 * 2 * Math.PI) / 60;
  const loop = { omega, resistance, inductance: emf.inductance };
  const driving = common.map((peak) => peak * (omega / emf.polePairs));
  const inductance = emf.inductance.flat().reduce((sum, each) => sum + each, 0) / emf.inductance.length;
  const rest = circulatingCurrent(
    driving.map((peak, h) => (h === 1 ? 0 : peak)),
    emf.orders,
    loop,
  );
  return [
    volts,
    {
      result: 'stages.emf.circulatingAmpsPer1000rpm',
      law: written('m · e_0 = m · R · i + m · L_0 · { d i / d t }'),
      method: 'Round the closed delta with nothing connected, harmonic by harmonic.',
      formula: root(
        plus(
          over(
            squared(
              found('E_03', 'Peak volts in common, third harmonic', driving[1] ?? 0, 'voltage', 'stages.emf.zeroSequenceRmsPer1000rpm'),
            ),
            times(
              2,
              plus(
                squared(result('coils.phaseResistance20')),
                squared(found('X_03', 'Reactance of a phase to it', 3 * omega * inductance, 'resistance', 'coils.phaseInductance')),
              ),
            ),
          ),
          squared(found('I_0r', 'Current of all other harmonics together, root mean square', rest, 'current')),
        ),
      ),
      limits: 'Coils at 20 °C: warm ones carry less.',
      source: 'Kirchhoff’s voltage law round the loop.',
    },
  ];
}

const rmsAt1000rpm = (fundamental: Term, others: Term) => times(over(AT, root(2)), root(plus(squared(fundamental), squared(others))));

function distortionWorking({ orders, phaseEmf }: EmfResult): Working {
  const [first, ...rest] = peaks(phaseEmf[0]);
  const share = (letter: string, name: string, peak: number): Formula => squared(found(letter, name, peak / first, 'percent'));
  const shown = rest.slice(0, SHOWN).map((peak, i) => share(`k_${orders[i + 1]}`, `Harmonic ${orders[i + 1]}, of the fundamental`, peak));
  const others = rest.slice(SHOWN);
  const last = others.length > 0 ? [share('k_more', 'All higher ones together', together(others))] : [];
  return {
    result: 'emf.distortion',
    ...(first > 0 ? { formula: root(plus(...shown, ...last)) } : { formula: fixed(0, 'percent'), method: 'There is no fundamental.' }),
    from: ['magnets.shape', 'winding.layout'],
    limits: 'Open circuit.',
    source: 'Total harmonic distortion, IEC 61000-2-2 (from memory).',
  };
}

const peaks = (emf: PhaseEmf) => emf.cos.map((_, h) => harmonicPeak(emf, h));
const together = (values: number[]) => Math.hypot(...values);

function inductanceWorking({ entry }: Given, { turns }: WindingSection, { coils }: WindingResult, emf: EmfResult): Working {
  const own = coils.filter(({ phase }) => phase === 1).length;
  const coil = found('L_c', 'Self-inductance of one coil', emf.coilInductance, 'inductance');
  const mutual = found('M_Σ', 'Mutual inductances of the phase’s coils, signs counted', emf.mutualInPhase, 'inductance');
  return {
    result: 'coils.phaseInductance',
    law: written('M = { μ_0 / 4 π } · N^2 · ∮ ∮ { d ℓ · d ℓ′ / | r − r′ | }'),
    method: `Neumann’s integral over filaments across and through the bundle of ${turns} turns, their images in the steel counted; a bundle with itself at its own geometric mean distance.`,
    formula: over(
      own > 1 ? plus(times(found('n_c', 'Coils in a phase', own, 'count', 'coils.count'), coil), mutual) : coil,
      squared(entry('winding.parallelPaths')),
    ),
    from: ['winding.turns', 'winding.layout', 'winding.thickness', 'discs.backing'],
    limits: 'Plates flat and unsaturated; leads left out.',
    source: 'Neumann 1845; Grover 1946, Inductance Calculations (from memory); method of images.',
  };
}
