import { diversionLoad } from '../charging/diversion';
import { fuseRating } from '../charging/fuse';
import type { Caution } from '../problem';
import type { ControllerSection } from './section';
import type { ControllerVerdict } from './stage';

const LIMITS: Record<ControllerVerdict['unit'], string> = {
  V: 'controller.maxInputVoltage',
  A: 'controller.maxInputCurrent',
  W: 'controller.maxPower',
};

/** What to say of verdicts that fail: too much destroys a controller, too little only leaves it asleep. */
export function controllerCautions(verdicts: readonly ControllerVerdict[]): Caution[] {
  return verdicts
    .filter(({ verdict }) => verdict === 'fail')
    .map(({ situation, value, limit, unit, advice }) => {
      const amounts = `${value.toFixed(0)} ${unit} against ${limit} ${unit}. ${advice}`;
      return value > limit
        ? { severity: 'danger', where: LIMITS[unit], message: `${situation}: the controller is overrun, ${amounts}` }
        : { severity: 'warning', where: 'controller.minInputVoltage', message: `${situation}: the controller sleeps, ${amounts}` };
    });
}

/** What belongs between a controller and its battery. `watts`: the greatest into it. */
export function outputCautions({ batteryVoltage, maxChargeCurrent }: ControllerSection, watts: number): Caution[] {
  const fuse = fuseRating(maxChargeCurrent);
  if (!fuse || watts <= 0) return [];
  const diversion = diversionLoad(watts, batteryVoltage);
  return [
    {
      severity: 'note',
      where: 'controller.maxChargeCurrent',
      message: `At the battery a fuse of ${fuse} A for direct current, for the ${maxChargeCurrent} A the controller may charge with, and no cable behind it that stands less. A diversion load on the battery’s side takes ${diversion.watts.toFixed(0)} W or more and has at most ${diversion.resistance.toPrecision(3)} Ω.`,
    },
  ];
}

/** What holds for every machine of this kind, whatever its numbers. */
export const standingCautions: Caution[] = [
  {
    severity: 'danger',
    where: 'magnets.shape',
    message:
      'The magnets pinch and snap: keep steel, other magnets, cards and pacemakers away; close the discs with jacking screws, never by hand.',
  },
  {
    severity: 'danger',
    where: 'turbine.diameter',
    message: 'Blades kill: stand clear of their plane, and brake and tie the wheel before you climb or work on it.',
  },
  { severity: 'danger', where: 'load', message: 'Never open-circuit a spinning machine whose volts you do not know.' },
  {
    severity: 'danger',
    where: 'winding.turns',
    message: 'More than 50 V AC or 120 V DC between any two points is dangerous to touch: cover them, and measure before you touch.',
  },
  {
    severity: 'warning',
    where: 'site.ratedWind',
    message:
      'Brake by shorting only from low speed, and look whether the wheel does stop: a shorted winding that keeps turning reaches its limit in seconds to minutes.',
  },
  {
    severity: 'warning',
    where: 'load',
    message: 'Put the fuse at the battery; a charging battery gives off gas: keep it aired and away from sparks.',
  },
  {
    severity: 'warning',
    where: 'surroundings.formerLimit',
    message: 'Resin, solvent and solder fume: gloves, goggles and fresh air. Coils and rectifiers get hot enough to burn.',
  },
  {
    severity: 'warning',
    where: 'cable.section',
    message: 'Local electrical and building codes and licensed practice come before anything printed here.',
  },
];
