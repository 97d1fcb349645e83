/** The strain–life curve of a row as counted strips correct it. */
import { doubtSigma } from '../life/scatter.ts';
import { lifeAtStrain } from '../life/strainLife.ts';
import { CURVE_LIMITS, SUREST_LIMITS } from '../material/ownLimits.ts';
import type { FlexTally } from '../material/tally.ts';
import type { Filament, StrainLifeCurve } from '../material/types.ts';
import { fail, ok, type Result } from '../result.ts';
import { equivalentOf, flexStrain } from './flexStrain.ts';
import type { CountedStrip, LearnedLife } from './learned.ts';
import { lifePosterior, type LifePosterior, type SeenStrip } from './lifePosterior.ts';
import { lifePriorOf, type LifePrior } from './lifePrior.ts';
import { isOddBy, offAll, offOthers } from './oddStrips.ts';

export interface LifeLearned {
  readonly life: StrainLifeCurve;
  readonly told: LearnedLife;
}

/** What broke at once counts as half a flex: nought has no logarithm. */
const LEAST_COUNT = 0.5;
/** A strip foretold to live less than this counts as foretold so. */
const LEAST_FORETOLD = 0.01;
/** Broken strips tell how a curve falls when there are so many of them, foretold so many decades apart. Our judgement. */
const TELLS_SLOPE = { strips: 3, decades: 1 } as const;

interface Usable {
  readonly tally: FlexTally;
  readonly strain: number;
  readonly equivalent: number;
  readonly seen: SeenStrip;
}

/**
 * Decades of the life that a curve foretells for a strain; also past the strain that breaks at once, where the curve goes on on paper.
 *
 * @param equivalent - equivalent strain as a fraction [-], > 0
 * @param life - curve of the prior [-]
 * @returns log10 N [-], −2 to 12
 *
 * Source: strain-life.
 * @example foretoldBy(0.05, { A: 0.03969, b: -0.13, B: 2.5679, c: -0.5 }) // → 3.385603
 */
export function foretoldBy(equivalent: number, life: Pick<StrainLifeCurve, 'A' | 'b' | 'B' | 'c'>): number {
  const endless = { ...life, firstFlexBreakStrain: Infinity };
  return Math.log10(Math.max(LEAST_FORETOLD, lifeAtStrain(equivalent, endless)));
}

/**
 * Decades of a count.
 *
 * @param cycles - flexes [-], ≥ 0
 * @returns log10 N [-]; nought counts as half a flex
 *
 * Source: strain-life.
 * @example countedOf(1000) // → 3
 */
export function countedOf(cycles: number): number {
  return Math.log10(Math.max(LEAST_COUNT, cycles));
}

/** Nothing where a figure is none: `checkTally` says so where it is entered. */
function usable(tally: FlexTally, prior: Filament): readonly Usable[] {
  const { peak: strain } = flexStrain(tally);
  const equivalent = equivalentOf(tally, prior);
  if (!(equivalent > 0 && equivalent < Infinity && tally.cycles >= 0 && tally.cycles < Infinity)) return [];
  const counted = countedOf(tally.cycles);
  const seen = { foretold: foretoldBy(equivalent, prior.life), counted, whole: tally.ended === 'whole' };
  return [{ tally, strain, equivalent, seen }];
}

/**
 * What flexed strips say of a row, by what was believed before.
 *
 * @param prior - row whose figures stand where nothing was tested [-]
 * @param flexes - strips, those set aside left out [-]
 * @returns what is believed, before and now, in decades of life [-]
 *
 * Source: bayes-rule.
 */
export function believedOf(
  prior: Filament,
  flexes: readonly FlexTally[],
): { readonly before: LifePrior; readonly now: LifePosterior } {
  const before = lifePriorOf(prior.life);
  const strips = flexes.filter(({ leftOut }) => !leftOut).flatMap((tally) => usable(tally, prior));
  return {
    before,
    now: lifePosterior(
      before,
      inOrder(strips).map(({ seen }) => seen),
    ),
  };
}

/** Always summed in one order, so that the order of entry does not change the last figure. */
function inOrder(strips: readonly Usable[]): readonly Usable[] {
  return strips.toSorted(
    ({ seen: one }, { seen: other }) =>
      one.foretold - other.foretold || one.counted - other.counted || Number(one.whole) - Number(other.whole),
  );
}

/**
 * The curve of a row, corrected by strips that were flexed until they broke or until counting stopped.
 *
 * What they move is the decades x of life that the row foretells, as a straight line δ(x), and how specimens scatter
 * (`lifePriorOf`, `lifePosterior`). A straight line in decades keeps the form of the curve:
 *
 *     log10 N′ = α + β·log10 N,   b′ = b/β,   A′ = A·(2^(1 − 1/β)·10^(−α/β))^b,   the same for B and c
 *
 * Doubt is what is left of that of δ: least at `surestLife`, where level and slope are independent, and from there
 * √(s² + (k·decades)²), which is the variance of a straight line and so exact. Where that life lies outside 1 to 10⁷ the nearest
 * end stands for it, and k is such that the mean variance over these decades stays.
 * The strain that breaks on the first flex stays, as strips that live say nothing of it.
 *
 * Problems: `no-answer` where the counts ask for a curve that no plastic has.
 *
 * @param prior - row whose figures stand where nothing was tested [-]
 * @param flexes - all strips; those set aside are told and not counted, as are none with figures that are no numbers [-]
 * @returns the curve and what was learned; undefined where nothing counts
 *
 * Source: bayes-rule, strain-life.
 */
export function learnLife(prior: Filament, flexes: readonly FlexTally[]): Result<LifeLearned | undefined> {
  const all = flexes.flatMap((tally) => usable(tally, prior));
  const strips = inOrder(all.filter(({ tally }) => !tally.leftOut));
  if (strips.length === 0) return ok(undefined);
  const before = lifePriorOf(prior.life);
  const seen = strips.map((strip) => strip.seen);
  const now = lifePosterior(before, seen);
  const life = curveBy(prior.life, now, strips);
  const refused = CURVE_LIMITS_KEPT.find((name) => !isWithin(life[name], CURVE_LIMITS[name]));
  if (refused) return noSuchCurve(refused, life[refused]);
  const offs = new Map(offOthers(before, seen, now).map((off, i) => [strips[i]?.tally, off] as const));
  const told = all.map(({ tally, strain, equivalent, seen: own }): CountedStrip => {
    const off = offs.get(tally) ?? offAll(own, now);
    return { tally, strain, equivalent, off, isOdd: isOddBy(off, own.whole, strips.length) };
  });
  return ok({ life, told: toldOf(told, strips, now, life) });
}

const CURVE_LIMITS_KEPT = ['A', 'b', 'B', 'c'] as const;

function isWithin(value: number, { min, max }: { readonly min: number; readonly max: number }): boolean {
  return value >= min && value <= max;
}

function noSuchCurve(name: 'A' | 'b' | 'B' | 'c', value: number): Result<never> {
  const { what, min, max } = CURVE_LIMITS[name];
  const message = `These counts ask for a curve that no plastic has (${what} ${value.toPrecision(3)}, possible ${min} to ${max}); look again at bends, thicknesses and counts`;
  return fail({ code: 'no-answer', message, field: 'tallies', value, limit: value > max ? max : min });
}

function toldOf(
  strips: readonly CountedStrip[],
  counted: readonly Usable[],
  { pivot, level, slope }: LifePosterior,
  { surestLife = 1 }: StrainLifeCurve,
): LearnedLife {
  const broken = counted.filter(({ seen }) => !seen.whole).map(({ seen }) => seen.foretold);
  const apart = Math.max(...broken) - Math.min(...broken);
  const tellsSlope = broken.length >= TELLS_SLOPE.strips && apart >= TELLS_SLOPE.decades;
  const stretch = 1 + slope;
  const foretold = (Math.log10(surestLife) - level + slope * pivot) / stretch;
  return {
    strips,
    broke: broken.length,
    whole: counted.length - broken.length,
    taught: tellsSlope ? 'level and slope' : 'level',
    shift: Math.log10(surestLife) - foretold,
    stretch,
  };
}

/** The decades in which joints live. */
const LIVES = { from: 0, to: 7 } as const;

function doubtBy({ pivot, level, slope, levelVariance, slopeVariance, covariance }: LifePosterior) {
  const stretch = 1 + slope;
  const surest = pivot - covariance / slopeVariance;
  const least = levelVariance - covariance ** 2 / slopeVariance;
  const place = surest + level + slope * (surest - pivot);
  const within = Math.min(LIVES.to, Math.max(LIVES.from, place));
  const perDecade = slopeVariance / stretch ** 2;
  const outside = Math.abs(place - within);
  // ∫(u² + 2·u·d)du = u³/3·(1 + 3d/u): see the docstring of `learnLife`.
  const made = perDecade * (1 + (3 * outside) / (LIVES.to - LIVES.from));
  const factor = 10 ** (Math.sqrt(Math.max(0, least) + perDecade * outside ** 2) / doubtSigma(10));
  return {
    surestLife: 10 ** within,
    doubtFactor: Math.min(factor, CURVE_LIMITS.doubtFactor.max),
    doubtPerDecade: Math.min(Math.sqrt(made), SUREST_LIMITS.doubtPerDecade.max),
  };
}

function curveBy(life: StrainLifeCurve, now: LifePosterior, strips: readonly Usable[]): StrainLifeCurve {
  const beta = 1 + now.slope;
  const alpha = now.level - now.slope * now.pivot;
  const per = 2 ** (1 - 1 / beta) * 10 ** (-alpha / beta);
  const longest = Math.max(...strips.map(({ tally }) => tally.cycles));
  return {
    ...life,
    A: life.A * per ** life.b,
    b: life.b / beta,
    B: life.B * per ** life.c,
    c: life.c / beta,
    sigmaLog10N: Math.max(now.scatter, CURVE_LIMITS.sigmaLog10N.min),
    maxReportableCycles: Math.max(life.maxReportableCycles, longest),
    ...doubtBy(now),
    certainty: 'by your own test',
    provenance: { kind: 'measured', what: whatOf(strips) },
  };
}

const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

function whatOf(strips: readonly Usable[]): string {
  const whole = strips.filter(({ seen }) => seen.whole).length;
  const broke = strips.length - whole;
  return `${count(strips.length, 'strip')} flexed: ${broke} broke, ${whole} still whole`;
}
