/** What the words of a working are made of. */

export interface StepWords {
  /** Said over the formula: “Strain of the skin, bent to an arc”. */
  readonly name: string;
  /** Within what it holds, as one sentence; nothing where it always does. */
  readonly holds?: string;
}

/** Words of steps by their ids and of symbols by theirs; those of a kind stand before those that all share. */
export interface WorkingWords {
  readonly steps: Readonly<Record<string, StepWords>>;
  readonly symbols: Readonly<Record<string, string>>;
}
