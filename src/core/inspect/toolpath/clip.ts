/** How much of a straight way lies between limits. */

/** Ways that change by less keep their place [mm]. */
const LEVEL = 1e-12;

/**
 * The part of a way from one number to another on which it is between two limits, as shares of it; nothing of it where the
 * first share comes out above the second. Asked one after the other of two coordinates it clips a way to a rectangle.
 *
 * @param a - where the way begins [mm]
 * @param b - where it ends [mm]
 * @param low - lower limit [mm]
 * @param high - upper limit [mm]
 * @param from - share from which it is looked at [-]
 * @param to - share up to which it is looked at [-]
 * @returns both shares [-]
 *
 * @example clipped(0, 10, 2, 5, 0, 1) // → [0.2, 0.5]
 */
export function clipped(
  a: number,
  b: number,
  low: number,
  high: number,
  from: number,
  to: number,
): readonly [from: number, to: number] {
  if (Math.abs(b - a) < LEVEL) return a >= low && a <= high ? [from, to] : [1, 0];
  const [p, q] = [(low - a) / (b - a), (high - a) / (b - a)];
  return [Math.max(from, Math.min(p, q)), Math.min(to, Math.max(p, q))];
}
