import { familyOf } from '../flexures/known.ts';
import type { Range } from '../problems.ts';
import { assess, type Judge } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { lifeAtChance } from './lifeAtChance.ts';
import { isPassing, passes } from './passing.ts';
import type { Spare } from './remedy.ts';
import { largestAmount, mostCount, shortestLength } from './sizeFor.ts';
import { touchesAt } from './solvedPath.ts';
import { withSize } from './withSize.ts';

/** Counts are looked at up to here; beyond it a section is a pad. */
const THICKEST = 12;
/** A limit that is searched for is told when it is known to so much of itself: less than a protractor reads. */
const CLOSE = 0.005;
/** The search goes out by this share of where it is, then twice as far, and so on. */
const FIRST_STRIDE = 0.05;

/**
 * When a joint passes: how far each value alone may go while it still passes.
 *
 * Where a hand form is exact it tells the limits of amount and length; else it only says where to look, and every limit
 * told has been judged to pass.
 *
 * @param a - a passing joint as assessed [-]
 * @param judge - what assesses each change [-]
 * @returns amount [rad] or [mm], length [mm], cycles and count, each with the present value
 */
export function roomToSpare(a: Assessment, judge: Judge = assess): readonly Spare[] {
  if (!isPassing(a)) return [];
  const { cycles } = a.joint.movement;
  const often = Math.min(lifeAtChance(a), a.life.maxReportableCycles);
  const spare: Spare[] = [
    { value: 'amount', limit: mostAmount(a, judge), now: a.joint.movement.amount },
    { value: 'length', limit: leastLength(a, judge), now: a.length },
    { value: 'cycles', limit: Math.max(cycles, often), now: cycles },
  ];
  if (a.joint.measuredThickness !== undefined) return spare;
  return [...spare, { value: 'count', limit: highestCount(a, judge), now: a.section.count }];
}

function mostAmount(a: Assessment, judge: Judge): number {
  const { movement } = a.joint;
  if (a.travel) return Math.max(movement.amount, largestAmount(a));
  const isFine = (amount: number) => passes({ ...a.joint, movement: { ...movement, amount } }, judge);
  return furthest(isFine, movement.amount, amountGuess(a), a.drive.max);
}

/** Where it strains too much as far as is known, or where the way that is known touches. */
function amountGuess(a: Assessment): number {
  return Math.min(largestAmount(a), a.solved ? touchesAt(a.solved) : Number.POSITIVE_INFINITY);
}

function leastLength(a: Assessment, judge: Judge): number {
  if (a.travel) return Math.min(a.length, shortestLength(a));
  const { roles, parameters } = familyOf(a.joint);
  const isFine = (length: number) => passes(withSize(a.joint, roles.length, length), judge);
  return furthest(isFine, a.length, shortestLength(a), (parameters[roles.length] as Range).min);
}

function highestCount(a: Assessment, judge: Judge): number {
  const { count } = a.section;
  return mostCount(a.joint, THICKEST, judge, count) ?? count;
}

/**
 * The value furthest from the present one, on the way to an end, that is still fine.
 *
 * Strides go outwards and not in from the end, where a joint may be all but impossible to solve.
 *
 * @param isFine - what judges a value; the present one is fine
 * @param now - the present value
 * @param guess - where the limit may lie
 * @param end - beyond this no value is allowed
 * @returns a value that is fine, within `CLOSE` of one that is not, or the end
 */
function furthest(isFine: (value: number) => boolean, now: number, guess: number, end: number): number {
  const outward = Math.sign(end - now);
  const isBeyond = (value: number, other: number) => outward * (value - other) > 0;
  const near = guess * (1 - (outward * CLOSE) / 2);
  const isPlain = !(isBeyond(near, now) && isBeyond(end, near));
  let found: Found = isPlain ? { good: now } : narrowed({ good: now }, near, isFine);
  for (
    let stride = found.good === now ? FIRST_STRIDE : CLOSE;
    found.bad === undefined && found.good !== end;
    stride *= 2
  ) {
    const next = found.good * (1 + outward * Math.min(stride, 0.5));
    found = narrowed(found, isBeyond(next, end) ? end : next, isFine);
  }
  while (found.bad !== undefined && isBeyond(found.bad, found.good * (1 + outward * CLOSE))) {
    found = narrowed(found, (found.good + found.bad) / 2, isFine);
  }
  return found.good;
}

/** A value that is fine, and one beyond it that is not. */
interface Found {
  readonly good: number;
  readonly bad?: number;
}

function narrowed(found: Found, value: number, isFine: (value: number) => boolean): Found {
  return isFine(value) ? { ...found, good: value } : { ...found, bad: value };
}
