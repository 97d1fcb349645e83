import { sampleCube } from '../../src/core/numeric/sampling.ts';

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * Shares of the variance of a figure by picking and freezing inputs, after Jansen 1999 (`jansen-shares`): needs no thought
 * about what the figure looks like, and many points.
 *
 *     S_i = 1 − ½·mean((f(b) − f(a_i))²)/V      what input i makes alone
 *     T_i = ½·mean((f(a) − f(a_i))²)/V          what it makes alone and with others
 */
export function pickFreeze(figure: (point: readonly number[]) => number, inputs: number, samples = 4096) {
  const points = sampleCube('quasi-random', samples, 2 * inputs, 1).sets.flat();
  const half = (from: number) => points.map((point) => point.slice(from, from + inputs));
  const [a, b] = [half(0), half(inputs)];
  const [atA, atB] = [a.map(figure), b.map(figure)];
  const all = [...atA, ...atB];
  const middle = mean(all);
  const variance = mean(all.map((value) => (value - middle) ** 2));
  const apart = (one: readonly number[], other: readonly number[]) =>
    mean(one.map((value, k) => (value - (other[k] ?? Number.NaN)) ** 2)) / 2 / variance;
  const mixed = Array.from({ length: inputs }, (_, i) =>
    a.map((point, k) => figure(point.map((share, j) => (j === i ? (b[k]?.[j] ?? 0) : share)))),
  );
  return { variance, alone: mixed.map((one) => 1 - apart(atB, one)), inAll: mixed.map((one) => apart(atA, one)) };
}
