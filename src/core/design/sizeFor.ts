import { angleAtStrain, minimumLength } from '../closedForms/leafBending.ts';
import { medianWanted } from '../life/scatter.ts';
import { familyOf } from '../flexures/known.ts';
import { findRoot } from '../numeric/roots.ts';
import type { Range } from '../problems.ts';
import { asRad, type Mm } from '../units.ts';
import type { Assessment } from './assessment.ts';
import { assess, type Judge } from './assess.ts';
import { firstFlexStrain, peakStrainFor, strainAtCycles } from './curves.ts';
import type { Joint } from './joint.ts';
import { passes } from './passing.ts';
import type { Solved } from './solved.ts';
import { amountAtStrain, effortUpTo } from './solvedPath.ts';
import { withCount } from './withCount.ts';

/**
 * Largest peak strain with which this joint would pass: the life curve at the wanted cycles and share, and every
 * limit that the brief calls on.
 *
 * Thickness is kept as it is, so a limit that depends on thickness is that of the present section.
 *
 * @param a - the joint as assessed [-]
 * @returns strain as a fraction [-], > 0
 *
 * Source: strain-life.
 */
export function allowedPeakStrain(a: Assessment): number {
  const { cycles, chance } = a.joint.movement;
  const median = medianWanted(cycles, chance, a.filament.life);
  const limits = a.allowables
    .filter((allowable) => allowable.applies && allowable.name !== 'repeated')
    .map((allowable) => allowable.limit);
  return Math.min(strainAtCycles(a, median), firstFlexStrain(a), ...limits);
}

/** A thousandth of what calipers read, or of a hundredth of a degree. */
const FINE_ENOUGH = 1e-6;

/**
 * Where the peak strain comes to what is allowed, as something goes from its worst to its best value; the worst where
 * it is allowed everywhere, the best where it is allowed nowhere.
 */
function keptFrom(strainAt: (value: number) => number, allowed: number, worst: number, best: number): number {
  if (strainAt(worst) <= allowed) return worst;
  const found = findRoot((value) => strainAt(value) - allowed, worst, best, FINE_ENOUGH);
  return found.ok ? found.value.value : best;
}

/**
 * Shortest flexing length with which the joint passes as far as strain goes.
 *
 *     L = f·t·(θ/n)/(2·ε)   for a leaf that rolls to an arc
 *
 * Of other kinds and drives the length within the limits of the family at which the hand form strains as much.
 *
 * @param a - the joint as assessed [-]
 * @returns length [mm]
 *
 * Source: plane-bending.
 */
export function shortestLength(a: Assessment): Mm {
  const allowed = allowedPeakStrain(a);
  if (a.travel) return minimumLength(a.section.thickness, asRad(a.amountEach), allowed / a.strain.rootFactor);
  const { roles, parameters } = familyOf(a.joint);
  const { min, max } = parameters[roles.length] as Range;
  return keptFrom((length) => peakStrainFor(a, { length }), allowed, min, max);
}

/** The solved way, where the strain that counts is that of its members. */
function wayOfStrain({ joint, drive, solved }: Assessment): Solved | undefined {
  const isOutside = familyOf(joint).handForms.some((form) => form.drive === drive.id && form.isStrainOutside === true);
  return isOutside ? undefined : solved;
}

/**
 * Largest amount of the whole joint with which it passes as far as strain goes: where the solved way first strains as much,
 * else by hand form; of what does not roll to an arc within the limits of its drive.
 *
 * @param a - the joint as assessed [-]
 * @returns amount [rad] or [mm]
 *
 * Source: plane-bending.
 */
export function largestAmount(a: Assessment): number {
  const allowed = allowedPeakStrain(a);
  if (a.travel) return angleAtStrain(a.section.thickness, a.length, allowed / a.strain.rootFactor) * a.inRow;
  const solved = wayOfStrain(a);
  if (!solved) return keptFrom((amount) => peakStrainFor(a, { amount }), allowed, a.drive.max, a.drive.min);
  return Math.min(Math.max(amountAtStrain(solved, allowed, a.strain.rootFactor), a.drive.min), a.drive.max);
}

/**
 * Largest amount of the whole joint with which it is not pushed harder than asked: on the solved way there, in proportion
 * by hand.
 *
 * @param a - the joint as assessed [-]
 * @returns amount [rad] or [mm]; Infinity where it is not pushed too hard
 */
export function amountAtEffort(a: Assessment): number {
  const { amount, effortAtMost = Number.POSITIVE_INFINITY } = a.joint.movement;
  const share = effortAtMost / a.effort.effort;
  if (!(share < 1)) return Number.POSITIVE_INFINITY;
  if (!a.solved) return share * amount;
  const limit = share * effortUpTo(a.solved, amount);
  const { points } = a.solved.forward;
  const next = points.findIndex(({ effort }) => effort > limit);
  const [before, after] = [points[next - 1], points[next]];
  if (!before || !after) return next < 0 ? share * amount : 0;
  return before.amount + ((limit - before.effort) / (after.effort - before.effort)) * (after.amount - before.amount);
}

/**
 * Most lines, or layers, with which the joint passes; undefined when not even the fewest do. A joint that passes is taken
 * to pass with fewer as well, so that few are looked at.
 *
 * @param joint - any joint [-]
 * @param most - count to look up to [-], ≥ 1
 * @param judge - what assesses each [-]
 * @param known - a count with which it is known to pass [-]; 0 when none is
 * @returns whole count [-]
 */
export function mostCount(joint: Joint, most: number, judge: Judge = assess, known = 0): number | undefined {
  let [fine, fails, step] = [known, Math.max(most, known) + 1, 1];
  while (fails - fine > 1) {
    // In growing steps first: thick ones take longest, and seldom pass.
    const count = Math.min(fine + step, Math.floor((fine + fails) / 2));
    if (passes(withCount(joint, count), judge)) [fine, step] = [count, 2 * step];
    else fails = count;
  }
  return fine > 0 ? fine : undefined;
}
