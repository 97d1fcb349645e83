/** The upper tail of the normal law on a logarithmic scale, where shares themselves would be too small for a number. */
import { normalCdf } from './normal.ts';

const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
/** Beyond this the continued fraction is quick; below it the share itself keeps its figures. */
const FAR = 4;

/** z + 1/(z + 2/(z + …)), which is the density over the tail. Forty steps are more than enough past 4. */
function fraction(z: number): number {
  let value = z;
  for (let n = 40; n >= 1; n--) value = z + n / value;
  return value;
}

/**
 * Natural logarithm of the share of a normal distribution that lies above z standard deviations.
 *
 *     ln Q(z) = ln φ(z) − ln(z + 1/(z + 2/(z + …))) far out,   ln(1 − Φ(z)) else
 *
 * @param z - standard deviations from the mean [-], any finite number
 * @returns ln Q [-], ≤ 0, finite
 *
 * Source: normal-distribution.
 * @example logTail(40) // → -804.608442
 */
export function logTail(z: number): number {
  if (z > FAR) return -0.5 * z * z - HALF_LOG_TWO_PI - Math.log(fraction(z));
  return z < -FAR ? Math.log1p(-normalCdf(z)) : Math.log(normalCdf(-z));
}

/**
 * Density over the share above: how fast the tail shrinks.
 *
 *     h(z) = φ(z)/Q(z) = −d ln Q/dz
 *
 * @param z - standard deviations from the mean [-], any finite number
 * @returns h [-], ≥ 0, near z far out
 *
 * Source: normal-distribution.
 * @example hazard(0) // → 0.797884561
 */
export function hazard(z: number): number {
  if (z > FAR) return fraction(z);
  return Math.exp(-0.5 * z * z - HALF_LOG_TWO_PI - logTail(z));
}
