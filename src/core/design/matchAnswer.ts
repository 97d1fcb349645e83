/** What is wished of an effort, and what answers the wish, as plain data: it crosses from a worker to the page. */
import type { Assessment } from './assessment.ts';
import type { Joint } from './joint.ts';

/** An effort that a joint should have. */
export interface EffortWanted {
  /** [N·mm] or [N] as its drive measures. */
  readonly effort: number;
  /** At an amount [rad] or [mm], which may differ from the joint's own; or the largest before it snaps. */
  readonly at: number | 'snap';
}

/** What is changed so that the effort comes out as wished. */
export type MatchStep = 'length' | 'depth' | 'rise' | 'side by side' | 'lines';

/** A joint that has the effort, or, where only a count changes, comes as near as whole counts do. */
export interface Match {
  readonly steps: readonly [MatchStep, ...MatchStep[]];
  readonly after: Joint;
  readonly assessment: Assessment;
  /** What it has where the effort is wished for, [N·mm] or [N]. */
  readonly effort: number;
  /** Whether that is the wish, as nearly as `MATCHED`. */
  readonly isMatched: boolean;
  /** How much it changes; used for the order only [-]. */
  readonly change: number;
}

/** A way that ends before the wish is met. */
export interface FallsShort {
  readonly steps: Match['steps'];
  /** The nearest that it comes to, [N·mm] or [N]. */
  readonly effort: number;
}

export interface MatchAnswer {
  /** What the joint has as it is, [N·mm] or [N]. */
  readonly now: number;
  /** It is as wished already: no ways are looked for. */
  readonly isMet: boolean;
  /** Smallest change first; whole counts that only come near are last. */
  readonly matches: readonly Match[];
  readonly short: readonly FallsShort[];
}

/** A joint has the effort that is wished for when it differs by no more than this share. */
export const MATCHED = 0.01;
