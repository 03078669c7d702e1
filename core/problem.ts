/** Something that makes a design unusable: which entry, what was received, what would be possible. */
export interface Problem {
  /** Path of the design entry, as in `discs.poles`. Empty when the whole text is at fault. */
  where: string;
  message: string;
}

/** Something a builder must know about a design that can be worked out. */
export interface Caution {
  severity: 'note' | 'warning' | 'danger';
  /** Path of the design entry to look at first, as in `winding.turns`. */
  where: string;
  message: string;
}

/** A design that cannot be worked out. Only `design/` and the chain's own geometry checks throw it. */
export class DesignError extends Error {
  constructor(readonly problems: Problem[]) {
    super(problems.map((p) => (p.where ? `${p.where}: ${p.message}` : p.message)).join('; '));
    this.name = 'DesignError';
  }
}

/** One result's derivation, shown when a reader opens the number. */
export interface Working {
  /** Dotted result name, as in `coils.phaseResistance`. */
  result: string;
  /** The formula in symbols. */
  formula: string;
  /** The same with this design's numbers, SI units written out. */
  numbers: string;
  /** Entries the result depends on most directly. */
  inputs: string[];
  /** What the model leaves out, in a sentence. */
  limits: string;
  source: string;
}
