/** How much of the variance of a figure each of its inputs makes. */

/** Figures at common points: `b` at one set, `a` at another, `mixed[i]` at the other with input i taken from `b`. */
export interface PickedAndFrozen {
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly mixed: readonly (readonly number[])[];
}

/** Variance, and of each input the share that it makes alone and with others. */
export interface VarianceShares {
  readonly variance: number;
  readonly alone: readonly number[];
  readonly inAll: readonly number[];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Half the mean square of the differences. */
function halfSquares(one: readonly number[], other: readonly number[]): number {
  return mean(one.map((value, k) => (value - (other[k] ?? Number.NaN)) ** 2)) / 2;
}

/**
 * Shares of the variance by inputs that vary independently.
 *
 *     S_i = 1 − ½·mean((f(b) − f(a_i))²)/V      what input i makes alone
 *     T_i = ½·mean((f(a) − f(a_i))²)/V          what it makes alone and with others
 *
 * T is exact for an input that does nothing, where S still carries the noise of all others; and S is never more than T. So
 * S is kept between 0 and T.
 *
 * @param figures - at points a, at points b, and at a with one input of b at a time [any unit]
 * @returns variance in the square of that unit; shares [-], 0 to 1
 *
 * Source: jansen-shares.
 * @example varianceShares({ a: [0, 2], b: [2, 0], mixed: [[2, 0]] }).alone // → [1]
 */
export function varianceShares({ a, b, mixed }: PickedAndFrozen): VarianceShares {
  const all = [...a, ...b];
  const middle = mean(all);
  const variance = mean(all.map((value) => (value - middle) ** 2));
  if (!(variance > 0)) {
    const none = mixed.map(() => 0);
    return { variance: 0, alone: none, inAll: none };
  }
  const inAll = mixed.map((one) => Math.min(1, halfSquares(a, one) / variance));
  const alone = mixed.map((one, i) => Math.min(inAll[i] ?? 0, Math.max(0, 1 - halfSquares(b, one) / variance)));
  return { variance, alone, inAll };
}
