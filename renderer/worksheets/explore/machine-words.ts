import { objectivesFor, type Candidate, type Design, type Found, type Objective, type ObjectiveId } from '../../../core';
import { format, type UnitPreferences } from '../../units';
import { choiceWord } from '../../words';

/** What a design's machines are weighed by. */
export const weighedBy = ({ shelf = [] }: Design): readonly Objective[] => objectivesFor(shelf);

export const objectiveOf = (id: ObjectiveId, design: Design): Objective => weighedBy(design).find((each) => each.id === id) as Objective;

/** A machine of the search in a line, as steps to undo and rows of tables name it. */
export const nameOf = ({ reel, inHand, turns, connection }: Candidate): string =>
  `${reel.label}, ${inHand} in hand, ${turns} turns, ${choiceWord(connection)}`;

/** What the search varied besides the winding, by its column's name; told only where machines differ in it. */
const frameColumns: Record<string, (candidate: Candidate, units: UnitPreferences) => string> = {
  Layout: ({ layout }) => choiceWord(layout),
  Poles: ({ poles }) => String(poles),
  Coils: ({ coils }) => String(coils),
  Phases: ({ phases }) => String(phases),
  Paths: ({ parallelPaths }) => String(parallelPaths),
  'Pitch radius': ({ pitchRadius }, units) => format(pitchRadius, 'length', units),
  Thick: ({ thickness }, units) => format(thickness, 'length', units),
  Clearance: ({ runningClearance }, units) => format(runningClearance, 'length', units),
};

export const frameWord = (column: string, candidate: Candidate, units: UnitPreferences): string =>
  frameColumns[column]?.(candidate, units) ?? '';

/** Those of the frame's columns in which machines differ. */
export function columnsThatDiffer(found: readonly Found[], units: UnitPreferences): string[] {
  return Object.keys(frameColumns).filter((column) => new Set(found.map(({ candidate }) => frameWord(column, candidate, units))).size > 1);
}
