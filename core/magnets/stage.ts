import type { Caution } from '../problem';
import { coercivityAt, KNEE, loadLineField, permeanceCoefficient } from './demagnetization';
import { gradeNamed } from './grades';
import { remanenceAt } from './remanence';
import type { MagnetsSection } from './section';

export interface MagnetsResult {
  /** Remanence at the magnets' temperature. [T] */
  remanence: number;
  /** Intrinsic coercivity at the magnets' temperature, where the grade gives one. [A/m] */
  intrinsicCoercivity?: number;
  /** Slope of the load line of a magnet lying alone. [-] */
  permeance: number;
  cautions: Caution[];
}

/** Temperature coefficient of coercivity where the grade is not in the table: plain sintered NdFeB (from memory). [1/K] */
const USUAL_COERCIVITY_COEFFICIENT = -0.0065;

/** How near its limit a magnet may come unremarked. [K] */
const TEMPERATURE_MARGIN = 10;

/** Magnets at their temperature. [°C] */
export function magnetsStage(magnets: MagnetsSection, temperature: number): MagnetsResult {
  const grade = gradeNamed(magnets.grade);
  const remanence = remanenceAt(magnets.remanence, magnets.remanenceTempCoefficient, temperature);
  const coefficient = grade?.coercivityTempCoefficient ?? USUAL_COERCIVITY_COEFFICIENT;
  const coercivity =
    magnets.intrinsicCoercivity === undefined ? undefined : coercivityAt(magnets.intrinsicCoercivity, coefficient, temperature);
  const permeance = permeanceCoefficient(magnets.shape);
  const alone = loadLineField(magnets.remanence, permeance, magnets.recoilPermeability);
  const cautions: Caution[] = [];

  if (temperature > magnets.maxTemperature) {
    cautions.push({
      severity: 'danger',
      where: 'surroundings.magnetTemperature',
      message: `The magnets are at ${degrees(temperature)}, above their limit of ${degrees(magnets.maxTemperature)}: they lose strength for good. Cool them or take a grade for higher temperature.`,
    });
  } else if (temperature > magnets.maxTemperature - TEMPERATURE_MARGIN) {
    cautions.push({
      severity: 'warning',
      where: 'surroundings.magnetTemperature',
      message: `The magnets are at ${degrees(temperature)}, within ${TEMPERATURE_MARGIN} °C of their limit of ${degrees(magnets.maxTemperature)}.`,
    });
  }
  if (remanence === 0) {
    cautions.push({
      severity: 'danger',
      where: 'magnets.remanenceTempCoefficient',
      message: `At ${degrees(temperature)} this temperature coefficient leaves the magnets no strength at all. Check the coefficient and the temperature.`,
    });
  }
  if (magnets.intrinsicCoercivity !== undefined && alone > KNEE * magnets.intrinsicCoercivity) {
    cautions.push({
      severity: 'warning',
      where: 'magnets.shape.axial',
      message: `So flat a magnet, lying alone at 20 °C, turns ${kilo(alone)} on itself, past the knee at ${kilo(KNEE * magnets.intrinsicCoercivity)}: unless it is better than its grade promises it is weaker than its remanence says. Measure one, or take it thicker or of higher coercivity.`,
    });
  }
  if (grade && (magnets.remanence < grade.remanence[0] - 0.02 || magnets.remanence > grade.remanence[1] + 0.02)) {
    cautions.push({
      severity: 'warning',
      where: 'magnets.remanence',
      message: `${grade.name} is sold with a remanence of ${grade.remanence[0].toFixed(2)} to ${grade.remanence[1].toFixed(2)} T; ${magnets.remanence.toFixed(2)} T does not go with it.`,
    });
  }
  return {
    remanence,
    ...(coercivity === undefined ? {} : { intrinsicCoercivity: coercivity }),
    permeance,
    cautions,
  };
}

const degrees = (temperature: number) => `${temperature.toFixed(0)} °C`;
const kilo = (field: number) => `${(field / 1000).toFixed(0)} kA/m`;
