/** What counted strips leave of the doubt about a curve: the prior times their likelihood, summed over a grid. */
import { logLikelihood, likelihoodHill, type LineAt, type LoggedStrip } from '../life/countedLikelihood.ts';
import { ascend, type Hill } from '../numeric/ascend.ts';
import { choleskyRoot, inverseBy, type Matrix } from '../numeric/smallMatrix.ts';
import type { LifePrior } from './lifePrior.ts';

/** A strip as the curve of the prior sees it. */
export interface SeenStrip {
  /** log10 of the life that the prior foretells for it. */
  readonly foretold: number;
  /** log10 of the flexes counted. */
  readonly counted: number;
  readonly whole: boolean;
}

/** One curve that may be the true one, with how likely it is; all weights add up to 1. */
export interface Possible {
  readonly weight: number;
  readonly level: number;
  readonly slope: number;
  readonly sigma: number;
}

export interface LifePosterior {
  readonly pivot: number;
  /** Means of level and slope, their variances, and what varies together. */
  readonly level: number;
  readonly slope: number;
  readonly levelVariance: number;
  readonly slopeVariance: number;
  readonly covariance: number;
  /** Root mean square of σ. */
  readonly scatter: number;
  readonly possible: readonly Possible[];
}

/**
 * Standard deviation of ln σ before anything is counted: nine prints in ten scatter between 0.6 and 1.6 times as much as the row
 * says. Scatters of printed fatigue specimens as published differ by about that much; our judgement, no source.
 */
const SCATTER_DOUBT = 0.3;
/**
 * Decades of life stay at least so long when a curve is stretched. A curve that falls three times as steeply as that of the
 * row is of another plastic, and one that rises of none.
 */
const LEAST_STRETCH = 0.35;
/** Keeps the top of the hill off the edge of what is allowed while it is looked for; no weight knows of it. */
const EDGE = 0.05;
/**
 * Specimens never scatter by less than this share of what the row says, which is seven standard deviations below it: dozens of
 * counts that are alike to the last flex would else ask for none at all, and no curve but one would be possible.
 */
const LEAST_SCATTER = 0.1;
/** How steeply the hill falls below that while its top is looked for, in ln σ: hundreds of such counts push no farther. */
const WALL = 0.002;
/** The grid: every so many standard deviations, out to so many. A sum over a bell in steps of one is right to e^(−2π²), 3·10⁻⁹. */
const GRID = { step: 1, reach: 6 } as const;

const ROOM = (slope: number): number => 1 + slope - LEAST_STRETCH;

/** How far ln σ lies below the least scatter; nought above it. */
const below = ({ scatter }: LifePrior, logSigma: number): number =>
  Math.max(0, Math.log(LEAST_SCATTER * scatter) - logSigma);

/** Centred so that the mean square of σ is what the row says: then the bands of a row do not jump at the first count. */
const middleOf = ({ scatter }: LifePrior): number => Math.log(scatter) - SCATTER_DOUBT ** 2;

function priorLog(prior: LifePrior, [level, slope, logSigma]: LineAt): number {
  const off = (logSigma - middleOf(prior)) / SCATTER_DOUBT;
  return -0.5 * ((level / prior.level) ** 2 + (slope / prior.slope) ** 2 + off * off);
}

function hillOf(prior: LifePrior, strips: readonly LoggedStrip[]): (place: readonly number[]) => Hill {
  const precision = [prior.level ** -2, prior.slope ** -2, SCATTER_DOUBT ** -2];
  return ([level = 0, slope = 0, logSigma = 0]) => {
    const line: LineAt = [level, slope, logSigma];
    const [room, under] = [ROOM(slope), below(prior, logSigma)];
    const { value, gradient, curvature } = likelihoodHill(strips, line);
    const off = [level, slope, logSigma - middleOf(prior)];
    const edge = EDGE * Math.log(room) - 0.5 * (under / WALL) ** 2;
    const steep = [0, EDGE / room, under / WALL ** 2];
    const bends = [0, EDGE / room ** 2, under > 0 ? WALL ** -2 : 0];
    return {
      value: room > 0 ? value + priorLog(prior, line) + edge : -Infinity,
      gradient: gradient.map((g, i) => g - (precision[i] ?? 0) * (off[i] ?? 0) + (steep[i] ?? 0)),
      curvature: curvature.map((row, i) =>
        row.map((bend, j) => bend - (i === j ? (precision[i] ?? 0) + (bends[i] ?? 0) : 0)),
      ),
    };
  };
}

/** Whole steps within a ball, once for all. */
const BALL: readonly (readonly number[])[] = (() => {
  const most = Math.floor(GRID.reach / GRID.step);
  const steps = Array.from({ length: 2 * most + 1 }, (_, i) => (i - most) * GRID.step);
  const all = steps.flatMap((u) => steps.flatMap((v) => steps.map((w) => [u, v, w])));
  return all.filter(([u = 0, v = 0, w = 0]) => u * u + v * v + w * w <= GRID.reach ** 2);
})();

/** A grid that is as wide in each direction as what it is to sum. */
interface Scaled {
  readonly centre: readonly number[];
  readonly root: Matrix;
}

function weighed(prior: LifePrior, strips: readonly LoggedStrip[], { centre, root }: Scaled): readonly Possible[] {
  const lines = BALL.map((steps) =>
    centre.map((middle, i) => steps.reduce((sum, u, j) => sum + (root[i]?.[j] ?? 0) * u, middle)),
  ) as unknown as readonly LineAt[];
  const allowed = lines.filter(([, slope, logSigma]) => ROOM(slope) > 0 && below(prior, logSigma) === 0);
  const logs = allowed.map((line) => logLikelihood(strips, line) + priorLog(prior, line));
  const top = Math.max(...logs);
  const sum = logs.reduce((total, log) => total + Math.exp(log - top), 0);
  return allowed.map(([level, slope, logSigma], k) => ({
    weight: Math.exp((logs[k] ?? 0) - top) / sum,
    level,
    slope,
    sigma: Math.exp(logSigma),
  }));
}

type Figures = readonly [number, number, number];

function momentsOf(possible: readonly Possible[]): { readonly mean: Figures; readonly spread: Matrix } {
  const figures = ({ level, slope, sigma }: Possible): Figures => [level, slope, Math.log(sigma)];
  const mean: [number, number, number] = [0, 0, 0];
  for (const one of possible) figures(one).forEach((value, i) => (mean[i] = (mean[i] ?? 0) + one.weight * value));
  const spread = [0, 1, 2].map(() => [0, 0, 0]);
  for (const one of possible) {
    const off = figures(one).map((value, i) => value - (mean[i] ?? 0));
    for (const [i, row] of spread.entries()) {
      for (const j of [0, 1, 2]) row[j] = (row[j] ?? 0) + one.weight * (off[i] ?? 0) * (off[j] ?? 0);
    }
  }
  return { mean, spread };
}

/** First about the top, by its curvature; then about the mean, by the spread itself, as the hill may lean. */
function summed(prior: LifePrior, strips: readonly LoggedStrip[]): readonly Possible[] {
  const top = ascend(hillOf(prior, strips), [0, 0, middleOf(prior)]);
  const bowl = choleskyRoot(top.hill.curvature.map((row) => row.map((bend) => -bend)));
  const root = bowl && choleskyRoot(inverseBy(bowl));
  const first = { centre: top.at, root: root ?? priorRoot(prior) };
  const { mean, spread } = momentsOf(weighed(prior, strips, first));
  return weighed(prior, strips, { centre: mean, root: choleskyRoot(spread) ?? first.root });
}

function priorRoot({ level, slope }: LifePrior): Matrix {
  return [
    [level, 0, 0],
    [0, slope, 0],
    [0, 0, SCATTER_DOUBT],
  ];
}

/**
 * What is believed of a curve once strips have been counted.
 *
 *     log10 N = x + δ(x) + σ·z,   p(level, slope, ln σ | counts) ∝ prior·Π φ or Q
 *
 * with x the decades that the prior foretells, δ(x) = level + slope·(x − pivot), and ln σ normal with a standard deviation of 0.3.
 * The grid is centred and scaled on what it sums, so that hundreds of strips that leave next to no doubt are resolved as well.
 *
 * @param prior - what was believed before, in decades of life [-]
 * @param strips - what was counted, in decades of life [-]; none gives the prior back
 * @returns means, variances and scatter in decades of life [-], and the curves that they were summed over
 *
 * Source: bayes-rule, censored-likelihood.
 */
export function lifePosterior(prior: LifePrior, strips: readonly SeenStrip[]): LifePosterior {
  const { pivot } = prior;
  const logged = strips.map(({ foretold, counted, whole }): LoggedStrip => ({
    x: foretold - pivot,
    y: counted - foretold,
    whole,
  }));
  return { pivot, ...figuresOf(summed(prior, logged)) };
}

function figuresOf(possible: readonly Possible[]): Omit<LifePosterior, 'pivot'> {
  const { mean, spread } = momentsOf(possible);
  const [[levelVariance = 0, covariance = 0] = [], [, slopeVariance = 0] = []] = spread;
  const square = possible.reduce((sum, { weight, sigma }) => sum + weight * sigma * sigma, 0);
  const [level, slope] = mean;
  return { level, slope, levelVariance, slopeVariance, covariance, scatter: Math.sqrt(square), possible };
}
