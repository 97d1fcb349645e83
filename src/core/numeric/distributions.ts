/** How a doubtful value is spread: from the share below it to the value. */
import { normalQuantile } from './normal.ts';

/** Standard deviations below which nine in ten lie. */
const NINETIETH = normalQuantile(0.9);

/** What a value typically is, with what one in ten lies below, and one in ten above. */
export interface Range10to90 {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The value below which a share lies, where one in ten lies below the low and one in ten above the high value: log-normal
 * on both sides of the typical value, each side with its own width.
 *
 *     x = m·(h/m)^(z/1.2816) for z ≥ 0,   m·(m/l)^(z/1.2816) below,   z = Φ⁻¹(share)
 *
 * A side whose end is the typical value itself has no spread.
 *
 * @param range - low l, typical m and high h, all > 0, l ≤ m ≤ h [any unit]
 * @param share - 0 < share < 1 [-]
 * @returns the value, in the unit of the range
 *
 * Source: normal-distribution.
 * @example splitLogNormal({ low: 1450, typical: 1850, high: 2150 }, 0.9) // → 2150
 * @example splitLogNormal({ low: 1450, typical: 1850, high: 2150 }, 0.1) // → 1450
 */
export function splitLogNormal({ low, typical, high }: Range10to90, share: number): number {
  const z = normalQuantile(share) / NINETIETH;
  return typical * (z < 0 ? (typical / low) ** z : (high / typical) ** z);
}

/**
 * The value below which a share lies, of values that are likeliest at a mode and impossible beyond 0 and 1.
 *
 *     x = √(u·m) for u ≤ m,   1 − √((1 − u)·(1 − m)) beyond
 *
 * @param mode - m [-], 0 to 1
 * @param share - u [-], 0 to 1
 * @returns value [-], 0 to 1
 *
 * Source: triangular.
 * @example triangular(0.5, 0.125) // → 0.25
 */
export function triangular(mode: number, share: number): number {
  return share <= mode ? Math.sqrt(share * mode) : 1 - Math.sqrt((1 - share) * (1 - mode));
}
