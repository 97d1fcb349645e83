import type { Assessment } from './assessment.ts';
import type { Joint } from './joint.ts';

export type RemedyKind =
  | 'lengthen'
  | 'fewer lines'
  | 'more lines'
  | 'line width'
  | 'share the angle'
  | 'larger fillet'
  | 'other size'
  | 'other filament'
  | 'turn the part'
  | 'stop earlier'
  | 'scale the part'
  | 'draw whole lines';

/** One change that would help, computed through the same assessment as the joint itself. */
export interface Remedy {
  /** One kind, or two where one change alone is not enough or is absurd. */
  readonly kinds: readonly [RemedyKind, ...RemedyKind[]];
  /** The joint with the change made: what “Use it” puts in place. */
  readonly after: Joint;
  readonly assessment: Assessment;
  /** 0 is free; used for ranking only. */
  readonly cost: number;
  /** Scale factor, for `scale the part`. */
  readonly scale?: number;
  /** Name of the size, for `other size`. */
  readonly size?: string;
}

/** When a joint passes: how far one value alone may go while it still passes. */
export interface Spare {
  readonly value: 'amount' | 'length' | 'cycles' | 'count';
  readonly limit: number;
  readonly now: number;
}
