/**
 * The likeliest line through counted lives on logarithmic paper, of which some were still whole when counting stopped:
 *
 *     log10 N = A + B·log10 ε + σ·z
 *
 * What broke says how long it lived, what is still whole that it lives longer than that. Where all broke it is the line of
 * least squares of `lineThrough`, with σ² smaller by the factor (k − 2)/k of greatest likelihood.
 */
import { ascend, type Top } from '../numeric/ascend.ts';
import { fail, ok, type Result } from '../result.ts';
import { likelihoodHill, type LineAt, type LoggedStrip } from './countedLikelihood.ts';
import type { Counted } from './regression.ts';

/** One specimen: what it was flexed to, how often, and whether it was still whole then. */
export interface Tested extends Counted {
  readonly whole: boolean;
}

export interface LikeliestLine {
  /** A and B of the line. */
  readonly intercept: number;
  readonly slope: number;
  /** σ of log10 N about the line, of greatest likelihood: too small by chance, which `likeliestIntervals` makes good. */
  readonly sigma: number;
  /** Logarithm of the likelihood at the top. */
  readonly likelihood: number;
  readonly broke: number;
  /** False where the slope was given and only the level was found. */
  readonly slopeFound: boolean;
  /** Mean log10 ε, and the strips as logarithms about it. */
  readonly middle: number;
  readonly strips: readonly LoggedStrip[];
}

/** Fewer that broke leave nothing to tell the scatter from, beside the line. */
const LEAST_BROKEN = { line: 3, level: 2 } as const;
/** A scatter below this is none: strips on one line to the last figure. In decades of life. */
const NO_SCATTER = 1e-6;

/**
 * Level, slope and scatter of greatest likelihood.
 *
 * Problems: `not-a-number` (a strain or a count that is not above 0), `below-minimum` (fewer than three that broke, or all of
 * those at one strain: then only the level can be found, see `likeliestLevel`), `no-answer` (no scatter to tell).
 *
 * @param tested - strain as a fraction [-], cycles [-] and whether still whole, of each specimen
 * @returns the line in log10 N over log10 ε
 *
 * Source: censored-likelihood.
 */
export function likeliestLine(tested: readonly Tested[]): Result<LikeliestLine> {
  const strains = new Set(tested.filter(({ whole }) => !whole).map(({ strain }) => strain)).size;
  const refused = unusable(tested, LEAST_BROKEN.line);
  if (refused) return refused;
  if (strains < 2) return tooFew('strains at which strips broke', strains, 2);
  return climbed(tested, undefined);
}

/**
 * Level and scatter of greatest likelihood, for a slope that is known from elsewhere: one strain is enough.
 *
 * Problems: as `likeliestLine`, but two that broke are enough, at any strain.
 *
 * @param tested - strain as a fraction [-], cycles [-] and whether still whole, of each specimen
 * @param slope - B [-], any finite number
 * @returns the line in log10 N over log10 ε
 *
 * Source: censored-likelihood.
 */
export function likeliestLevel(tested: readonly Tested[], slope: number): Result<LikeliestLine> {
  return unusable(tested, LEAST_BROKEN.level) ?? climbed(tested, slope);
}

function unusable(tested: readonly Tested[], least: number): Result<never> | undefined {
  const wrong = tested.findIndex(({ strain, cycles }) => !(strain > 0 && cycles > 0 && strain * cycles < Infinity));
  if (wrong >= 0) {
    const message = `Specimen ${wrong + 1} has no strain or no count above 0; leave it out`;
    return fail({ code: 'not-a-number', message, field: `counted[${wrong}]` });
  }
  const broke = tested.filter(({ whole }) => !whole).length;
  return broke < least ? tooFew('strips that broke', broke, least) : undefined;
}

function tooFew(what: string, value: number, limit: number): Result<never> {
  const message = `${limit} ${what} are needed at least, and there ${value === 1 ? 'is' : 'are'} ${value}; count more`;
  return fail({ code: 'below-minimum', message, field: 'counted', value, limit });
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

function climbed(tested: readonly Tested[], given: number | undefined): Result<LikeliestLine> {
  const middle = meanOf(tested.map(({ strain }) => Math.log10(strain)));
  const strips = tested.map(({ strain, cycles, whole }): LoggedStrip => ({
    x: Math.log10(strain) - middle,
    y: Math.log10(cycles),
    whole,
  }));
  const top = topOf(strips, startOf(strips, given), given === undefined ? [0, 1, 2] : [0, 2]);
  const [level = 0, slope = 0, logSigma = 0] = top.at;
  const sigma = Math.exp(logSigma);
  if (!top.rests || !(sigma > NO_SCATTER)) return noScatter();
  return ok({
    intercept: level - slope * middle,
    slope,
    sigma,
    likelihood: top.hill.value,
    broke: strips.filter(({ whole }) => !whole).length,
    slopeFound: given === undefined,
    middle,
    strips,
  });
}

function noScatter(): Result<never> {
  const message =
    'The strips that broke lie on one line to the last figure, so that no scatter can be told; count more';
  return fail({ code: 'no-answer', message, field: 'counted' });
}

/** From the middle of all counts, as if all had broken there. */
function startOf(strips: readonly LoggedStrip[], slope = 0): LineAt {
  const left = strips.map(({ x, y }) => y - slope * x);
  const level = meanOf(left);
  const square = meanOf(left.map((y) => (y - level) ** 2));
  return [level, slope, Math.log(Math.max(Math.sqrt(square), NO_SCATTER))];
}

/**
 * The likeliest line of those that keep some of the numbers.
 *
 * @param strips - logarithms of what was counted [-]
 * @param start - level, slope and ln σ to begin with, and to keep where they are not free [-]
 * @param free - which of the three may change [-]
 * @returns the top [-] and whether it was reached
 *
 * Source: censored-likelihood.
 */
export function topOf(strips: readonly LoggedStrip[], start: LineAt, free: readonly number[]): Top {
  return ascend(
    ([level = 0, slope = 0, logSigma = 0]) => likelihoodHill(strips, [level, slope, logSigma]),
    start,
    free,
  );
}
