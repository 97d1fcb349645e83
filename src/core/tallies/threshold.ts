/** A strain above which something happens to strips, known from strips to which it has and has not happened. */
import { oddLimit } from './oddStrips.ts';
import type { Normal } from './believed.ts';
import { normalCdf } from '../numeric/normal.ts';
import { findRoot } from '../numeric/roots.ts';

/** Strips of one print differ in this strain by so much, as a share (standard deviation). Our judgement. */
export const STRIPS_DIFFER = 0.08;

/** A strip and whether it happened. */
export interface Tried<T> {
  readonly tally: T;
  readonly strain: number;
  readonly happened: boolean;
}

/** The threshold of a single strip, as shares below which it lies [-]. */
export interface Threshold {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

const STEPS = 801;
/** So many standard deviations of what was believed before are looked at. */
const REACH = 6;

interface Weighed {
  readonly log: number;
  readonly weight: number;
}

function chanceOfIt(tried: Tried<unknown>, log: number): number {
  const above = normalCdf((Math.log(tried.strain) - log) / STRIPS_DIFFER);
  return tried.happened ? above : 1 - above;
}

/** A strip that cannot be so by any threshold must not make all of them impossible. */
const LEAST_CHANCE = 1e-9;

function weighed(before: Normal, all: readonly Tried<unknown>[]): readonly Weighed[] {
  return Array.from({ length: STEPS }, (_, i) => {
    const z = REACH * ((2 * i) / (STEPS - 1) - 1);
    const log = before.mean + z * before.sigma;
    const said = all.reduce((sum, tried) => sum + Math.log(Math.max(LEAST_CHANCE, chanceOfIt(tried, log))), 0);
    return { log, weight: Math.exp(said - z ** 2 / 2) };
  });
}

/** Share of strips whose threshold lies below. */
function shareBelow(possible: readonly Weighed[], log: number): number {
  const all = possible.reduce((sum, { weight }) => sum + weight, 0);
  return possible.reduce((sum, one) => sum + one.weight * normalCdf((log - one.log) / STRIPS_DIFFER), 0) / all;
}

function quantile(possible: readonly Weighed[], share: number): number {
  const [low, high] = [possible[0]?.log ?? 0, possible.at(-1)?.log ?? 0];
  // A decade of strain to either side holds all that strips differ by.
  const root = findRoot((log) => shareBelow(possible, log) - share, low - Math.LN10, high + Math.LN10, 1e-12);
  if (!root.ok) throw new RangeError('a share between 0 and 1 of all strips lies below some strain');
  return Math.exp(root.value.value);
}

/**
 * The strain at which it happens to a strip, by what was believed before and by strips that were tried.
 *
 * Thresholds of strips are log-normal about one that is not known; each strip says on which side of its own it was.
 *
 * @param before - mean and standard deviation of the logarithm of the strain [-]
 * @param tried - strains as fractions and whether it happened [-]
 * @returns strains as fractions below which the thresholds of 10, 50 and 90 in 100 strips lie [-]
 *
 * Source: bayes-rule.
 */
export function thresholdBy(before: Normal, tried: readonly Tried<unknown>[]): Threshold {
  const possible = weighed(before, tried);
  return { p10: quantile(possible, 0.1), p50: quantile(possible, 0.5), p90: quantile(possible, 0.9) };
}

/**
 * Strips to which what happened is unlikely by what the others say. Shown, never dropped.
 *
 * @param before - mean and standard deviation of the logarithm of the strain [-]
 * @param tried - strains as fractions and whether it happened [-]
 * @returns their tallies [-]
 *
 * Source: bayes-rule, normal-distribution.
 */
export function oddTried<T>(before: Normal, tried: readonly Tried<T>[]): readonly T[] {
  const least = normalCdf(-oddLimit(tried.length));
  return tried
    .filter((one, i) => {
      const below = shareBelow(weighed(before, tried.toSpliced(i, 1)), Math.log(one.strain));
      return (one.happened ? below : 1 - below) < least;
    })
    .map(({ tally }) => tally);
}
