/** Strips that lie far from what the others say: shown, never dropped. */
import { normalCdf, normalQuantile } from '../numeric/normal.ts';
import { logTail } from '../numeric/normalTail.ts';
import { lifePosterior, type LifePosterior, type Possible, type SeenStrip } from './lifePosterior.ts';
import type { LifePrior } from './lifePrior.ts';

/** Of sets of strips without anything odd, one in so many is said to hold an odd one. */
const ONE_IN = 100;
/** Up to so many strips each is left out in full; of more, one changes little, and weights stand for it. */
const LEFT_OUT_IN_FULL = 16;
/** No share is told smaller than this. */
const LEAST_SHARE = 1e-30;

/**
 * How far off a strip must be to be odd, in standard deviations: two-sided, shared out among all strips.
 *
 *     z = Φ⁻¹(1 − 1/(2·100·n))
 *
 * @param count - n, strips judged together [-], ≥ 1
 * @returns standard deviations [-]
 *
 * Source: normal-distribution.
 * @example oddLimit(10) // → 3.29052673
 */
export function oddLimit(count: number): number {
  return -normalQuantile(1 / (2 * ONE_IN * count));
}

/** Where in the scatter of a curve a strip lies [σ]. */
function placed({ foretold, counted }: SeenStrip, pivot: number, { level, slope, sigma }: Possible): number {
  return (counted - foretold - level - slope * (foretold - pivot)) / sigma;
}

/** From the shares of specimens, over all possible curves, that live less long and longer. */
function offBy(strip: SeenStrip, { pivot, possible }: LifePosterior): number {
  let [all, below, above] = [0, 0, 0];
  for (const one of possible) {
    const z = placed(strip, pivot, one);
    all += one.weight;
    below += one.weight * normalCdf(z);
    above += one.weight * normalCdf(-z);
  }
  const share = Math.max(LEAST_SHARE, Math.min(below, above) / all);
  return below < above ? normalQuantile(share) : -normalQuantile(share);
}

/** As if a strip had not been counted: each curve is as likely as before, over what the strip says of it. */
function without(strip: SeenStrip, posterior: LifePosterior): LifePosterior {
  const logs = posterior.possible.map((one) => {
    const z = placed(strip, posterior.pivot, one);
    return strip.whole ? -logTail(z) : 0.5 * z * z + Math.log(one.sigma);
  });
  const least = posterior.possible.map(({ weight }, k) => Math.log(weight) + (logs[k] ?? 0));
  const top = Math.max(...least);
  return {
    ...posterior,
    possible: posterior.possible.map((one, k) => ({ ...one, weight: Math.exp((least[k] ?? 0) - top) })),
  };
}

/**
 * How far each of the strips lies from what the others and the prior say, in standard deviations of a specimen.
 *
 *     off = Φ⁻¹(P(N < counted | the others))
 *
 * For one that is still whole it is how far off it is at least; below nought it says nothing, as it may live on.
 *
 * @param prior - what was believed before, in decades of life [-]
 * @param strips - what was counted, in decades of life [-]
 * @param posterior - what all of them say together [-]
 * @returns for each strip, standard deviations [-]
 *
 * Source: bayes-rule.
 */
export function offOthers(prior: LifePrior, strips: readonly SeenStrip[], posterior: LifePosterior): readonly number[] {
  const inFull = strips.length <= LEFT_OUT_IN_FULL;
  return strips.map((strip, i) =>
    offBy(strip, inFull ? lifePosterior(prior, strips.toSpliced(i, 1)) : without(strip, posterior)),
  );
}

/**
 * How far a strip that was not counted in lies from what was.
 *
 * @param strip - in decades of life [-]
 * @param posterior - what the others say [-]
 * @returns standard deviations [-]
 *
 * Source: bayes-rule.
 */
export function offAll(strip: SeenStrip, posterior: LifePosterior): number {
  return offBy(strip, posterior);
}

/**
 * Whether a strip deserves another look: far off, and not only stopped early.
 *
 * @param off - standard deviations from what the others say [-]
 * @param whole - whether it was still whole [-]
 * @param count - strips judged together [-]
 * @returns whether it is odd [-]
 *
 * Source: normal-distribution.
 * @example isOddBy(-4, true, 10) // → false
 */
export function isOddBy(off: number, whole: boolean, count: number): boolean {
  return (whole ? off : Math.abs(off)) > oddLimit(Math.max(1, count));
}
