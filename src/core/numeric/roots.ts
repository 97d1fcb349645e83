import { fail, ok, type Result } from '../result.ts';

export interface Root {
  readonly value: number;
  readonly iterations: number;
  /** f at `value`. */
  readonly residual: number;
}

const MOST_ITERATIONS = 200;

/**
 * A root of a continuous function between two points where its signs differ.
 *
 * Chandrupatla's method: inverse quadratic interpolation while that is safe, otherwise halving, so that it
 * never does much worse than bisection and needs no derivative.
 *
 * @param f - continuous function [-]
 * @param low - one end of the bracket [-], finite
 * @param high - the other end [-], finite
 * @param tolerance - half-width of the bracket at which to stop [-], ≥ 0; round-off is added
 * @returns the root with how it was reached [-]
 *
 * Problems: `no-answer` when the signs at the ends are equal, or a value is not a number.
 *
 * Source: chandrupatla.
 * @example findRoot((x) => x * x - 2, 0, 2, 1e-12).value.value // → 1.41421356
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): Result<Root> {
  // a is the newest point, [a, b] the bracket, c the point that was dropped last.
  let [a, b] = [high, low];
  let [fa, fb] = [f(a), f(b)];
  if (!(fa * fb <= 0)) return noRoot(low, high);
  let share = 0.5;
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (Number.isNaN(fx)) return noRoot(low, high);
    const sameSide = Math.sign(fx) === Math.sign(fa);
    const [c, fc] = sameSide ? [a, fa] : [b, fb];
    if (!sameSide) [b, fb] = [a, fa];
    [a, fa] = [x, fx];
    const [value, residual] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
    const nearest = (tolerance + 2 * Number.EPSILON * Math.abs(value)) / Math.abs(b - a);
    if (residual === 0 || !(nearest < 0.5)) return ok({ value, iterations, residual });
    share = Math.min(1 - nearest, Math.max(nearest, interpolated(a, b, c, fa, fb, fc)));
  }
  return noRoot(low, high);
}

/** Where between a and b to look next, as a share of the way. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const isSafe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!isSafe) return 0.5;
  return ((fa / (fb - fa)) * fc) / (fb - fc) + ((((c - a) / (b - a)) * fa) / (fc - fa)) * (fb / (fc - fb));
}

function noRoot(low: number, high: number): Result<Root> {
  return fail({
    code: 'no-answer',
    message: `no sign change between ${low} and ${high}, so no root can be bracketed there`,
  });
}
