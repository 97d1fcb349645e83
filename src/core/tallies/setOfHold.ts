/** What stays of a bend after a day, and what a bar stood when it was pulled: means of what was read. */
import type { HoldTally, PullTally, Tally } from '../material/tally.ts';
import type { Quantity } from '../material/types.ts';
import type { LearnedFigure } from './learned.ts';
import { oddLimit } from './oddStrips.ts';
import { taughtBy } from './taught.ts';

/** Between half a day and two a strip keeps nearly what it keeps after one: creep goes with the logarithm of time. Our judgement. */
const A_DAY = { from: 12, to: 48 } as const;

/** How far readings of one figure lie apart, one standard deviation: shares in points, stresses as logarithms. Our judgement. */
const SET_SIGMA = 4;
const STRENGTH_SIGMA = 0.12;

/** The middle one, or half-way between the two in the middle. */
function middleOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
}

/** Readings far from the middle of all, which one of them that is far off does not move. Shown, never dropped. */
function farOff<T>(by: readonly T[], read: (tally: T) => number, sigma: number): readonly T[] {
  const middle = middleOf(by.map(read));
  return by.filter((tally) => Math.abs(read(tally) - middle) > oddLimit(by.length) * sigma);
}

function meanOf<T extends Tally>(
  by: readonly T[],
  read: (tally: T) => number,
  like: Quantity,
  words: readonly [one: string, several: string],
  odd: readonly T[],
): LearnedFigure<Quantity> | undefined {
  if (by.length === 0) return undefined;
  const values = by.map(read);
  const typical = values.reduce((sum, value) => sum + value, 0) / values.length;
  const range = values.length > 1 ? { low: Math.min(...values), high: Math.max(...values) } : {};
  const value: Quantity = {
    typical,
    ...range,
    unit: like.unit,
    direction: like.direction,
    provenance: taughtBy(by.length, ...words),
  };
  return { value, by, odd };
}

const shareLeft = ({ left, held }: HoldTally) => (100 * left) / held;

/**
 * Share of a bend that stays after a day of holding [%].
 *
 *     100·θ_left/θ_held, the mean of the strips that were held for about a day
 *
 * @param like - the quantity of the row that it stands for [%]
 * @param tallies - all of a row; other kinds, those set aside and other times are passed over [-]
 * @returns share [%], lowest and highest read where there are several, and which lie far off; undefined where none was held for half a day to two
 *
 * Source: common-practice.
 */
export function setOfHold(like: Quantity, tallies: readonly Tally[]): LearnedFigure<Quantity> | undefined {
  const by = tallies
    .filter((tally): tally is HoldTally => tally.kind === 'hold' && !tally.leftOut)
    .filter(({ hours }) => hours >= A_DAY.from && hours <= A_DAY.to);
  const words = ['strip held bent', 'strips held bent'] as const;
  return meanOf(by, shareLeft, like, words, farOff(by, shareLeft, SET_SIGMA));
}

/**
 * Stress at which bars broke when they were pulled [MPa], the mean.
 *
 * @param like - the quantity of the row that it stands for [MPa]
 * @param tallies - all of a row; other kinds, those set aside and the other direction are passed over [-]
 * @param direction - along lines or across layers [-]
 * @returns stress [MPa], lowest and highest where there are several, and which lie far off; undefined where none was pulled
 *
 * Source: common-practice.
 */
export function strengthOfPull(
  like: Quantity,
  tallies: readonly Tally[],
  direction: PullTally['direction'],
): LearnedFigure<Quantity> | undefined {
  const by = tallies
    .filter((tally): tally is PullTally => tally.kind === 'pull' && !tally.leftOut)
    .filter((tally) => tally.direction === direction);
  const odd = farOff(by, ({ strength }) => Math.log(strength), STRENGTH_SIGMA);
  return meanOf(by, ({ strength }) => strength, { ...like, direction }, ['bar pulled', 'bars pulled'], odd);
}
