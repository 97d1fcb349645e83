/** Cycles by which 10, 50 and 90 of 100 have broken. */
export interface LifeSpread {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** What is known of the life of one joint. Cycles are not rounded and not capped here; `beyond` says when to print none. */
export interface LifeAnswer {
  /** Strain that goes into the curve, after strain ratio, layers and thick sections [-]. */
  readonly equivalentStrain: number;
  readonly breaksOnFirstFlex: boolean;
  /** Median cycles to break; 0 when the first flex breaks it. */
  readonly median: number;
  /** Spread between specimens of one print run only. */
  readonly scatter: LifeSpread;
  /** Specimen scatter and the doubt of the curve together: what is shown and judged. */
  readonly total: LifeSpread;
  /** Share that reaches the wanted cycles, 0 to 1, scatter and doubt together. */
  readonly chance: number;
  /** The same with specimen scatter alone. */
  readonly chanceScatterOnly: number;
  /** `wanted`: more cycles are wanted than anyone counted; `median`: the median lies past the data. */
  readonly beyond: 'no' | 'median' | 'wanted';
  readonly maxReportableCycles: number;
}
