/** Quantiles of F and Student's t, for what few counts say of a line through them. */
import { findRoot } from './roots.ts';

/** ln Γ(x): Stirling's series where it is good to the last figures, reached by x·Γ(x) = Γ(x + 1). */
function logGamma(x: number): number {
  let [at, product] = [x, 1];
  for (; at < 15; at++) product *= at;
  const inverse = 1 / (at * at);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / at;
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series - Math.log(product);
}

/** Steps that its continued fraction takes at most; a hundred are enough for thousands of degrees of freedom. */
const MOST_STEPS = 1000;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function, the share of a beta distribution below x.
 *
 *     I_x(a, b) = x^a·(1 − x)^b/(a·B(a, b))·1/(1 + d₁/(1 + d₂/(1 + …)))
 *
 * The continued fraction by Lentz's method; above (a + 1)/(a + b + 2) by I_x(a, b) = 1 − I_{1−x}(b, a).
 *
 * @param x - upper end [-], 0 to 1
 * @param a - first shape [-], > 0
 * @param b - second shape [-], > 0
 * @returns share [-], 0 to 1
 *
 * Source: f-distribution.
 * @example incompleteBeta(0.5, 2, 3) // → 0.6875
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0 || x >= 1) return x <= 0 ? 0 : 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  let [c, d] = [1, 1 / awayFromZero(1 - ((a + b) * x) / (a + 1))];
  let fraction = d;
  for (let m = 1; m <= MOST_STEPS; m++) {
    for (const term of termsOf(m, x, a, b)) {
      d = 1 / awayFromZero(1 + term * d);
      c = awayFromZero(1 + term / c);
      fraction *= c * d;
    }
    if (Math.abs(c * d - 1) < Number.EPSILON) break;
  }
  return (Math.exp(front) * fraction) / a;
}

/** The m-th even and odd numerator of the fraction. */
function termsOf(m: number, x: number, a: number, b: number): readonly [number, number] {
  const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
  return [even, (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))];
}

function awayFromZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}

/**
 * Value of F below which a share lies.
 *
 * Solved for ln f on the smaller of the two tails, so that it keeps its figures.
 *
 * @param share - share below [-], 0 < share < 1
 * @param above - degrees of freedom of the numerator [-], > 0
 * @param below - of the denominator [-], > 0
 * @returns f [-], > 0
 *
 * Source: f-distribution.
 * @example fQuantile(0.95, 2, 7) // → 4.737414
 */
export function fQuantile(share: number, above: number, below: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share strictly between 0 and 1 is needed, not ${share}`);
  const isUpper = share > 0.5;
  const tail = (logF: number) => {
    const ratio = (above / below) * Math.exp(logF);
    return isUpper
      ? incompleteBeta(1 / (1 + ratio), below / 2, above / 2)
      : incompleteBeta(ratio / (1 + ratio), above / 2, below / 2);
  };
  const wanted = Math.log(isUpper ? 1 - share : share);
  const found = findRoot((logF) => Math.log(Math.max(tail(logF), TINY)) - wanted, -80, 80, 1e-14);
  if (!found.ok)
    throw new RangeError(`no F with ${above} and ${below} degrees of freedom has a share of ${share} below`);
  return Math.exp(found.value.value);
}

/**
 * Value of Student's t below which a share lies: the square root of F with one degree of freedom above.
 *
 * @param share - share below [-], 0 < share < 1
 * @param freedom - degrees of freedom [-], > 0
 * @returns t [-]
 *
 * Source: f-distribution.
 * @example studentQuantile(0.975, 7) // → 2.364624
 */
export function studentQuantile(share: number, freedom: number): number {
  if (share === 0.5) return 0;
  const both = Math.abs(2 * share - 1);
  return Math.sign(share - 0.5) * Math.sqrt(fQuantile(both, 1, freedom));
}
