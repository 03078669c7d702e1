/** A grade of magnet as suppliers sell it, values at 20 °C. */
export interface MagnetGrade {
  name: string;
  material: 'NdFeB' | 'ferrite';
  /** Least and greatest remanence. [T] */
  remanence: [least: number, greatest: number];
  /** Least intrinsic coercivity. [A/m] */
  intrinsicCoercivity: number;
  /** Highest working temperature the class is sold for; a flat magnet in the open stands less. [°C] */
  maxTemperature: number;
  /** Relative change of remanence per kelvin. [1/K] */
  remanenceTempCoefficient: number;
  /** Relative change of intrinsic coercivity per kelvin. [1/K] */
  coercivityTempCoefficient: number;
  recoilPermeability: number;
  source: string;
}

const NDFEB_SOURCE = 'class values common to makers’ tables of sintered NdFeB, as in IEC 60404-8-1 (from memory)';
const FERRITE_SOURCE = 'class values common to makers’ tables of anisotropic hard ferrite, as in IEC 60404-8-1 (from memory)';

/** The suffix of a sintered NdFeB grade sets its coercivity [A/m], limit [°C] and temperature coefficients [1/K]. */
const suffixes = {
  '': { coercivity: 955e3, limit: 80, alpha: -0.0012, beta: -0.0065 },
  M: { coercivity: 1114e3, limit: 100, alpha: -0.0012, beta: -0.0062 },
  H: { coercivity: 1353e3, limit: 120, alpha: -0.0011, beta: -0.0058 },
  SH: { coercivity: 1592e3, limit: 150, alpha: -0.0011, beta: -0.0054 },
} as const;

type Suffix = keyof typeof suffixes;

/** Remanence range by the number in the grade's name, and the suffixes it is sold with. */
const energies: { number: number; remanence: [number, number]; sold: Suffix[] }[] = [
  { number: 35, remanence: [1.17, 1.22], sold: ['', 'M', 'H', 'SH'] },
  { number: 38, remanence: [1.22, 1.26], sold: ['', 'M', 'H', 'SH'] },
  { number: 40, remanence: [1.26, 1.29], sold: ['', 'M', 'H', 'SH'] },
  { number: 42, remanence: [1.28, 1.33], sold: ['', 'M', 'H', 'SH'] },
  { number: 45, remanence: [1.32, 1.38], sold: ['', 'M', 'H', 'SH'] },
  { number: 48, remanence: [1.37, 1.42], sold: ['', 'M', 'H'] },
  { number: 50, remanence: [1.4, 1.45], sold: ['', 'M'] },
  { number: 52, remanence: [1.42, 1.48], sold: [''] },
];

/** The strongest grades of the plain class have less coercivity, and N52 is sold for a lower limit. */
const exceptions: Partial<Record<string, Partial<MagnetGrade>>> = {
  N50: { intrinsicCoercivity: 876e3 },
  N52: { intrinsicCoercivity: 876e3, maxTemperature: 60 },
};

function ndfeb(number: number, remanence: [number, number], suffix: Suffix): MagnetGrade {
  const name = `N${number}${suffix}`;
  const { coercivity, limit, alpha, beta } = suffixes[suffix];
  return {
    name,
    material: 'NdFeB',
    remanence,
    intrinsicCoercivity: coercivity,
    maxTemperature: limit,
    remanenceTempCoefficient: alpha,
    coercivityTempCoefficient: beta,
    recoilPermeability: 1.05,
    source: NDFEB_SOURCE,
    ...exceptions[name],
  };
}

function ferrite(name: string, remanence: [number, number], intrinsicCoercivity: number): MagnetGrade {
  return {
    name,
    material: 'ferrite',
    remanence,
    intrinsicCoercivity,
    maxTemperature: 250,
    remanenceTempCoefficient: -0.002,
    // Ferrite gains coercivity as it warms: its dangerous side is the cold.
    coercivityTempCoefficient: 0.003,
    recoilPermeability: 1.1,
    source: FERRITE_SOURCE,
  };
}

/** Grades offered, weakest first within a class. */
export const grades: MagnetGrade[] = [
  ...(Object.keys(suffixes) as Suffix[]).flatMap((suffix) =>
    energies.filter(({ sold }) => sold.includes(suffix)).map(({ number, remanence }) => ndfeb(number, remanence, suffix)),
  ),
  ferrite('Y30', [0.37, 0.4], 180e3),
  ferrite('Y30BH', [0.38, 0.4], 230e3),
  ferrite('Y35', [0.4, 0.42], 185e3),
];

/** The grade of that name, however it is spaced and cased. */
export function gradeNamed(name: string | undefined): MagnetGrade | undefined {
  const wanted = name?.replace(/[\s-]/g, '').toUpperCase();
  return grades.find((grade) => grade.name === wanted);
}
