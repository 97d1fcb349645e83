const SHARE = (Math.sqrt(5) - 1) / 2;
/** Each step leaves 0.618 of the interval; this many leave the round-off. */
const STEPS = 75;

/**
 * Where a function with one peak between two points is largest.
 *
 * Golden-section search: needs no slope, so a peak may be a corner.
 *
 * @param f - function with one peak between the points [-]
 * @param low - one end [-]
 * @param high - the other end [-], > low
 * @returns place of the peak [-], to about 10⁻⁸ of the interval where the peak is round
 *
 * Source: golden-section.
 * @example highestPoint((x) => 1 - Math.abs(x - 0.3), 0, 1) // → 0.300000000
 */
export function highestPoint(f: (x: number) => number, low: number, high: number): number {
  let [left, right] = [high - SHARE * (high - low), low + SHARE * (high - low)];
  let [atLeft, atRight] = [f(left), f(right)];
  for (let step = 0; step < STEPS; step++) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - SHARE * (high - low);
      atLeft = f(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + SHARE * (high - low);
      atRight = f(right);
    }
  }
  return (low + high) / 2;
}
