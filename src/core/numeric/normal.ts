const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

function density(z: number): number {
  return Math.exp(-0.5 * z * z - HALF_LOG_TWO_PI);
}

/** Beyond this the series loses figures to the 0.5 that it is added to, and the continued fraction is quick. */
const FAR_TAIL = 4;

/**
 * Share of a normal distribution that lies below z standard deviations.
 *
 *     Φ(z) = ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …)
 *
 * and in the far tail Φ(−z) = φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))), so that small shares keep their figures.
 *
 * @param z - standard deviations from the mean [-], any number
 * @returns share [-], 0 to 1
 *
 * Source: normal-distribution.
 * @example normalCdf(1.959963985) // → 0.975000000
 */
export function normalCdf(z: number): number {
  if (z > FAR_TAIL) return 1 - tail(z);
  if (z < -FAR_TAIL) return tail(-z);
  let term = z;
  let sum = z;
  for (let n = 3; Math.abs(term) > Number.EPSILON * Math.abs(sum); n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return 0.5 + density(z) * sum;
}

/** Share above z, for z > 4. Forty steps are more than enough there for full precision. */
function tail(z: number): number {
  let fraction = z;
  for (let n = 40; n >= 1; n--) fraction = z + n / fraction;
  return density(z) / fraction;
}

/**
 * Standard deviations from the mean below which a given share of a normal distribution lies: the inverse of Φ.
 *
 * A rational first guess, good to 5·10⁻⁴, then two steps of Halley's method on Φ itself.
 *
 * @param share - share below [-], 0 < share < 1
 * @returns standard deviations [-]
 *
 * Source: normal-distribution.
 * @example normalQuantile(0.9) // → 1.281551566
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share strictly between 0 and 1 is needed, not ${share}`);
  // Only the lower half is solved, where small shares keep their figures.
  if (share > 0.5) return -normalQuantile(1 - share);
  let z = firstGuess(share);
  for (let step = 0; step < 2; step++) {
    const newton = (normalCdf(z) - share) / density(z);
    z -= newton / (1 + (z * newton) / 2);
  }
  return z;
}

function firstGuess(share: number): number {
  const t = Math.sqrt(-2 * Math.log(share));
  const top = 2.515517 + t * (0.802853 + t * 0.010328);
  const bottom = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return top / bottom - t;
}
