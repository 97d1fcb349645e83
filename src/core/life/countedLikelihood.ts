/**
 * How likely counted lives are, for a straight line through their logarithms with normal scatter about it:
 *
 *     y = level + slope·x + σ·z
 *
 * A strip that broke gives the density of its life, one that was still whole the share that lives longer.
 */
import type { Hill } from '../numeric/ascend.ts';
import { hazard, logTail } from '../numeric/normalTail.ts';

/** One strip: where on the line, logarithm of its count, and whether it was still whole then. */
export interface LoggedStrip {
  readonly x: number;
  readonly y: number;
  readonly whole: boolean;
}

/** Level at x = 0, slope, and the natural logarithm of σ: so that every number is allowed. */
export type LineAt = readonly [level: number, slope: number, logSigma: number];

const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

/**
 * Logarithm of the likelihood.
 *
 *     ln L = Σ_broke (−z²/2 − ln σ − ½·ln 2π) + Σ_whole ln Q(z),   z = (y − level − slope·x)/σ
 *
 * @param strips - logarithms of what was counted [-]
 * @param line - level, slope and ln σ [-]
 * @returns ln L, of the density of y [-]
 *
 * Source: censored-likelihood.
 * @example logLikelihood([{ x: 0, y: 0, whole: false }], [0, 0, 0]) // → -0.918938533
 */
export function logLikelihood(strips: readonly LoggedStrip[], [level, slope, logSigma]: LineAt): number {
  const per = Math.exp(-logSigma);
  let sum = 0;
  for (const { x, y, whole } of strips) {
    const z = (y - level - slope * x) * per;
    sum += whole ? logTail(z) : -0.5 * z * z - logSigma - HALF_LOG_TWO_PI;
  }
  return sum;
}

/** What one strip adds to slopes and curvature: by its place m on the line, and by ln σ. */
interface Terms {
  readonly byPlace: number;
  readonly byScatter: number;
  readonly placePlace: number;
  readonly placeScatter: number;
  readonly scatterScatter: number;
}

function termsOf(z: number, whole: boolean, per: number): Terms {
  const h = whole ? hazard(z) : z;
  const [first, second] = [-h, whole ? -h * (h - z) : -1];
  return {
    byPlace: -first * per,
    byScatter: -z * first - (whole ? 0 : 1),
    placePlace: second * per * per,
    placeScatter: (first + z * second) * per,
    scatterScatter: z * first + z * z * second,
  };
}

/**
 * The same with its first and second derivatives by level, slope and ln σ.
 *
 * @param strips - logarithms of what was counted [-]
 * @param line - level, slope and ln σ [-]
 * @returns height, slope and curvature of ln L [-]
 *
 * Source: censored-likelihood.
 */
export function likelihoodHill(strips: readonly LoggedStrip[], line: LineAt): Hill {
  const [level, slope, logSigma] = line;
  const per = Math.exp(-logSigma);
  let [g0, g1, g2] = [0, 0, 0];
  let [c00, c01, c11, c02, c12, c22] = [0, 0, 0, 0, 0, 0];
  for (const { x, y, whole } of strips) {
    const terms = termsOf((y - level - slope * x) * per, whole, per);
    g0 += terms.byPlace;
    g1 += x * terms.byPlace;
    g2 += terms.byScatter;
    c00 += terms.placePlace;
    c01 += x * terms.placePlace;
    c11 += x * x * terms.placePlace;
    c02 += terms.placeScatter;
    c12 += x * terms.placeScatter;
    c22 += terms.scatterScatter;
  }
  const curvature = [
    [c00, c01, c02],
    [c01, c11, c12],
    [c02, c12, c22],
  ];
  return { value: logLikelihood(strips, line), gradient: [g0, g1, g2], curvature };
}
