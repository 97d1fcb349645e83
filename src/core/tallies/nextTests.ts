/** Which test would tell most of one joint. */
import type { Piece, PiecesAsked } from '../coupons/piece.ts';
import type { Assessment } from '../design/assessment.ts';
import type { CauseName, DoubtAnswer } from '../design/doubtAnswer.ts';
import { curveSigma, spreadAround } from '../life/scatter.ts';
import type { FlexTally } from '../material/tally.ts';
import type { Filament } from '../material/types.ts';
import { normalCdf, normalQuantile } from '../numeric/normal.ts';
import { CALIPER_SIGMA } from '../print/spread.ts';
import { flexPlans, type Plan } from './candidates.ts';
import { believedAt, expectedFlexes, expectedVariance } from './expectedDoubt.ts';
import { varianceGoingOn } from './goingOn.ts';
import { believedOf, foretoldBy } from './learnLife.ts';
import type { LifePosterior } from './lifePosterior.ts';
import type { Candidate, LifeNow, NextTest } from './nextTest.ts';

/** What is asked: a joint with how sure it is, what has been flexed, and the pieces that could be printed. */
export interface NextAsked {
  readonly assessment: Assessment;
  readonly doubt: DoubtAnswer;
  /** Row whose figures stand where nothing was tested. */
  readonly prior: Filament;
  readonly flexes: readonly FlexTally[];
  readonly pieces: readonly Piece[];
  /** Lying of the strips, and how far those of the comb are turned. */
  readonly asked: Pick<PiecesAsked, 'profile' | 'turn'>;
  /** Of the plastic [g/mm³]. */
  readonly density: number;
}

export interface NextTests {
  readonly now: LifeNow;
  /** Those that narrow what is not known of the life of the joint most come first. */
  readonly tests: readonly NextTest[];
}

/** Standard deviations that hold nine in ten. */
const NINE_IN_TEN = normalQuantile(0.95);
/** A steady hand. Common practice, no source. */
const FLEXES_AN_HOUR = 40 * 60;
/** Time by hand for what is done once [h]. Our judgement. */
const HOURS = { thickness: 0.2, mark: 0.3, sag: 0.3, hold: 0.1 } as const;
/** How well a thickness is foretold by a line through a ladder of eight rungs, which differ by 0.01 mm themselves [mm]. */
const AFTER_LADDER = Math.hypot(CALIPER_SIGMA / Math.sqrt(8), 0.01);
/** How well a stiffness is known after a bar was hung: as a logarithm. Three times the error of its thickness; our judgement. */
const AFTER_SAG = 0.08;

/** Variances of log10 N of the joint, and the middle of its life as a logarithm. */
interface Known {
  readonly middle: number;
  readonly wanted: number;
  readonly scatter: number;
  readonly curve: number;
  readonly thickness: number;
  /** What no test of these tells. */
  readonly rest: number;
}

const shareOf = ({ causes }: DoubtAnswer, name: CauseName, of: 'life' | 'effort'): number =>
  causes.find(({ cause }) => cause === name)?.[of] ?? 0;

/** From the share of what is known by itself: specimens scatter by the σ of the row. */
function allVariance({ assessment, doubt }: NextAsked): number {
  const share = shareOf(doubt, 'specimens', 'life');
  return share > 0 ? assessment.filament.life.sigmaLog10N ** 2 / share : 0;
}

function knownOf(asked: NextAsked, posterior: LifePosterior, x: number): Known {
  const { assessment, doubt } = asked;
  const { life } = assessment.filament;
  const all = allVariance(asked);
  const now = believedAt(posterior, x);
  // The joint may stand in a row that these tests have not taught: then it lies where they say.
  const moved = x + now.shift - Math.log10(assessment.life.wear[0].median);
  const [curve, thickness] = [curveSigma(life, assessment.life.median) ** 2, shareOf(doubt, 'thickness', 'life') * all];
  return {
    middle: Math.log10(doubt.life.p50) + moved,
    wanted: Math.log10(doubt.wanted),
    scatter: posterior.scatter,
    curve: now.variance,
    thickness,
    rest: Math.max(0, all - life.sigmaLog10N ** 2 - curve - thickness),
  };
}

const unknown = ({ curve, thickness, rest }: Known): number => Math.sqrt(curve + thickness + rest);

function lifeWith(known: Known): LifeNow {
  const doubt = unknown(known);
  const { p10, p90 } = spreadAround(10 ** known.middle, Math.hypot(doubt, known.scatter));
  const chance = (side: number) =>
    normalCdf((known.middle - known.wanted + side * NINE_IN_TEN * doubt) / known.scatter);
  return { life: [p10, p90], chance: [chance(-1), chance(1)] };
}

/** Standard deviation of the thickness of the joint now [mm], as the doubt about it is reckoned. */
function thicknessSigma({ assessment, doubt }: NextAsked): number {
  const { joint, section, filament } = assessment;
  const { spread } = doubt.asked;
  if (joint.measuredThickness !== undefined) return CALIPER_SIGMA;
  const laid = filament.laid?.[section.countOf];
  if (laid) return laid.sigma;
  return (section.countOf === 'layers' ? spread.layers : spread.lineWidth * section.thickness) / NINE_IN_TEN;
}

/** Of a thickness that was measured on the part itself, a ladder tells nothing. */
function afterLadder(asked: NextAsked, known: Known): Known {
  const sigma = thicknessSigma(asked);
  const left = asked.assessment.joint.measuredThickness === undefined ? Math.min(1, AFTER_LADDER / sigma) : 1;
  return { ...known, thickness: known.thickness * left ** 2 };
}

/** By what share a figure may be off nine times in ten, by the variance of its logarithm. */
const off = (variance: number): number => Math.expm1(NINE_IN_TEN * Math.sqrt(variance));

/** By what share effort may be off, nine times in ten, before and after the stiffness was measured. */
function effortOf({ doubt }: NextAsked): NextTest['effort'] {
  const sigma = Math.log(doubt.effort.p90 / doubt.effort.p10) / (2 * normalQuantile(0.9));
  const modulus = shareOf(doubt, 'modulus', 'effort') * sigma ** 2;
  if (!(modulus > 0)) return undefined;
  const left = sigma ** 2 - modulus + Math.min(modulus, AFTER_SAG ** 2);
  return { now: off(sigma ** 2), after: off(left) };
}

const gramsOf = ({ pieces, density }: NextAsked, { piece, what }: Candidate): number => {
  const volume = pieces.find(({ id }) => id === piece)?.volume ?? 0;
  return what === 'goOn' ? 0 : volume * density;
};

/** Flexes expected of all strips of a plan. */
function flexesOf(plan: Plan, posterior: LifePosterior): number {
  const each = (foretold: number, stop: number, from: number): number => {
    const { shift, variance } = believedAt(posterior, foretold);
    const sigma = Math.sqrt(variance + posterior.scatter ** 2);
    return expectedFlexes(from, 10 ** stop, foretold + shift, sigma);
  };
  if ('planned' in plan) {
    return plan.planned.reduce((sum, { foretold, stop, strips }) => sum + strips * each(foretold, stop, 0), 0);
  }
  const { foretold, stop, from } = plan.goingOn;
  return from.reduce((sum, count) => sum + each(foretold, stop, 10 ** count), 0);
}

/** What is left of the doubt about the curve. */
function varianceLeft(plan: Plan, posterior: LifePosterior, x: number): number {
  return 'planned' in plan ? expectedVariance(posterior, plan.planned, x) : varianceGoingOn(posterior, plan.goingOn, x);
}

function toldBy(asked: NextAsked, now: Known, after: Known, candidate: Candidate): NextTest {
  return {
    candidate,
    after: lifeWith(after),
    doubt: { now: unknown(now), after: unknown(after) },
    hours: 0,
    flexes: 0,
    grams: gramsOf(asked, candidate),
  };
}

function flexTests(asked: NextAsked, posterior: LifePosterior, known: Known, x: number): readonly NextTest[] {
  return flexPlans({ ...asked, posterior }).map((plan) => {
    const after = { ...known, curve: Math.min(known.curve, varianceLeft(plan, posterior, x)) };
    const flexes = Math.round(flexesOf(plan, posterior));
    const { strain } = plan;
    const told = toldBy(asked, known, after, plan.candidate);
    return { ...told, flexes, hours: flexes / FLEXES_AN_HOUR, ...(strain === undefined ? {} : { strain }) };
  });
}

const isOver = ({ candidate }: NextTest): boolean => candidate.what === 'flexes' && candidate.bend !== undefined;

/** Of the round corners of one block those than which none tells more in less time. */
function worthwhile(tests: readonly NextTest[]): readonly NextTest[] {
  const corners = tests.filter(isOver);
  const isBeaten = ({ doubt, hours }: NextTest) =>
    corners.some((other) => other.doubt.after < doubt.after && other.hours <= hours);
  return tests.filter((test) => !isOver(test) || !isBeaten(test));
}

/** What is done once: a ladder tells of life, a bar of effort, round corners of limits, a slot of what stays bent. */
function otherTests(asked: NextAsked, known: Known): readonly NextTest[] {
  const told = (what: keyof typeof HOURS, piece: Piece['id'], after = known): readonly NextTest[] =>
    asked.pieces.some(({ id }) => id === piece)
      ? [{ ...toldBy(asked, known, after, { what, piece }), hours: HOURS[what] }]
      : [];
  const effort = effortOf(asked);
  return [
    ...told('thickness', 'ladder', afterLadder(asked, known)),
    ...told('sag', 'bar').map((test) => (effort ? { ...test, effort } : test)),
    ...told('mark', 'radii'),
    ...told('hold', 'hold'),
  ];
}

const gain = ({ effort }: NextTest): number => (effort ? effort.now - effort.after : 0);

/**
 * Tests that could be made for a joint, those that are expected to narrow most what is not known of its life first.
 *
 * Strips narrow the curve by what they are expected to tell, whether they break before counting stops or not
 * (`expectedVariance`, `varianceGoingOn`); a ladder narrows what the thickness adds. What one print differs from the next stays, whatever is tested.
 *
 * @param asked - the joint with its doubt, what was flexed, the row that stands behind, pieces, density [g/mm³]
 * @returns what is known now, and tests; none where the first flex breaks the joint
 *
 * Source: bayes-rule, censored-likelihood.
 */
export function nextTests(asked: NextAsked): NextTests {
  const { assessment, doubt, prior, flexes } = asked;
  const { p10, p50, p90 } = doubt.life;
  const isTold = p50 > 0 && assessment.life.wear[0].median > 0 && assessment.life.equivalentStrain > 0;
  if (!isTold) return { now: { life: [p10, p90], chance: [doubt.chance.share, doubt.chance.share] }, tests: [] };
  const posterior = believedOf(prior, flexes).now;
  const x = foretoldBy(assessment.life.equivalentStrain, prior.life);
  const known = knownOf(asked, posterior, x);
  const tests = [...worthwhile(flexTests(asked, posterior, known, x)), ...otherTests(asked, known)];
  return {
    now: lifeWith(known),
    tests: tests.toSorted((one, other) => one.doubt.after - other.doubt.after || gain(other) - gain(one)),
  };
}
