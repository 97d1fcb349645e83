/**
 * A straight line through counted lives on logarithmic paper, with what few counts leave in doubt:
 *
 *     log10 N = A + B·log10 ε
 *
 * Lives are the dependent quantity, as the strain is what is set. Runs that were stopped before they broke do not belong here.
 */
import { fQuantile, studentQuantile } from '../numeric/fDistribution.ts';
import { fail, ok, type Result } from '../result.ts';

/** One specimen: the strain it was flexed to, as a fraction, and the cycles it took to break. */
export interface Counted {
  readonly strain: number;
  readonly cycles: number;
}

/** From here to there. */
export type Interval = readonly [low: number, high: number];

export interface LifeLine {
  /** A and B of the line. */
  readonly intercept: number;
  readonly slope: number;
  /** s of log10 N about the line, with k − 2 degrees of freedom. */
  readonly deviation: number;
  /** Standard deviation of B. */
  readonly slopeError: number;
  /** Share of the spread of log10 N that the line explains, r². */
  readonly explained: number;
  /** Number k of specimens. */
  readonly count: number;
  /** Of the strains: mean of log10 ε, and sum of squares about it. */
  readonly middle: number;
  readonly spread: number;
}

/** Fewer leave nothing to tell the spread from. */
const LEAST_COUNT = 3;

const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

function meanOf(values: readonly number[]): number {
  return sumOf(values) / values.length;
}

/**
 * The line of least squares through counted lives.
 *
 * Problems: `not-a-number` (a strain or a count that is not above 0), `below-minimum` (fewer than three specimens, or all at
 * one strain).
 *
 * @param counted - strain as a fraction [-] and cycles [-] of each specimen, at least three, at two strains or more
 * @returns the line in log10 N over log10 ε, with its spread
 *
 * Source: linear-regression.
 */
export function lineThrough(counted: readonly Counted[]): Result<LifeLine> {
  const wrong = counted.findIndex(({ strain, cycles }) => !(strain > 0 && cycles > 0 && strain * cycles < Infinity));
  if (wrong >= 0) {
    const message = `Specimen ${wrong + 1} has no strain or no count above 0; leave it out`;
    return fail({ code: 'not-a-number', message, field: `counted[${wrong}]` });
  }
  if (counted.length < LEAST_COUNT) return tooFew('specimens', counted.length, LEAST_COUNT);
  const levels = new Set(counted.map(({ strain }) => strain)).size;
  if (levels < 2) return tooFew('different strains', levels, 2);
  const x = counted.map(({ strain }) => Math.log10(strain));
  const y = counted.map(({ cycles }) => Math.log10(cycles));
  const [middle, meanLife] = [meanOf(x), meanOf(y)];
  const spread = sumOf(x.map((value) => (value - middle) ** 2));
  const total = sumOf(y.map((value) => (value - meanLife) ** 2));
  const slope = sumOf(x.map((value, i) => (value - middle) * ((y[i] ?? 0) - meanLife))) / spread;
  const intercept = meanLife - slope * middle;
  const left = sumOf(x.map((value, i) => ((y[i] ?? 0) - intercept - slope * value) ** 2));
  const deviation = Math.sqrt(left / (counted.length - 2));
  const slopeError = deviation / Math.sqrt(spread);
  const explained = total > 0 ? 1 - left / total : 1;
  return ok({ intercept, slope, deviation, slopeError, explained, count: counted.length, middle, spread });
}

function tooFew(what: string, value: number, limit: number): Result<never> {
  const message = `A line needs ${limit} ${what} at least, and there ${value === 1 ? 'is' : 'are'} ${value}; count more`;
  return fail({ code: 'below-minimum', message, field: 'counted', value, limit });
}

/**
 * Intervals in which A and B of the true line lie, each by itself.
 *
 *     A ± t·s·√(1/k + x̄²/Σ(x − x̄)²),   B ± t·s/√Σ(x − x̄)²,   t of Student with k − 2 degrees of freedom
 *
 * @param line - line through counted lives [-]
 * @param confidence - how surely, [-], 0 < confidence < 1
 * @returns both intervals [-]
 *
 * Source: linear-regression.
 */
export function intervalsOf(
  { intercept, slope, deviation, slopeError, count, middle, spread }: LifeLine,
  confidence: number,
): { readonly intercept: Interval; readonly slope: Interval } {
  const t = studentQuantile((1 + confidence) / 2, count - 2);
  const about = deviation * Math.sqrt(1 / count + middle ** 2 / spread);
  const around = (value: number, error: number): Interval => [value - t * error, value + t * error];
  return { intercept: around(intercept, about), slope: around(slope, slopeError) };
}

/**
 * The band in which the whole true line lies, at one strain: a hyperbola about the line.
 *
 *     log10 N = A + B·x ± √(2·F)·s·√(1/k + (x − x̄)²/Σ(x − x̄)²),   F with 2 and k − 2 degrees of freedom
 *
 * It is of the medians: single specimens scatter about it.
 *
 * @param line - line through counted lives [-]
 * @param strain - as a fraction [-], > 0
 * @param confidence - how surely, [-], 0 < confidence < 1
 * @returns median, low and high cycles [-]
 *
 * Source: linear-regression.
 */
export function bandAt(
  { intercept, slope, deviation, count, middle, spread }: LifeLine,
  strain: number,
  confidence: number,
): { readonly median: number; readonly low: number; readonly high: number } {
  const x = Math.log10(strain);
  const half =
    Math.sqrt(2 * fQuantile(confidence, 2, count - 2)) * deviation * Math.sqrt(1 / count + (x - middle) ** 2 / spread);
  const [low, median, high] = [-half, 0, half].map((off) => 10 ** (intercept + slope * x + off)) as [
    number,
    number,
    number,
  ];
  return { low, median, high };
}

/** Whether levels of strain lie on one straight line, judged by how specimens of one level differ. */
export interface LackOfFit {
  readonly ratio: number;
  /** What the ratio stays below, so surely, if the line is straight. */
  readonly limit: number;
}

/**
 * Test of a straight line: how far the means of the levels lie from it, against the scatter within levels.
 *
 *     F = (Σ m_i·(ŷ_i − ȳ_i)²/(l − 2))/(Σ(y − ȳ_i)²/(k − l)),   l levels of m_i specimens
 *
 * Specimens of one level are flexed alike, though their strains may differ by what measuring them does.
 *
 * @param line - line through them [-]
 * @param levels - specimens by level [-], three levels or more, one of them with two specimens or more
 * @param confidence - how surely, [-], 0 < confidence < 1
 * @returns ratio F and its limit [-]; undefined where there are too few levels, or no level with two specimens
 *
 * Source: linear-regression.
 */
export function lackOfFit(
  { intercept, slope }: LifeLine,
  levels: readonly (readonly Counted[])[],
  confidence: number,
): LackOfFit | undefined {
  const logs = levels.map((level) => ({
    x: meanOf(level.map(({ strain }) => Math.log10(strain))),
    y: level.map(({ cycles }) => Math.log10(cycles)),
  }));
  const [above, below] = [levels.length - 2, levels.flat().length - levels.length];
  if (above < 1 || below < 1) return undefined;
  const between = sumOf(logs.map(({ x, y }) => y.length * (intercept + slope * x - meanOf(y)) ** 2));
  const within = sumOf(logs.flatMap(({ y }) => y.map((value) => (value - meanOf(y)) ** 2)));
  return { ratio: between / above / (within / below), limit: fQuantile(confidence, above, below) };
}
