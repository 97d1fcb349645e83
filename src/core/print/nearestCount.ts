import type { Mm } from '../units.ts';

/** The whole number of lines or layers that comes nearest to a thickness. */
export interface NearestCount {
  /** Lines or layers in the thickness as it is, with its fraction. */
  readonly exact: number;
  /** Nearest whole count, at least 1. */
  readonly count: number;
  /** Thickness of that count [mm]. */
  readonly thickness: Mm;
  /** True when two counts were equally near and the lower was taken. */
  readonly tie: boolean;
}

/** 0.63/0.42 need not land on 1.5 exactly; a part in 10⁹ of a line is far below anything printable. */
export const COUNT_ROUND_OFF = 1e-9;

/**
 * The whole count nearest to a fractional one. Ties go down, because one line more stiffens by the cube of the
 * count and raises strain, so the printed part must not come out on that side without being asked to.
 *
 * @param exact - lines or layers with their fraction [-], finite
 * @returns the count [-], at least 1, and whether it was a tie
 *
 * @example nearestWhole(2.5) // → { count: 2, tie: true }
 */
export function nearestWhole(exact: number): { readonly count: number; readonly tie: boolean } {
  const below = Math.floor(exact + COUNT_ROUND_OFF);
  const share = exact - below;
  const tie = below >= 1 && Math.abs(share - 0.5) <= COUNT_ROUND_OFF;
  return { count: Math.max(1, share > 0.5 && !tie ? below + 1 : below), tie };
}
