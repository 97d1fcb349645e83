/**
 * What going on with strips that are still whole is likely to tell. What is believed after strips have lived long leans to one
 * side, which no normal law sees; so what they may do is drawn, and each curve that may be the true one is weighed anew by it.
 */
import { normalCdf, normalQuantile } from '../numeric/normal.ts';
import { logTail } from '../numeric/normalTail.ts';
import { randomShares, type RandomShares } from '../numeric/random.ts';
import type { LifePosterior, Possible } from './lifePosterior.ts';

/** Strips bent alike that are still whole: all go on until they break or until counting stops. */
export interface GoingOn {
  /** log10 of the life that the prior foretells for them. */
  readonly foretold: number;
  /** log10 of the count at which it stops, and of what each has survived, below that. */
  readonly stop: number;
  readonly from: readonly number[];
}

/** Draws: their mean is then good to about 1 % of the doubt, which changes no word on the screen. */
const DRAWS = 128;
/** Always the same, so that the same tallies give the same list. */
const SEED = 20_261_201;
/** Curves less likely than this change no average. */
const TOO_RARE = 1e-5;
/** The normal law has a value there, and no strip comes nearer to none alive. */
const LEAST_SHARE = 1e-300;

/** A curve as these strips see it. */
interface Curve {
  readonly weight: number;
  /** log10 of the median life over that foretold, and σ. */
  readonly middle: number;
  readonly sigma: number;
  /** δ of the joint. */
  readonly shift: number;
  /** ln w − Σ ln Q(from), ln Q(stop), ln σ and 1/2σ². */
  readonly known: number;
  readonly lasts: number;
  readonly logSigma: number;
  readonly narrow: number;
}

function curveOf(posterior: LifePosterior, { foretold, stop, from }: GoingOn, x: number) {
  return ({ weight, level, slope, sigma }: Possible): Curve => {
    const middle = level + slope * (foretold - posterior.pivot);
    const tail = (count: number) => logTail((count - foretold - middle) / sigma);
    return {
      weight,
      middle,
      sigma,
      shift: level + slope * (x - posterior.pivot),
      known: from.reduce((sum, count) => sum - tail(count), Math.log(weight)),
      lasts: tail(stop),
      logSigma: Math.log(sigma),
      narrow: 1 / (2 * sigma * sigma),
    };
  };
}

/** What strips did: how many are whole, and of those that broke the count and sums of log10 of the life over that foretold. */
interface Outcome {
  readonly whole: number;
  readonly broke: number;
  readonly sum: number;
  readonly squares: number;
}

/** Each strip lives on as one of this curve that has survived so far. */
function outcomeOf({ middle, sigma }: Curve, { foretold, stop, from }: GoingOn, shares: readonly number[]): Outcome {
  let [whole, broke, sum, squares] = [0, 0, 0, 0];
  for (const [i, count] of from.entries()) {
    const alive = normalCdf((foretold + middle - count) / sigma);
    const over = middle - sigma * normalQuantile(Math.max(LEAST_SHARE, (shares[i] ?? 0.5) * alive));
    if (foretold + over > stop) whole += 1;
    else {
      broke += 1;
      sum += over;
      squares += over * over;
    }
  }
  return { whole, broke, sum, squares };
}

/** Variance of δ of the joint once the curves are weighed by what happened. One loop, as it is gone through a hundred thousand times. */
function varianceBy(curves: readonly Curve[], { whole, broke, sum, squares }: Outcome): number {
  const logs = new Float64Array(curves.length);
  let top = -Infinity;
  for (const [k, { middle, known, lasts, logSigma, narrow }] of curves.entries()) {
    const off = squares - 2 * middle * sum + broke * middle * middle;
    const log = known + whole * lasts - broke * logSigma - off * narrow;
    logs[k] = log;
    if (log > top) top = log;
  }
  let [all, first, second] = [0, 0, 0];
  for (const [k, { shift }] of curves.entries()) {
    const weight = Math.exp((logs[k] ?? 0) - top);
    all += weight;
    first += weight * shift;
    second += weight * shift * shift;
  }
  return Math.max(0, second / all - (first / all) ** 2);
}

/** Curves by their likelihood, one in the middle of each of so many equal shares of it. */
function drawnFrom(curves: readonly Curve[]): readonly Curve[] {
  const all = curves.reduce((sum, { weight }) => sum + weight, 0);
  const drawn: Curve[] = [];
  let below = 0;
  for (const curve of curves) {
    below += curve.weight / all;
    while (drawn.length < DRAWS && (drawn.length + 0.5) / DRAWS <= below) drawn.push(curve);
  }
  return drawn;
}

/** A share of each of so many equal parts, in any order. */
function spreadShares(share: RandomShares): readonly number[] {
  const parts = Array.from({ length: DRAWS }, (_, k) => ({ at: share(), value: (k + share()) / DRAWS }));
  return parts.toSorted((one, other) => one.at - other.at).map(({ value }) => value);
}

/**
 * Doubt of a curve at one life that is expected to be left once strips that are still whole have been gone on with.
 *
 *     E(s²) = E(Var(δ | what they do)),   what they do drawn from P(N | N > counted so far)
 *
 * over curves drawn from what is believed now, which is then weighed anew over the same grid.
 *
 * @param posterior - what is believed now, those strips in it as still whole, in decades of life [-]
 * @param strips - bent alike, in decades of life [-]
 * @param x - log10 of the life that the prior foretells for the joint [-]
 * @returns variance in decades² [-]
 *
 * Source: bayes-rule, censored-likelihood.
 */
export function varianceGoingOn(posterior: LifePosterior, strips: GoingOn, x: number): number {
  const curves = posterior.possible.filter(({ weight }) => weight > TOO_RARE).map(curveOf(posterior, strips, x));
  const share = randomShares(SEED);
  const spread = strips.from.map(() => spreadShares(share));
  const left = drawnFrom(curves).map(
    (curve, k) =>
    varianceBy(curves, outcomeOf(curve, strips, spread.map((shares) => shares[k] ?? 0.5))), // prettier-ignore
  );
  return left.reduce((sum, variance) => sum + variance, 0) / left.length;
}
