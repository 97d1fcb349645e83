/** What few counts, some of them stopped before the strip broke, leave in doubt about the likeliest line through them. */
import { studentQuantile } from '../numeric/fDistribution.ts';
import { highestPoint } from '../numeric/goldenSection.ts';
import { normalQuantile } from '../numeric/normal.ts';
import { findRoot } from '../numeric/roots.ts';
import type { LineAt, LoggedStrip } from './countedLikelihood.ts';
import { topOf, type LikeliestLine } from './likeliestLine.ts';
import type { Interval } from './regression.ts';

export interface LikeliestIntervals {
  readonly intercept: Interval;
  /** Where the slope was given, that slope twice. */
  readonly slope: Interval;
  readonly sigma: Interval;
}

/** Numbers of the line that were found beside σ. */
const found = ({ slopeFound }: LikeliestLine): number => (slopeFound ? 2 : 1);

/**
 * By how much the logarithm of the likelihood may fall short of its top, with r strips that broke and p numbers found.
 *
 *     ½·r·ln(1 + t²/(r − p)),   t of Student with r − p degrees of freedom
 *
 * Where all broke this is exact: it gives the intervals of Student. Strips that are still whole say less than those that broke,
 * so that only the latter count as degrees of freedom, which errs to the wide side.
 */
function fallAllowed(line: LikeliestLine, confidence: number): number {
  const freedom = line.broke - found(line);
  const t = studentQuantile((1 + confidence) / 2, freedom);
  return 0.5 * line.broke * Math.log1p((t * t) / freedom);
}

/** The line through the same strips at another place of log10 ε, from which x is counted there. */
function about(line: LikeliestLine, x: number): { readonly strips: readonly LoggedStrip[]; readonly top: LineAt } {
  const shift = x - line.middle;
  return {
    strips: line.strips.map((strip) => ({ ...strip, x: strip.x - shift })),
    top: [line.intercept + line.slope * x, line.slope, Math.log(line.sigma)],
  };
}

/** Farther than this many first guesses of its half-width no interval reaches. */
const FARTHEST = 1e6;

/** Where the best line that keeps one of its numbers at a value falls short of the top by just so much: to either side. */
function profiled(line: LikeliestLine, x: number, kept: 0 | 1, fall: number): Interval {
  const { strips, top } = about(line, x);
  const free = [0, 1, 2].filter((i) => i !== kept && (i !== 1 || line.slopeFound));
  const short = (value: number): number => {
    const start = top.map((number, i) => (i === kept ? value : number)) as unknown as LineAt;
    return line.likelihood - topOf(strips, start, free).hill.value - fall;
  };
  const middle = top[kept];
  const end = (side: 1 | -1): number => {
    let reach = line.sigma;
    while (short(middle + side * reach) < 0 && reach < FARTHEST * line.sigma) reach *= 2;
    const root = findRoot((off) => short(middle + side * off), 0, reach, 1e-9 * reach);
    return root.ok ? middle + side * root.value.value : side * Infinity;
  };
  return [end(-1), end(1)];
}

/**
 * The interval of σ by the ratio of likelihoods, each for the line that is best with this σ.
 *
 *     ℓ(σ) + p·ln σ falls short of its top by no more than ½·z²·(1 + 1/(3ν)),   ν = r − p
 *
 * The term with p takes the line out of the likelihood, so that s² = σ̂²·k/(k − p) is at its top where all broke; the factor
 * is Bartlett's, which makes the ratio of a normal spread follow its law down to few degrees of freedom.
 */
function ofScatter(line: LikeliestLine, confidence: number): Interval {
  const [freedom, numbers] = [line.broke - found(line), found(line)];
  const { strips, top } = about(line, line.middle);
  const free = line.slopeFound ? [0, 1] : [0];
  const height = (logSigma: number) => topOf(strips, [top[0], top[1], logSigma], free).hill.value + numbers * logSigma;
  const widest = 2 + normalQuantile((1 + confidence) / 2);
  const best = highestPoint(height, top[2], top[2] + Math.log(1 + numbers));
  const floor = height(best) - 0.5 * normalQuantile((1 + confidence) / 2) ** 2 * (1 + 1 / (3 * freedom));
  const end = (side: 1 | -1): number => {
    const root = findRoot((off) => floor - height(best + side * off), 0, widest, 1e-9);
    if (root.ok) return Math.exp(best + side * root.value.value);
    return side < 0 ? 0 : Infinity;
  };
  return [end(-1), end(1)];
}

/**
 * Intervals in which A, B and σ lie, each by itself.
 *
 * A and B by the ratio of likelihoods: all values at which the best line that has them falls short of the top by no more than
 *
 *     ½·r·ln(1 + t²/(r − 2)),   r strips that broke, t of Student with r − 2 degrees of freedom
 *
 * which gives the intervals of `intervalsOf` where all broke. σ by the likelihood of the spread with the line taken out of it,
 * and the factor of Bartlett for few degrees of freedom.
 *
 * @param line - likeliest line [-]
 * @param confidence - how surely [-], 0 < confidence < 1
 * @returns intervals [-]; an end may be infinite where strips that are whole leave it open
 *
 * Source: censored-likelihood.
 */
export function likeliestIntervals(line: LikeliestLine, confidence: number): LikeliestIntervals {
  const fall = fallAllowed(line, confidence);
  return {
    intercept: profiled(line, 0, 0, fall),
    slope: line.slopeFound ? profiled(line, line.middle, 1, fall) : [line.slope, line.slope],
    sigma: ofScatter(line, confidence),
  };
}

/**
 * The interval in which the median life at one strain lies, by the same ratio of likelihoods.
 *
 * @param line - likeliest line [-]
 * @param strain - as a fraction [-], > 0
 * @param confidence - how surely [-], 0 < confidence < 1
 * @returns median, low and high cycles [-]
 *
 * Source: censored-likelihood.
 */
export function medianInterval(
  line: LikeliestLine,
  strain: number,
  confidence: number,
): { readonly median: number; readonly low: number; readonly high: number } {
  const x = Math.log10(strain);
  const [low, high] = profiled(line, x, 0, fallAllowed(line, confidence));
  return { median: 10 ** (line.intercept + line.slope * x), low: 10 ** low, high: 10 ** high };
}
