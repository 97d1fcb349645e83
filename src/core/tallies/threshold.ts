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

/** The threshold of a single strip, as strains below which it lies, and strips that are at odds with the others. */
export interface Threshold<T> {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  readonly odd: readonly T[];
}

const STEPS = 801;
/** So many standard deviations of what was believed before are looked at. */
const REACH = 6;
/** A strip that cannot be so by any threshold must not make all of them impossible. */
const LEAST_CHANCE = 1e-9;
/** Thresholds less likely than this beside the likeliest change no share. */
const TOO_RARE = 1e-15;

/** The logarithms of the strains that are looked at, and how likely each was before, as a logarithm. */
interface Grid {
  readonly logs: readonly number[];
  readonly before: readonly number[];
}

function gridOf({ mean, sigma }: Normal): Grid {
  const zs = Array.from({ length: STEPS }, (_, i) => REACH * ((2 * i) / (STEPS - 1) - 1));
  return { logs: zs.map((z) => mean + z * sigma), before: zs.map((z) => -(z ** 2) / 2) };
}

/** Beyond so many standard deviations it is all strips or none, far within the least chance. */
const SURE = 9;

/** For each threshold of the grid, the share of strips that a strain is above, and how likely it is as a logarithm that it was so. */
interface Told {
  readonly shares: Float64Array;
  readonly said: Float64Array;
}

function toldOf({ strain, happened }: Tried<unknown>, { logs }: Grid): Told {
  const shares = Float64Array.from(logs, (log) => {
    const z = (Math.log(strain) - log) / STRIPS_DIFFER;
    return Math.abs(z) < SURE ? normalCdf(z) : Number(z > 0);
  });
  const said = shares.map((share) => Math.log(Math.max(LEAST_CHANCE, happened ? share : 1 - share)));
  return { shares, said };
}

/** Strips that were bent alike and looked alike share one table, so that hundreds over a few bars cost what a few do. */
function allTold(tried: readonly Tried<unknown>[], grid: Grid): readonly Told[] {
  const known = new Map<string, Told>();
  return tried.map((one) => {
    const key = `${one.strain} ${one.happened}`;
    const told = known.get(key) ?? toldOf(one, grid);
    known.set(key, told);
    return told;
  });
}

/** What is believed of each threshold, as logarithms. */
function believedLogs({ before }: Grid, told: readonly Told[]): Float64Array {
  const sums = Float64Array.from(before);
  for (const { said } of told) for (let k = 0; k < sums.length; k += 1) sums[k] = (sums[k] ?? 0) + (said[k] ?? 0);
  return sums;
}

/** Weights that add up to one. Of hundreds of strips every threshold is so unlikely that only beside the likeliest it is a number. */
function weightsOf(logs: Float64Array): Float64Array {
  const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  const weights = logs.map((log) => Math.exp(log - top));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => (weight > TOO_RARE ? weight / all : 0));
}

/** Share of strips whose threshold lies below. */
function shareBelow(weights: Float64Array, { logs }: Grid, log: number): number {
  return weights.reduce(
    (sum, weight, k) => (weight > 0 ? sum + weight * normalCdf((log - (logs[k] ?? 0)) / STRIPS_DIFFER) : sum),
    0,
  );
}

function quantile(weights: Float64Array, grid: Grid, share: number): number {
  const [low, high] = [grid.logs[0] ?? 0, grid.logs.at(-1) ?? 0];
  // A decade of strain to either side holds all that strips differ by.
  const root = findRoot((log) => shareBelow(weights, grid, log) - share, low - Math.LN10, high + Math.LN10, 1e-12);
  if (!root.ok) throw new RangeError('a share between 0 and 1 of all strips lies below some strain');
  return Math.exp(root.value.value);
}

/** Strips to which what happened is unlikely by what the others say. Shown, never dropped. */
function oddAmong<T>(tried: readonly Tried<T>[], told: readonly Told[], logs: Float64Array): readonly T[] {
  const least = normalCdf(-oddLimit(Math.max(1, tried.length)));
  return tried
    .filter(({ happened }, i) => {
      const { shares = logs, said = logs } = told[i] ?? {};
      const others = weightsOf(logs.map((log, k) => log - (said[k] ?? 0)));
      const below = others.reduce((sum, weight, k) => sum + weight * (shares[k] ?? 0), 0);
      return (happened ? below : 1 - below) < least;
    })
    .map(({ tally }) => tally);
}

/**
 * The strain at which it happens to a strip, by what was believed before and by strips that were tried.
 *
 * Thresholds of strips are log-normal about one that is not known; each strip says on which side of its own it was.
 *
 * @param before - mean and standard deviation of the logarithm of the strain [-]
 * @param tried - strains as fractions and whether it happened [-]
 * @returns strains as fractions below which the thresholds of 10, 50 and 90 in 100 strips lie [-], and the tallies that are at odds
 *   with the others
 *
 * Source: bayes-rule, normal-distribution.
 */
export function thresholdBy<T>(before: Normal, tried: readonly Tried<T>[]): Threshold<T> {
  const grid = gridOf(before);
  const told = allTold(tried, grid);
  const logs = believedLogs(grid, told);
  const weights = weightsOf(logs);
  const below = (share: number) => quantile(weights, grid, share);
  return { p10: below(0.1), p50: below(0.5), p90: below(0.9), odd: oddAmong(tried, told, logs) };
}
