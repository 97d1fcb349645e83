import { allowableNamed } from './allowables.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import type { Allowable, Fit, Grade, Verdict } from './assessment.ts';
import type { Finding } from './feel.ts';
import type { Movement } from './joint.ts';

/** Below an even chance the joint will more likely break than last. */
const EVEN_CHANCE = 0.5;

/**
 * Grade of a life: pass when the wanted share reaches the wanted cycles, fail when fewer than half do.
 *
 * @param life - the life answer [-]
 * @param movement - the brief with wanted cycles and share [-]
 * @returns grade; `beyond` when more cycles are wanted than anyone has counted and half outlast the count
 */
export function lifeGrade(life: LifeAnswer, movement: Movement): Grade {
  if (life.breaksOnFirstFlex) return 'fail';
  // More is wanted than anyone counted: nothing is known, unless half break before the counting even stops.
  if (life.beyond === 'wanted') return wearCounted(life) > 1 ? 'fail' : 'beyond';
  if (life.chance >= movement.chance) return 'pass';
  return life.chance >= EVEN_CHANCE ? 'caution' : 'fail';
}

/** Wear of what is wanted as far as anyone has counted; above 1 half break even of that. */
function wearCounted({ wear, maxReportableCycles }: LifeAnswer): number {
  return wear.reduce((sum, { cycles, median }) => sum + Math.min(cycles, maxReportableCycles) / median, 0);
}

/** Grades from good to bad. */
export const SEVERITY: Readonly<Record<Grade, number>> = { pass: 0, beyond: 1, caution: 2, fail: 3 };
const PRINTS: Readonly<Record<Fit['outcome'], Grade>> = { whole: 'pass', uneven: 'caution', vanishes: 'fail' };

/**
 * The worst of all findings, with its reason and margin. Of equally bad ones the earlier named is said, because it
 * explains the others: a part that breaks at once needs no word about its set.
 *
 * @param life - the life answer [-]
 * @param allowables - limits against the peak strain [-]
 * @param fit - how the section prints [-]
 * @param movement - the brief [-]
 * @param feel - whether it moves as wanted [-]
 * @returns grade, reason and margin
 */
export function verdictOf(
  life: LifeAnswer,
  allowables: readonly Allowable[],
  fit: Fit,
  movement: Movement,
  feel: readonly Finding[] = [],
): Verdict {
  const limit = (name: Allowable['name']): Finding => {
    const { grade, margin } = allowableNamed(allowables, name);
    return { grade, reason: name, margin };
  };
  const ofLife = lifeGrade(life, movement);
  const lifeMargin = life.median / movement.cycles;
  const findings: readonly Finding[] = [
    { grade: life.breaksOnFirstFlex ? 'fail' : 'pass', reason: 'first flex', margin: 0 },
    limit('break'),
    { grade: PRINTS[fit.outcome], reason: 'printing', margin: fit.exact / fit.nearest },
    { grade: ofLife, reason: ofLife === 'beyond' ? 'beyond data' : 'life', margin: lifeMargin },
    limit('held'),
    limit('yield'),
    limit('single'),
    ...feel,
  ];
  const worst = findings.reduce((a, b) => (SEVERITY[b.grade] > SEVERITY[a.grade] ? b : a));
  if (worst.grade === 'pass') return { grade: 'pass', reason: 'within all limits', margin: tightest(allowables) };
  return worst;
}

function tightest(allowables: readonly Allowable[]): number {
  return Math.min(...allowables.filter((allowable) => allowable.applies).map((allowable) => allowable.margin));
}
