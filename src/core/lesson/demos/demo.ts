/** What a demonstration is: a few joints side by side, handles that change them, and a question that the handles answer. */
import type { Assessment } from '../../design/assessment.ts';
import type { Joint } from '../../design/joint.ts';
import type { DemoId } from './ids.ts';

/** Something of a demonstration that can be moved: mm, rad, counts, ratios; a choice is the number of its option, from 0. */
export interface Handle {
  /** Plain word, as it stands in an address. */
  readonly key: string;
  readonly kind: 'length' | 'angle' | 'count' | 'scale' | 'share' | 'choice';
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key. */
  readonly step: number;
  /** Where it stands at first: the question is not answered there. */
  readonly start: number;
  /** Of a choice, as they stand in an address. */
  readonly options?: readonly string[];
}

/** Where the handles stand, by their keys. */
export type Values = Readonly<Record<string, number>>;

/** What a question asks for, against how it stands. */
export interface Goal {
  /** A strain as a fraction; so many times another joint's figure; a share of something; whether it rests, 1 or 0. */
  readonly figure: 'strain' | 'times' | 'share' | 'rests';
  readonly sense: 'at most' | 'at least';
  readonly now: number;
  readonly wanted: number;
  readonly isMet: boolean;
}

/** What the plot of a demonstration shows upwards. */
export type LawFigure = 'strain' | 'effort' | 'life' | 'push left';

/** The law that a demonstration is about, as a plot: one figure of its joints along a handle. */
export interface Law {
  readonly figure: LawFigure;
  /** Key of the handle that runs across. */
  readonly along: string;
  /** Joints whose curve is drawn, by their place; each runs through its own point. */
  readonly curves: readonly number[];
  /** Where each joint stands across: mm, rad, a count, a ratio or hours; undefined where it has no place there. */
  readonly places: (values: Values) => readonly (number | undefined)[];
}

/** One demonstration. Nothing in it is a result: all figures come from the assessments of its joints. */
export interface Demo {
  readonly id: DemoId;
  /** The first is the one that the question is about. */
  readonly handles: readonly [Handle] | readonly [Handle, Handle];
  /** Two to four joints, lettered A, B, C … in this order. */
  readonly joints: (values: Values) => readonly [Joint, Joint, ...Joint[]];
  /** How the question stands, of joints as assessed; undefined until what it needs is known. */
  readonly goal: (answers: readonly Assessment[], values: Values) => Goal | undefined;
  /** Absent where the way of the joints themselves is the plot: effort against movement. */
  readonly law?: Law;
  /** How far the pictured joints are moved, as a share of their amount; all the way when left out. */
  readonly shown?: (values: Values) => number;
  /** Whether the root of each joint is what there is to see: it is then shown larger as well. */
  readonly looksAtRoot?: true;
}

export const LETTERS = ['A', 'B', 'C', 'D'] as const;
export type Letter = (typeof LETTERS)[number];
