/** What strips that have not been flexed yet are likely to tell of a curve: an average over all curves that may be the true one. */
import { normalCdf } from '../numeric/normal.ts';
import { hazard } from '../numeric/normalTail.ts';
import type { LifePosterior, Possible } from './lifePosterior.ts';

/** Fresh strips alike that are to be flexed until they break or until counting stops. */
export interface Planned {
  /** log10 of the life that the prior foretells. */
  readonly foretold: number;
  /** log10 of the count at which it stops. */
  readonly stop: number;
  readonly strips: number;
}

/** Curves less likely than this change no average. */
const TOO_RARE = 1e-5;

/**
 * What a fresh strip is expected to tell, against one that broke.
 *
 *     i = 1 − Q + Q·h·(h − z),   h = φ/Q
 *
 * with z where counting stops; 1 where it surely breaks, next to nothing where it surely does not.
 *
 * @param stop - z [σ]
 * @returns share [-], 0 to 1
 *
 * Source: censored-likelihood.
 * @example expectedTold(0) // → 0.818309886
 */
export function expectedTold(stop: number): number {
  const [whole, h] = [normalCdf(-stop), hazard(stop)];
  return 1 - whole + whole * h * (h - stop);
}

/** Variance of δ at a place for one possible curve, after what it would make the strips tell. */
function varianceAfter(
  { level, slope, sigma }: Possible,
  posterior: LifePosterior,
  planned: readonly Planned[],
  x: number,
): number {
  const { levelVariance: a, covariance: c, slopeVariance: b, pivot } = posterior;
  const det = a * b - c * c;
  let [ll, ls, ss] = [b / det, -c / det, a / det];
  for (const { foretold, stop, strips } of planned) {
    const away = foretold - pivot;
    const told = (strips * expectedTold((stop - foretold - level - slope * away) / sigma)) / sigma ** 2;
    ll += told;
    ls += told * away;
    ss += told * away * away;
  }
  const off = x - pivot;
  return (ss - 2 * ls * off + ll * off * off) / (ll * ss - ls * ls);
}

/**
 * Doubt of a curve at one life that is expected to be left once strips have been flexed.
 *
 *     E(s²) = Σ w·(h·(V⁻¹ + Σ n·i/σ²·h_k·h_kᵀ)⁻¹·hᵀ),   h = (1, x − pivot)
 *
 * over all curves that may be the true one, each with its likelihood w. The strips tell as much as a normal law would, which is
 * exact where all break and σ is known. Of strips that have survived for long it is not: see `varianceGoingOn`.
 *
 * @param posterior - what is believed now, in decades of life [-]
 * @param planned - fresh strips to be flexed, in decades of life [-]
 * @param x - log10 of the life that the prior foretells for the joint [-]
 * @returns variance in decades² [-]
 *
 * Source: bayes-rule, censored-likelihood.
 */
export function expectedVariance(posterior: LifePosterior, planned: readonly Planned[], x: number): number {
  const likely = posterior.possible.filter(({ weight }) => weight > TOO_RARE);
  const all = likely.reduce((sum, { weight }) => sum + weight, 0);
  return likely.reduce((sum, one) => sum + (one.weight / all) * varianceAfter(one, posterior, planned, x), 0);
}

/**
 * Doubt of a curve at one life as it is.
 *
 * @param posterior - what is believed, in decades of life [-]
 * @param x - log10 of the life that the prior foretells [-]
 * @returns mean of δ in decades, and its variance in decades² [-]
 *
 * Source: bayes-rule.
 */
export function believedAt(
  { level, slope, levelVariance, covariance, slopeVariance, pivot }: LifePosterior,
  x: number,
): { readonly shift: number; readonly variance: number } {
  const away = x - pivot;
  return {
    shift: level + slope * away,
    variance: levelVariance + 2 * covariance * away + slopeVariance * away * away,
  };
}

/** Pieces in which flexes are summed. */
const PARTS = 64;

/**
 * Flexes that are expected to be counted of one strip.
 *
 *     n = ∫ Q(N)/Q(N₀) dN from N₀ to where counting stops
 *
 * @param from - N₀, flexes behind it [-], ≥ 0
 * @param stop - flexes at which counting stops [-], > N₀
 * @param middle - log10 of the median life [-]
 * @param sigma - standard deviation of log10 N, all doubt in it [-], > 0
 * @returns flexes [-]
 *
 * Source: normal-distribution.
 * @example expectedFlexes(0, 1000, 6, 0.5) // → 1000.0
 */
export function expectedFlexes(from: number, stop: number, middle: number, sigma: number): number {
  const alive = (count: number) => (count > 0 ? normalCdf((middle - Math.log10(count)) / sigma) : 1);
  const step = (stop - from) / PARTS;
  const counts = Array.from({ length: PARTS }, (_, i) => from + (i + 0.5) * step);
  return (step * counts.reduce((sum, count) => sum + alive(count), 0)) / Math.max(Number.MIN_VALUE, alive(from));
}
