import { candidateDesign, type Candidate, type Design } from '../../../core';
import { designStore, takeOver } from '../../state/design';
import { nameOf } from './machine-words';

/** Puts a machine of a search in the place of the design on screen, as one step to undo; what is no part of the machine stays as it is now. */
export function openMachine(searched: Design, candidate: Candidate): void {
  const { title, notes, shelf, search, tolerances, bench } = designStore.getState().design;
  const kept = Object.entries({ title, notes, shelf, search, tolerances, bench }).filter(([, value]) => value !== undefined);
  takeOver({ ...candidateDesign(searched, candidate), ...Object.fromEntries(kept) }, nameOf(candidate));
}

/** Whether something that the search took as given has been changed since. */
export function isOutdated(searched: Design, now: Design): boolean {
  const given = ({ magnets, surroundings, rectifier, cable, load, controller, turbine, site, shelf, search }: Design) =>
    JSON.stringify([magnets, surroundings, rectifier, cable, load, controller, turbine, site, shelf, search]);
  return given(searched) !== given(now);
}
