/** Cycles by which 10, 50 and 90 of 100 have broken. */
export interface LifeSpread {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** One kind of flex and its part in wearing the joint out. */
export interface Wear {
  /** [rad] or [mm]. */
  readonly amount: number;
  /** Peak strain of the skin, as a fraction. */
  readonly peakStrain: number;
  /** R, the least strain over the largest, −1 to less than 1. */
  readonly ratio: number;
  /** Strain that goes into the curve [-]. */
  readonly equivalentStrain: number;
  /** Wanted cycles, and the median life if there were nothing else. */
  readonly cycles: number;
  readonly median: number;
  /** Share of all the wear that comes from it, 0 to 1; they add up to 1. */
  readonly share: number;
}

/** What is known of the life of one joint. Cycles are not rounded and not capped here; `beyond` says when to print none. */
export interface LifeAnswer {
  /** Strain that goes into the curve, after strain ratio, layers and thick sections [-]. */
  readonly equivalentStrain: number;
  readonly breaksOnFirstFlex: boolean;
  /** Each kind of flex, the joint's own swing first. */
  readonly wear: readonly [Wear, ...Wear[]];
  /**
   * Median cycles of its own swing to break, while the others go on in proportion; 0 when the first flex breaks it.
   * With nothing else it is the life that the curve gives.
   */
  readonly median: number;
  /** Spread between specimens of one print run only. */
  readonly scatter: LifeSpread;
  /** Specimen scatter and the doubt of the curve together: what is shown and judged. */
  readonly total: LifeSpread;
  /** Share that reaches the wanted cycles, 0 to 1, scatter and doubt together. */
  readonly chance: number;
  /** The same with specimen scatter alone. */
  readonly chanceScatterOnly: number;
  /** `wanted`: more cycles of one of the kinds are wanted than anyone counted; `median`: the median lies past the data. */
  readonly beyond: 'no' | 'median' | 'wanted';
  readonly maxReportableCycles: number;
}
