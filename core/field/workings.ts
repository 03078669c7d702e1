import { cosine, fixed, minus, over, PI, plus, times, type Formula } from '../formula';
import type { MagnetsSection } from '../magnets/section';
import { written } from '../notation';
import { found, type Given, type Working } from '../working';
import { gapAdmittance, layerPotentials, plateAdmittance } from './layers';
import { unrolled } from './machine';
import type { DiscsSection } from './section';
import { directField, fieldSource } from './source';
import { pitchHarmonics } from './spectrum';
import type { FieldResult } from './stage';
import { circuitHeight } from './textbook';

const CLOSED_FORMS =
  'Yang, Johnson & Kim 1990; Furlani 2001, Permanent Magnet and Electromechanical Devices, ch. 4; Derby & Olbert 2010, Am. J. Phys. 78, 229; method of images.';
const STEEL = 'Magnetic circuit of distributed reluctance; steel as in TEAM workshop problem 13.';

/** How the field's results come about: a field for one tesla, and the factors upon it. Source of each beside it. */
export function fieldWorkings(given: Given, magnets: MagnetsSection, discs: DiscsSection, stacked: boolean, field: FieldResult): Working[] {
  const { entry } = given;
  const perTesla = fieldSource(magnets.shape, 1, discs, field.gapLength);
  const harmonics = pitchHarmonics(perTesla, 0);
  const peak = Math.abs(directField(perTesla)(discs.pitchRadius, 0, 0)[2]);
  const copper = stacked ? times(entry('winding.phases'), entry('winding.thickness')) : entry('winding.thickness');
  return [
    {
      result: 'gap.length',
      formula: plus(copper, times(2, entry('winding.skin')), times(2, entry('discs.runningClearance'))),
      ...(discs.arrangement === 'single' && { method: 'One disc: twice the way from its magnets’ faces to the middle of the winding.' }),
      limits: 'Flat, true discs: run-out and waviness are left to the running clearance.',
      source: 'Plain geometry.',
    },
    ...strengthWorkings(given, discs, peak, Math.abs(harmonics[0])),
    ...plateWorkings(given, discs, harmonics),
    ...factorWorkings(given, magnets, discs, field),
    ...textbookWorkings(given, magnets, discs),
  ];
}

/** Peak and fundamental for a remanence of one tesla, and what becomes of them. */
function strengthWorkings({ entry, result }: Given, discs: DiscsSection, peak: number, fundamental: number): Working[] {
  const polePairs = found('p', 'Pole pairs', discs.poles / 2, 'count', 'discs.poles');
  const turned = discs.misalignment ? [cosine(over(times(polePairs, entry('discs.misalignment')), 2))] : [];
  const scaled = (share: Formula) =>
    times(share, result('stages.magnets.remanence'), result('stages.field.recoil'), result('stages.field.saturation'));
  const from: Working['from'] = ['magnets.shape', 'discs.arrangement', 'discs.backing', 'discs.poles', 'discs.pitchRadius', 'gap.length'];
  return [
    {
      result: 'gap.peak',
      law: written('β_max = { 1 / B_r } · | Σ_i B_z,i ( r_p ) |'),
      method:
        'The closed-form fields of all magnets, and of their images in the steel until the last adds less than a millionth, for a remanence of 1 T; then times remanence and factors.',
      formula: scaled(found('β_max', 'Field of all magnets and images, for 1 T', peak, 'ratio')),
      from,
      limits: 'Magnets magnetised evenly; plates flat and wider than the magnets; the factors are those of the machine as a whole.',
      source: CLOSED_FORMS,
    },
    {
      result: 'gap.fundamental',
      law: written('β_1 = { 2 / π · B_r } · | ∫_0^π B_z · cos θ · d θ |'),
      method: 'Fourier series round the pitch circle, in the mid-plane, of the same sum of magnets and images.',
      formula: times(
        scaled(found('β_1', 'Fundamental of all magnets and images, for 1 T, discs in line', fundamental, 'ratio')),
        ...turned,
      ),
      from,
      limits: 'At pitch radius and mid-plane only; the volts use the field at all radii and heights of the copper.',
      source: `Fourier series; ${CLOSED_FORMS}`,
    },
  ];
}

function plateWorkings({ entry, result }: Given, discs: DiscsSection, harmonics: number[]): Working[] {
  if (discs.backing.kind !== 'steel') return [];
  const share = harmonics.reduce((sum, b, h) => sum + ((h % 2 === 0 ? 1 : -1) * b) / (2 * h + 1), 0) / harmonics[0];
  const pitch = found(
    'τ',
    'Pole pitch along the pitch circle',
    (2 * Math.PI * discs.pitchRadius) / discs.poles,
    'length',
    'discs.pitchRadius',
  );
  return [
    {
      result: 'gap.plate',
      law: written('B_p · t_p = ∫_0^τ/2 B_z · d x + Φ_leak'),
      method:
        'The unrolled machine, one harmonic at a time, with the plate of that permeability at which the field along it gives back the flux it carries.',
      check: {
        says: 'The plate carries half a pole’s flux of the gap and, beside it, what leaks from magnet to magnet.',
        left: times(result('gap.plate'), entry('discs.backing.thickness')),
        sign: '≥',
        right: times(
          over(times(result('gap.fundamental'), pitch), PI),
          found('k_h', 'Half a pole’s flux over that of the fundamental', share, 'ratio'),
        ),
        unit: 'fluxPerLength',
      },
      from: ['magnets.remanence', 'magnets.shape.axial', 'gap.length'],
      limits: 'Mild steel; the plate’s width beyond the magnets, which helps it, is left out.',
      source: STEEL,
    },
  ];
}

/** What books reckon with, beside the full sum. */
function textbookWorkings({ entry, result }: Given, { shape }: MagnetsSection, discs: DiscsSection): Working[] {
  if (circuitHeight(discs, shape.axial) === undefined) return [];
  const height = discs.arrangement === 'facing-pair' ? times(2, entry('magnets.shape.axial')) : entry('magnets.shape.axial');
  const circuit = over(times(entry('magnets.recoilPermeability'), result('gap.length')), height);
  return [
    {
      result: 'stages.field.textbook.peak',
      method: 'All flux goes straight across the gap and back through steel that takes no effort.',
      formula: over(result('stages.magnets.remanence'), plus(1, circuit)),
      limits: 'Beside the field, not in it: leakage between the magnets, fall-off at their ends and saturation are left out.',
      source: 'Hanselman 2003, Brushless Permanent Magnet Motor Design, ch. 2 (from memory).',
    },
    {
      result: 'stages.field.textbook.departure',
      method: 'What the magnetic circuit leaves out: the wider the gap is for the pole pitch, the more.',
      formula: minus(over(result('stages.field.textbook.peak'), result('gap.peak')), 1),
      limits: 'At pitch radius and mid-plane.',
      source: 'By definition.',
    },
  ];
}

/** Both factors are ratios of the potential F at the faces of the magnets of the unrolled machine. */
function factorWorkings({ result }: Given, magnets: MagnetsSection, discs: DiscsSection, field: FieldResult): Working[] {
  const { gapLength, platePermeability } = field;
  const machine = unrolled(magnets.shape, magnets.recoilPermeability, discs, gapLength);
  const wave = Math.PI / machine.polePitch;
  const layer = { wave, height: machine.magnetHeight, front: gapAdmittance(discs.arrangement, wave, gapLength) };
  const potential = (recoilPermeability: number, back: number) => layerPotentials({ ...layer, recoilPermeability, back }).front;
  const own = magnets.recoilPermeability;
  const behind = machine.steel ? Infinity : 1;
  const recoil: Working = {
    result: 'stages.field.recoil',
    law: written(
      machine.steel
        ? 'F = { tanh kh / Y · tanh kh + μ } , k = { π / τ }'
        : 'F = { 1 − sech kh + { tanh kh / μ } / μ · tanh kh + 1 + Y + { Y · tanh kh / μ } } , k = { π / τ }',
    ),
    method:
      'The machine unrolled along its pitch circle and solved in two dimensions: potential F at the magnets’ faces with their own permeability μ and with that of air. Y is the flux the gap takes up for a potential.',
    formula: over(
      found(
        'F_own',
        'Potential at the faces, the magnets’ own permeability',
        potential(own, behind),
        'ratio',
        'magnets.recoilPermeability',
      ),
      found('F_air', 'Potential at the faces, permeability of air', potential(1, behind), 'ratio'),
    ),
    from: ['magnets.shape.axial', 'discs.pitchRadius', 'discs.poles', 'gap.length'],
    limits:
      'Up to a permeability of about 1.2; the spaces between magnets are taken to have it too, which overstates the loss by up to a sixth.',
    source: 'Furlani 2001, ch. 3–4; Bumby & Martin 2005, IEE Proc. Electr. Power Appl. 152 (from memory).',
  };
  if (platePermeability === undefined || discs.backing.kind !== 'steel')
    return [
      recoil,
      {
        result: 'stages.field.saturation',
        method: 'No steel stands behind the magnets, so nothing saturates.',
        formula: fixed(1, 'ratio'),
        from: ['discs.backing'],
        limits: 'A plain return plate is taken to stay unsaturated.',
        source: 'By definition.',
      },
    ];
  const asItIs = potential(own, plateAdmittance(platePermeability, wave, discs.backing.thickness));
  return [
    recoil,
    {
      result: 'stages.field.saturation',
      law: written('Y_p = { μ_p · ( 1 + μ_p · tanh k·t_p ) / μ_p + tanh k·t_p }'),
      method: `The same with the plate’s Y behind the magnets: of endless permeability, and of the ${platePermeability.toFixed(0)} times that of air which it has at its flux.`,
      formula: over(
        found('F_plate', 'Potential at the faces, the plate as it is', asItIs, 'ratio', 'discs.backing.thickness'),
        found('F_ideal', 'Potential at the faces, ideal steel', potential(own, Infinity), 'ratio'),
      ),
      check: {
        says: 'Steel can only take from the field.',
        left: result('stages.field.saturation'),
        sign: '≤',
        right: fixed(1, 'count'),
        unit: 'ratio',
      },
      from: ['gap.plate'],
      limits: 'Plates from 2 mm up, within 3 % of finite elements; a return plate is taken to stay unsaturated.',
      source: STEEL,
    },
  ];
}
