/** What an exercise page is, and how one is drawn from its set number. */
import { randomShares, type RandomShares } from '../../numeric/random.ts';
import { isTaken, type Figure, type Question } from './question.ts';

/** Draws from a grid. */
export type Pick = <T>(grid: readonly T[]) => T;

/** Everything about a page but its words. */
export interface Exercise<G> {
  readonly set: number;
  readonly given: G;
  readonly questions: readonly Question[];
}

/** How the numbers of one page come about. */
export interface PageMaker<G> {
  /** Keeps the numbers of one page apart from those of another with the same set number. */
  readonly seed: number;
  readonly draw: (pick: Pick) => G;
  /** Whether every question has something to find, and no answer hangs on half a millimetre of reading. */
  readonly isFit: (given: G) => boolean;
  readonly ask: (given: G) => readonly Question[];
}

/** Sets are numbered from 1; three digits are read out in a class without a slip. */
export const SETS = { min: 1, max: 999 } as const;

/** Far more draws than any page needs; a page that runs out is wrongly made. */
const MOST_DRAWS = 20_000;
const SEEDS_A_SET = 16;

function picker(shares: RandomShares): Pick {
  return <T>(grid: readonly T[]) => grid[Math.floor(shares() * grid.length)] as T;
}

/**
 * Whether no answer of one set would be taken in the other.
 *
 * @param one - questions of a page [-]
 * @param other - of another set of the same page [-]
 * @returns true where every figure differs by more than is tolerated
 */
export function areUnlike(one: readonly Question[], other: readonly Question[]): boolean {
  const [a, b] = [one, other].map((questions) => questions.flatMap(({ figures }) => figures)) as [Figure[], Figure[]];
  return a.every((figure, at) => {
    const beside = b[at];
    return beside === undefined || !(isTaken(figure, beside.value) || isTaken(beside, figure.value));
  });
}

function drawn<G>(page: PageMaker<G>, set: number, others: readonly Exercise<G>[]): Exercise<G> {
  const pick = picker(randomShares(set * SEEDS_A_SET + page.seed));
  for (let draws = 0; draws < MOST_DRAWS; draws += 1) {
    const given = page.draw(pick);
    if (!page.isFit(given)) continue;
    const questions = page.ask(given);
    if (others.every((other) => areUnlike(questions, other.questions))) return { set, given, questions };
  }
  throw new RangeError(`no numbers were found for set ${set}`);
}

/**
 * The page of a set. Its numbers rest on its set number alone.
 *
 * Odd sets are drawn freely; an even one is drawn until no answer of it would be taken in either neighbour, so that a
 * page needs no more than its neighbours to be drawn.
 *
 * @param page - how its numbers come about [-]
 * @param set - number of the set [-], whole, within `SETS`
 * @returns the page
 */
export function exerciseFrom<G>(page: PageMaker<G>, set: number): Exercise<G> {
  if (set % 2 === 1) return drawn(page, set, []);
  return drawn(page, set, [drawn(page, set - 1, []), drawn(page, set + 1, [])]);
}

/**
 * The nearest set number that there is.
 *
 * @param set - any number, or none [-]
 * @returns a whole number within `SETS` [-]
 *
 * @example nearestSet(1500.4) // → 999
 */
export function nearestSet(set: number): number {
  if (Number.isNaN(set)) return SETS.min;
  return Math.min(SETS.max, Math.max(SETS.min, Math.round(set)));
}
