import type { Design } from '../design/schema';
import { inductanceShape, linkageShape, type LinkageShape } from '../emf/stage';
import { spectrumReader } from '../field/harmonics';
import { bodyStack } from '../field/images';
import { fieldStage, type FieldResult, type GapSpectrum } from '../field/stage';
import { meanSquareField } from '../heat/eddy';
import { magnetsStage } from '../magnets/stage';
import { barycentricWeights, chebyshevNodes, interpolationCoefficients } from '../numeric/interpolate';
import { windingStage, type WindingResult } from '../winding/stage';

/** Everything the solver needs of the field at one gap and remanence. */
export interface FieldAnswer {
  field: FieldResult;
  linkage: LinkageShape;
  inductance: number[][];
  /** Of `meanSquareField`; `field.spectrum` has the same. [T²] */
  meanSquare: number;
}

export interface FieldTable {
  /** Field at a gap and a remanence, the gap opening and closing by `runOut` about it as the discs turn. [m, T, m] */
  at(gap: number, remanence: number, runOut: number): FieldAnswer;
  /** Greatest error found where the table was compared with the stages themselves, as a share. */
  error: number;
}

const GAP_NODES = 5;
/** Without steel the field goes exactly with the remanence, and two nodes say all. */
const REMANENCE_NODES = { steel: 3, none: 2 };
/** Gauss–Chebyshev nodes over a turn of a gap that opens and closes as a cosine. */
const ROUND = [Math.cos(Math.PI / 6), 0, -Math.cos(Math.PI / 6)];

type Band = readonly [low: number, high: number];

/**
 * Fields of a machine whose gap and remanence vary a little, interpolated between a few that the stages worked out in full: fields are smooth in both.
 * The table is compared with the stages half-way to its corners.
 */
export function fieldTable(design: Design, gaps: Band, remanences: Band): FieldTable {
  const { discs, winding } = design;
  const placed = windingStage(winding, discs.poles);
  const steel = discs.backing.kind === 'steel';
  const gapNodes = chebyshevNodes(GAP_NODES, ...gaps);
  const remanenceNodes = chebyshevNodes(steel ? REMANENCE_NODES.steel : REMANENCE_NODES.none, ...remanences);
  const exact = (gap: number, remanence: number) => exactly(design, placed, gap, remanence);
  const grid = gapNodes.map((gap) => remanenceNodes.map((remanence) => exact(gap, remanence)));
  const [middle] = grid[GAP_NODES >> 1];
  const orders = longest(grid.flat().map(({ linkage }) => linkage.orders));
  // Coils at one height have one linkage between them.
  const rows = [...new Set(middle.linkage.linkage)].map((row) => middle.linkage.linkage.indexOf(row));
  const rowOf = middle.linkage.linkage.map((row) => rows.findIndex((first) => middle.linkage.linkage[first] === row));
  const vectors = grid.map((line) => line.map((answer) => numbersOf(answer, rows, orders.length)));
  const inductances = grid.map(([{ inductance }]) => inductance.flat());
  const gapWeights = barycentricWeights(gapNodes);
  const remanenceWeights = barycentricWeights(remanenceNodes);

  const at = (gap: number, remanence: number, runOut: number): FieldAnswer => {
    const across = gapNodes.map(() => 0);
    for (const share of ROUND)
      interpolationCoefficients(gapNodes, gap + runOut * share, gapWeights).forEach((c, i) => (across[i] += c / ROUND.length));
    const along = interpolationCoefficients(remanenceNodes, remanence, remanenceWeights);
    const sum = new Float64Array(vectors[0][0].length);
    vectors.forEach((line, i) =>
      line.forEach((vector, j) => {
        const share = across[i] * along[j];
        for (let k = 0; k < sum.length; k++) sum[k] += share * vector[k];
      }),
    );
    const flat = new Float64Array(inductances[0].length);
    inductances.forEach((values, i) => values.forEach((value, k) => (flat[k] += across[i] * value)));
    const coils = middle.inductance.length;
    const [peak, fundamental, saturation, recoil, demagnetizingField, rootMeanSquare, plate] = sum;
    const made = rows.map((_, r) => Array.from(sum.subarray(SCALARS + r * orders.length, SCALARS + (r + 1) * orders.length)));
    return {
      field: {
        ...middle.field,
        ...{ gapLength: gap, peak, fundamental, saturation, recoil, demagnetizingField },
        ...(middle.field.plate !== undefined && { plate }),
        spectrum: times(middle.field.spectrum, rootMeanSquare / Math.sqrt(middle.meanSquare)),
      },
      linkage: { polePairs: middle.linkage.polePairs, orders, linkage: rowOf.map((r) => made[r]) },
      inductance: middle.inductance.map((_, i) => Array.from(flat.subarray(i * coils, (i + 1) * coils))),
      meanSquare: rootMeanSquare ** 2,
    };
  };
  return { at, error: greatestError(at, exact, gaps, remanences) };
}

/** The stages themselves. */
function exactly(design: Design, placed: WindingResult, gap: number, remanence: number): FieldAnswer {
  const { magnets, discs, winding, surroundings } = design;
  const { innerRadius, outerRadius, copperHeight } = placed;
  const halfHeight = copperHeight / 2;
  const { intrinsicCoercivity } = magnetsStage(magnets, surroundings.magnetTemperature);
  const region = { gapLength: gap, innerRadius, outerRadius, halfHeight };
  const field = fieldStage(magnets.shape, remanence, magnets.recoilPermeability, discs, region, intrinsicCoercivity);
  const linkage = linkageShape(winding, placed, field.spectrum);
  const steel = bodyStack(discs.arrangement, discs.backing.kind === 'steel', gap, magnets.shape.axial);
  return {
    field,
    linkage,
    inductance: inductanceShape(winding, discs.poles, placed, steel),
    meanSquare: meanSquareField(spectrumReader(field.spectrum), linkage.orders, innerRadius, outerRadius, halfHeight),
  };
}

const SCALARS = 7;

function numbersOf({ field, linkage, meanSquare }: FieldAnswer, rows: number[], orders: number): Float64Array {
  const { peak, fundamental, saturation, recoil, demagnetizingField, plate = 0 } = field;
  const numbers = new Float64Array(SCALARS + rows.length * orders);
  // The mean square goes with the square of the remanence, its root with the remanence itself.
  numbers.set([peak, fundamental, saturation, recoil, demagnetizingField, Math.sqrt(meanSquare), plate]);
  rows.forEach((row, r) => numbers.set(linkage.linkage[row], SCALARS + r * orders));
  return numbers;
}

/** A spectrum of the same shape, so many times as strong: what the eddy loss is worked out from. */
function times(spectrum: GapSpectrum, factor: number): GapSpectrum {
  const scaled = (values: Float64Array) => values.map((b) => factor * b);
  const { bz, bTheta, misaligned } = spectrum;
  return {
    ...spectrum,
    bz: scaled(bz),
    bTheta: scaled(bTheta),
    ...(misaligned && { misaligned: { ...misaligned, dz: scaled(misaligned.dz), dTheta: scaled(misaligned.dTheta) } }),
  };
}

const longest = (lists: number[][]) => lists.reduce((a, b) => (b.length > a.length ? b : a));

function greatestError(at: FieldTable['at'], exact: (gap: number, remanence: number) => FieldAnswer, gaps: Band, remanences: Band): number {
  const between = ([low, high]: Band, share: number) => low + share * (high - low);
  let worst = 0;
  for (const [s, t] of [
    [0.25, 0.75],
    [0.75, 0.25],
  ]) {
    const [gap, remanence] = [between(gaps, s), between(remanences, t)];
    const [table, stages] = [at(gap, remanence, 0), exact(gap, remanence)];
    const off = (a: number, b: number) => Math.abs(a / b - 1);
    worst = Math.max(
      worst,
      off(table.linkage.linkage[0][0], stages.linkage.linkage[0][0]),
      off(Math.sqrt(table.meanSquare), Math.sqrt(stages.meanSquare)),
      off(table.inductance[0][0], stages.inductance[0][0]),
    );
  }
  return worst;
}
