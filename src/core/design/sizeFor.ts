import { angleAtStrain, minimumLength } from '../closedForms/leafBending.ts';
import { medianForChance, totalSigma } from '../life/scatter.ts';
import { familyOf } from '../flexures/index.ts';
import { asRad, type Mm, type Rad } from '../units.ts';
import type { Assessment } from './assessment.ts';
import { assess } from './assess.ts';
import { firstFlexStrain, strainAtCycles } from './curves.ts';
import type { Joint } from './joint.ts';

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
  const median = medianForChance(cycles, chance, totalSigma(a.filament.life));
  const limits = a.allowables
    .filter((allowable) => allowable.applies && allowable.name !== 'repeated')
    .map((allowable) => allowable.limit);
  return Math.min(strainAtCycles(a, median), firstFlexStrain(a), ...limits);
}

/**
 * Shortest flexing length with which the joint passes as far as strain goes.
 *
 *     L = f·t·(θ/n)/(2·ε)
 *
 * @param a - the joint as assessed [-]
 * @returns length [mm]
 *
 * Source: plane-bending.
 */
export function shortestLength(a: Assessment): Mm {
  return minimumLength(a.section.thickness, a.angleEach, allowedPeakStrain(a) / a.strain.rootFactor);
}

/**
 * Largest angle of the whole joint with which it passes as far as strain goes.
 *
 * @param a - the joint as assessed [-]
 * @returns angle [rad]
 *
 * Source: plane-bending.
 */
export function largestAngle(a: Assessment): Rad {
  return asRad(angleAtStrain(a.section.thickness, a.length, allowedPeakStrain(a) / a.strain.rootFactor) * a.inRow);
}

/**
 * The joint with another count of lines or layers; a measured thickness gives way to the count.
 *
 * @param joint - any joint [-]
 * @param count - whole count [-], ≥ 1
 * @returns a new joint
 */
export function withCount(joint: Joint, count: number): Joint {
  const family = familyOf(joint);
  const { measuredThickness: _measured, ...rest } = joint;
  return { ...rest, sizes: { ...joint.sizes, [family.roles.count]: count } };
}

/**
 * Most lines, or layers, with which the joint passes; undefined when not even one does.
 *
 * Counted down by assessing each, because root factor and thick-section rules change with thickness.
 *
 * @param joint - any joint [-]
 * @param from - count to begin at [-], ≥ 1
 * @returns whole count [-]
 */
export function mostCount(joint: Joint, from: number): number | undefined {
  for (let count = from; count >= 1; count -= 1) {
    const tried = assess(withCount(joint, count));
    if (tried.ok && tried.value.verdict.grade === 'pass') return count;
  }
  return undefined;
}
