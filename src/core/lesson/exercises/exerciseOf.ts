/** The exercise page of each demonstration. */
import type { DemoId } from '../demos/ids.ts';
import { archSpringsBack, type ArchSpringsBack } from './archSpringsBack.ts';
import { exerciseFrom, nearestSet, type Exercise, type PageMaker } from './exercise.ts';
import { filamentAgainstFilament, type FilamentAgainstFilament } from './filamentAgainstFilament.ts';
import { filletOrCorner, type FilletOrCorner } from './filletOrCorner.ts';
import { heldOrFlexed, type HeldOrFlexed } from './heldOrFlexed.ts';
import { oneLineMore, type OneLineMore } from './oneLineMore.ts';
import { oneOrManyBends, type OneOrManyBends } from './oneOrManyBends.ts';
import { scaledPart, type ScaledPart } from './scaledPart.ts';
import { shortOrLong, type ShortOrLong } from './shortOrLong.ts';
import { sideBySide, type SideBySide } from './sideBySide.ts';
import { threeLengths, type ThreeLengths } from './threeLengths.ts';

/** What the page of each demonstration gives. */
export interface Givens {
  'three-lengths': ThreeLengths;
  'one-line-more': OneLineMore;
  'scaled-part': ScaledPart;
  'one-or-many-bends': OneOrManyBends;
  'fillet-or-corner': FilletOrCorner;
  'filament-against-filament': FilamentAgainstFilament;
  'short-or-long': ShortOrLong;
  'side-by-side': SideBySide;
  'held-or-flexed': HeldOrFlexed;
  'arch-springs-back': ArchSpringsBack;
}

const MAKERS: { readonly [K in DemoId]: PageMaker<Givens[K]> } = {
  'three-lengths': threeLengths,
  'one-line-more': oneLineMore,
  'scaled-part': scaledPart,
  'one-or-many-bends': oneOrManyBends,
  'fillet-or-corner': filletOrCorner,
  'filament-against-filament': filamentAgainstFilament,
  'short-or-long': shortOrLong,
  'side-by-side': sideBySide,
  'held-or-flexed': heldOrFlexed,
  'arch-springs-back': archSpringsBack,
};

/** The page of one demonstration, told by its id. */
export type ExerciseOf<K extends DemoId> = Exercise<Givens[K]> & { readonly id: K };
export type AnyExercise = { readonly [K in DemoId]: ExerciseOf<K> }[DemoId];

/**
 * The exercise page of a demonstration with the numbers of a set: always the same ones, and no answer of a set is taken in
 * the set before or after it.
 *
 * @param id - the demonstration [-]
 * @param set - number of the set [-]; what is none falls to the nearest within `SETS`
 * @returns what is given and asked, with the answers: lengths [mm], angles [rad], efforts [N·mm] or [N], strains as fractions
 */
export function exerciseOf<K extends DemoId>(id: K, set: number): ExerciseOf<K> {
  return { id, ...exerciseFrom(MAKERS[id], nearestSet(set)) };
}

/**
 * Pages for a class, set after set, all different.
 *
 * @param id - the demonstration [-]
 * @param first - number of the first set [-]
 * @param count - how many [-], ≥ 1; past the last set they go on from the first
 * @returns the pages in order
 */
export function exercisesFor<K extends DemoId>(id: K, first: number, count: number): readonly ExerciseOf<K>[] {
  const from = nearestSet(first) - 1;
  return Array.from({ length: count }, (_, at) => exerciseOf(id, ((from + at) % LAST_SET) + 1));
}

const LAST_SET = nearestSet(Infinity);
