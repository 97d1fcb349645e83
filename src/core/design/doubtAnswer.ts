/** How sure the answer for a joint is, as plain data. */
import type { SampledShare, SamplingHow } from '../numeric/sampling.ts';
import type { ProvenanceKind } from '../material/types.ts';
import type { PrinterSpread } from '../print/spread.ts';

/** What may turn out otherwise than an answer takes it to be. */
export type CauseName =
  /** Between prints of one run. */
  | 'specimens'
  /** The whole strain–life curve of the filament. */
  | 'curve'
  /** Of the thin section, as the printer lays it or calipers read it. */
  | 'thickness'
  | 'length'
  /** How much the root of the flexure feels of its peak. */
  | 'root'
  /** What the other end of a swing counts for. */
  | 'ratio'
  /** What is left of the strain where bending pulls layers apart. */
  | 'acrossLayers'
  /** What is left of it in a section that is not drawn out by bending. */
  | 'thickSection'
  | 'modulus'
  | 'yieldStress';

/** What is sampled, and how. */
export interface DoubtAsked {
  readonly spread: PrinterSpread;
  /** How many prints are imagined; a power of 2 of at least 64. */
  readonly samples: number;
  readonly how: SamplingHow;
  readonly seed: number;
}

/** Values below which 10, 50 and 90 in 100 lie. */
export interface Percentiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Share of one cause in the variance of the logarithm of life, and of effort: what it does alone. */
export interface CauseShare {
  readonly cause: CauseName;
  readonly provenance: ProvenanceKind;
  readonly life: number;
  readonly effort: number;
}

/** How far what was carried over from a few solves lies from solving the very same prints. */
export interface Checked {
  /** Prints that were solved. */
  readonly prints: number;
  /** Worst difference of strain and of effort, as shares of what was solved. */
  readonly strain: number;
  readonly effort: number;
  /** Difference of the chance, taken over these prints. */
  readonly chance: number;
}

export interface DoubtAnswer {
  readonly asked: DoubtAsked;
  /** Independent sets of samples, whose spread is the sampling error. */
  readonly replicates: number;
  /** Wanted number of flexes. */
  readonly wanted: number;
  /** Share of prints that reach it, with the error that sampling alone leaves: one standard deviation. */
  readonly chance: SampledShare;
  /** The same by what the verdict counts: specimens and curve alone. */
  readonly chanceOfVerdict: number;
  /** Share of prints that the first flex breaks. */
  readonly breaksAtOnce: number;
  /** Flexes of its own swing; 0 where the first breaks it. */
  readonly life: Percentiles;
  /** Peak strain as a fraction. */
  readonly strain: Percentiles;
  /** [N·mm] or [N]. */
  readonly effort: Percentiles;
  /** The cause that makes most of the doubt about life first. */
  readonly causes: readonly CauseShare[];
  /** Shares that no cause makes alone, but several together. */
  readonly together: { readonly life: number; readonly effort: number };
  /** Some of the prints: life in flexes and peak strain as a fraction. */
  readonly cloud: readonly { readonly cycles: number; readonly strain: number }[];
  /** Absent where a hand form that is exact answered every print by itself. */
  readonly checked?: Checked;
}
