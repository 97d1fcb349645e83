/** What stays of a bend after a day, and what a bar stood when it was pulled: means of what was read. */
import type { HoldTally, PullTally, Tally } from '../material/tally.ts';
import type { Quantity } from '../material/types.ts';
import type { LearnedFigure } from './learned.ts';
import { taughtBy } from './taught.ts';

/** Between half a day and two a strip keeps nearly what it keeps after one: creep goes with the logarithm of time. Our judgement. */
const A_DAY = { from: 12, to: 48 } as const;

function meanOf<T extends Tally>(
  by: readonly T[],
  read: (tally: T) => number,
  like: Quantity,
  words: readonly [one: string, several: string],
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
  return { value, by, odd: [] };
}

/**
 * Share of a bend that stays after a day of holding [%].
 *
 *     100·θ_left/θ_held, the mean of the strips that were held for about a day
 *
 * @param like - the quantity of the row that it stands for [%]
 * @param tallies - all of a row; other kinds, those set aside and other times are passed over [-]
 * @returns share [%], lowest and highest read where there are several; undefined where none was held for half a day to two
 *
 * Source: common-practice.
 */
export function setOfHold(like: Quantity, tallies: readonly Tally[]): LearnedFigure<Quantity> | undefined {
  const by = tallies
    .filter((tally): tally is HoldTally => tally.kind === 'hold' && !tally.leftOut)
    .filter(({ hours }) => hours >= A_DAY.from && hours <= A_DAY.to);
  return meanOf(by, ({ left, held }) => (100 * left) / held, like, ['strip held bent', 'strips held bent']);
}

/**
 * Stress at which bars broke when they were pulled [MPa], the mean.
 *
 * @param like - the quantity of the row that it stands for [MPa]
 * @param tallies - all of a row; other kinds, those set aside and the other direction are passed over [-]
 * @param direction - along lines or across layers [-]
 * @returns stress [MPa], lowest and highest where there are several; undefined where none was pulled
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
  return meanOf(by, ({ strength }) => strength, { ...like, direction }, ['bar pulled', 'bars pulled']);
}
