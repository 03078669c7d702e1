import type { DcSide } from '../rectifier/steady-state';
import type { LoadSection } from './section';

type Of<K extends LoadSection['kind']> = Extract<LoadSection, { kind: K }>;

export interface LoadModel<L> {
  title: string;
  /** What the rectifier sees, cable not counted: null where there is no fixed characteristic (a tracker sets its own volts, an open circuit has none). */
  dcSide(load: L): DcSide | null;
}

/** The registry of loads: a new one is its entries in section.ts and a line here. Source: Thévenin's theorem, each load as an EMF behind a resistance. */
export const loads: { [K in LoadSection['kind']]: LoadModel<Of<K>> } = {
  battery: { title: 'Battery', dcSide: ({ voltage, resistance }) => ({ emf: voltage, resistance }) },
  resistor: { title: 'Resistor', dcSide: ({ resistance }) => ({ emf: 0, resistance }) },
  threshold: { title: 'Load with a turn-on voltage', dcSide: ({ turnOn, slope }) => ({ emf: turnOn, resistance: slope }) },
  tracker: { title: 'Maximum-power controller', dcSide: () => null },
  open: { title: 'Open circuit', dcSide: () => null },
};

/** The DC side of whichever load it is. */
export function dcSideOf(load: LoadSection): DcSide | null {
  return (loads[load.kind] as LoadModel<LoadSection>).dcSide(load);
}
