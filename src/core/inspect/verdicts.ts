/** What is made of a thin section: how it is laid, and how it stands being bent, each by itself and both together. */
import type { Assessment, Grade, Verdict } from '../design/assessment.ts';
import { SEVERITY, verdictOf } from '../design/verdict.ts';
import { warmthFinding } from '../design/warmth.ts';
import type { Judged, Landing } from './judged.ts';

/**
 * Whether a section lands on whole lines or layers, odd ones too.
 *
 * @param landing - how it falls on lines or layers [-]
 * @returns true where nothing is left over [-]
 */
export function isWhole({ state }: Landing): boolean {
  return state === 'whole' || state === 'odd';
}

/**
 * How good or bad a landing is. Our judgement, no source: what may be missing in the print fails; what comes out a little
 * thinner, thicker or weaker than drawn deserves a caution.
 *
 * @param landing - how a section falls on lines or layers [-]
 * @returns grade [-]
 */
export function landingGrade(landing: Landing): Grade {
  if (isWhole(landing)) return 'pass';
  const mayBeDropped = landing.countOf === 'lines' && landing.exact < 2;
  return landing.state === 'not-laid' || mayBeDropped ? 'fail' : 'caution';
}

/**
 * The verdict on how a section stands being bent, as if it were laid as drawn: landing is judged by itself.
 *
 * @param a - the joint that stands for it, as assessed [-]
 * @returns grade, reason and margin of the worst finding [-]
 */
export function bendingVerdict({ life, allowables, fit, joint, warmth }: Assessment): Verdict {
  return verdictOf(life, allowables, { ...fit, outcome: 'whole' }, joint.movement, [warmthFinding(warmth)]);
}

/**
 * The worse of both; `fail` for what cannot be assessed.
 *
 * @param judged - one thin section [-]
 * @returns grade [-]
 */
export function gradeOf({ landing, assessed }: Judged): Grade {
  const bending = assessed.ok ? bendingVerdict(assessed.value).grade : 'fail';
  const laid = landingGrade(landing);
  return SEVERITY[laid] > SEVERITY[bending] ? laid : bending;
}

/**
 * Whether a section would stand what is asked if it were laid as drawn.
 *
 * @param judged - one thin section [-]
 * @returns true where it passes but for its landing [-]
 */
export function isLasting({ assessed }: Judged): boolean {
  return assessed.ok && bendingVerdict(assessed.value).grade === 'pass';
}

/** How many of some thin sections land and last. */
export interface Tally {
  /** On whole lines or layers, odd ones too. */
  readonly whole: number;
  /** On an even number of lines, or on whole layers, to which odd or even is all one. */
  readonly even: number;
  readonly lasting: number;
  /** Whole and lasting. */
  readonly passing: number;
}

/**
 * How many of some thin sections land and last.
 *
 * @param judged - thin sections [-]
 * @returns counts [-]
 */
export function tallyOf(judged: readonly Judged[]): Tally {
  const count = (is: (one: Judged) => boolean) => judged.filter(is).length;
  return {
    whole: count(({ landing }) => isWhole(landing)),
    even: count(({ landing }) => landing.state === 'whole'),
    lasting: count(isLasting),
    passing: count((one) => isWhole(one.landing) && isLasting(one)),
  };
}
