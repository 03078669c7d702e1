import { entryQuantities, resultQuantities, type Quantity } from '../core';

/** Words for the choices of the design file. */
const choices: Record<string, string> = {
  block: 'Block',
  cylinder: 'Round',
  sector: 'Ring sector',
  'facing-pair': 'Two discs facing',
  single: 'One disc',
  'single-with-return': 'Disc and plate',
  none: 'Not magnetic',
  steel: 'Steel plate',
  serpentine: 'Serpentine',
  concentrated: 'Separate coils',
  stacked: 'Stacked',
  interleaved: 'In one layer',
  star: 'Star',
  delta: 'Delta',
  separate: 'Separate',
  copper: 'Copper',
  aluminium: 'Aluminium',
  bridge: 'One bridge',
  'bridges-in-parallel': 'In parallel',
  'bridges-in-series': 'In series',
  ac: 'AC',
  dc: 'DC',
  battery: 'Battery',
  resistor: 'Resistor',
  threshold: 'LED string',
  tracker: 'Power tracker',
  open: 'Nothing',
};

export const choiceWord = (value: string): string => choices[value] ?? value;

/** Results of single stages that a worksheet shows and the results file does not name. */
const stageQuantities: Record<string, Quantity> = {
  'stages.magnets.remanence': { label: 'Remanence, warm', symbol: 'Br', unit: 'fluxDensity', meaning: 'At the magnets’ temperature' },
  'stages.field.saturation': {
    label: 'Kept after saturation',
    unit: 'ratio',
    meaning: 'Share of the field left when the steel saturates; 1 when it does not',
  },
  'stages.field.recoil': {
    label: 'Kept after recoil',
    unit: 'ratio',
    meaning: 'Share of the field left by the magnets’ recoil permeability',
  },
  'stages.winding.seriesCoils': { label: 'Coils in series', unit: 'count', meaning: 'In each parallel path of a phase' },
  'stages.winding.meanTurn': { label: 'Mean turn', unit: 'length', meaning: 'Length of the middle turn, corners rounded' },
  'stages.winding.factors.winding': {
    label: 'Winding factor',
    symbol: 'kw',
    unit: 'ratio',
    meaning: 'Textbook value, beside the integrated one',
  },
  'stages.winding.unbalance': { label: 'Unbalance', unit: 'percent', meaning: 'Greatest departure of a phase from the mean of all' },
  'stages.winding.windowArea': { label: 'Window of one leg', unit: 'area', meaning: 'Leg width times copper thickness' },
  'stages.wire.turnsTooMany': { label: 'Turns too many', unit: 'count', meaning: 'To take out so that the winding fits; 0 when it does' },
  'stages.wire.metalSection': { label: 'Metal in a turn', unit: 'area', meaning: 'Section of all strands of one turn' },
  'stages.wire.coilLength': { label: 'Wire in a coil', unit: 'longLength', meaning: 'One strand, without leads' },
};

/** The quantity at a path of the design file or of the results. */
export function quantityAt(path: string): Quantity {
  const known: Record<string, Quantity> = { ...stageQuantities, ...resultQuantities, ...entryQuantities };
  return known[path] ?? { label: capitalised(path.split('.').at(-1) ?? path), unit: 'word', meaning: '' };
}

const capitalised = (word: string) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
