import type { ReactNode } from 'react';
import type { ProvenanceKind } from '../../../core/material/types.ts';
import type { Frame, Px } from '../frame.ts';
import type { LabelWish } from '../labels.ts';
import type { Level } from '../levels.ts';
import type { WayMark } from './marks.ts';

/** One place of a curve: an amount [rad] or [mm] and what is told of it. */
interface CurvePoint {
  readonly amount: number;
  readonly value: number;
}

/** A curve on its paper. */
export interface DrawnCurve {
  readonly frame: Frame;
  readonly place: (amount: number, value: number) => Px;
  /** Where the joint is shown, and what is told of it there; nowhere where there is nothing to tell. */
  readonly now: (Px & Pick<CurvePoint, 'value'>) | undefined;
}

/** What is told along the way of a joint in a figure of its own, beside its effort. */
export interface WayCurve {
  readonly name: string;
  readonly aid: string;
  readonly level: Level;
  /** What the upright axis counts in. */
  readonly counts: string;
  /** Stretches of the curve; one that holds only when guided is drawn apart. */
  readonly lines: readonly { readonly points: readonly CurvePoint[]; readonly isGuided: boolean }[];
  /** Levels that are drawn across the paper. */
  readonly limits: readonly number[];
  /** The value at an amount; undefined where there is nothing to tell. One below 0 lies on the floor of the figure. */
  readonly valueAt: (amount: number) => number | undefined;
  readonly reading: (amount: number, value: number | undefined) => string;
  /** What else is drawn under the curve and over it. */
  readonly renderUnder: (drawn: DrawnCurve) => ReactNode;
  readonly renderOver: (drawn: DrawnCurve) => ReactNode;
  readonly balls: (drawn: DrawnCurve) => readonly (Px & Pick<WayMark, 'kind'>)[];
  /** Its words, but for what the axis counts in. */
  readonly wishes: (drawn: DrawnCurve) => readonly LabelWish[];
  readonly note: { readonly says: string; readonly kind: ProvenanceKind };
  readonly table: {
    readonly caption: string;
    readonly heads: readonly string[];
    /** Rows that come before those of the figured amounts. */
    readonly first: readonly (readonly string[])[];
    readonly cell: (value: number | undefined) => string;
  };
}
