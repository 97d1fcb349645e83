/** The smallest of ever larger changes of one kind with which a joint passes, with few solves. */
import type { Assessment, VerdictReason } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Joint } from './joint.ts';
import { nearJudge } from './nearJudge.ts';
import { isPassing, passes } from './passing.ts';
import type { Solved } from './solved.ts';
import { touchesAt } from './solvedPath.ts';
import { understand } from './understand.ts';

/** Changes of one kind, one step after the other away from a joint: step 1 is the gentlest. */
export interface Steps {
  readonly most: number;
  readonly at: (step: number) => Joint;
}

/** A search judges so many steps, most of them with a solve. */
const JUDGED = 8;
/** Where no figure says how far to go, a search goes out by this share of all steps at first. */
const FIRST_STRIDE = 1 / 32;
/** Before a first solve they may be too high by this factor; of no use where the joint as it is would pass by it. */
const HOPE = 0.85;
/** From a solved joint to the step before it estimated strains and efforts are off by no more than this. */
const SURE = 0.99;
/** A guess by a straight line may lie so many times too far out. */
const MISSED = 2;

const ANY_SHAPE: readonly VerdictReason[] = ['touches', 'stays', 'comes back'];

/**
 * Whether a verdict is about how a joint moves and where it rests, of which no hand form knows.
 *
 * @param a - the joint as assessed [-]
 * @returns true where only a solve tells whether a change puts it right
 */
export function isByShape({ verdict }: Assessment): boolean {
  return ANY_SHAPE.includes(verdict.reason);
}

/** The first step from one on to another that is fine, by growing strides and halving; of those that are fine from some step on. */
function firstFine(isFine: (step: number) => boolean, after: number, most: number): number | undefined {
  let [fails, fine, stride]: [number, number | undefined, number] = [after, undefined, 1];
  while (fine === undefined) {
    if (fails >= most) return undefined;
    const step = Math.min(fails + stride, most);
    if (isFine(step)) fine = step;
    else fails = step;
    stride = Math.ceil(1.5 * stride);
  }
  while (fine - fails > 1) {
    const middle = Math.floor((fails + fine) / 2);
    if (isFine(middle)) fine = middle;
    else fails = middle;
  }
  return fine;
}

/** The last step that is not refused, of those that are refused from some step on. */
function lastAllowed({ most, at }: Steps): number {
  const refused = firstFine((step) => !understand(at(step)).ok, 0, most);
  return refused === undefined ? most : refused - 1;
}

/** Whether a step is likely to pass, from what a solved joint near it tells; whether it rests elsewhere, by the checks of its kind. */
function likely(known: Assessment, { at }: Steps, reason: VerdictReason, hope = 1): (step: number) => boolean {
  const near = nearJudge(known, hope);
  return (step) => {
    const judged = near(at(step));
    if (!judged.ok || !isPassing(judged.value)) return false;
    if (reason !== 'comes back' && reason !== 'stays') return true;
    // The checks of a kind say when it has no second rest.
    return judged.value.notes.some(({ code }) => code === 'no-second-rest') === (reason === 'stays');
  };
}

/**
 * Where to look first, by an estimate; undefined where nothing is likely to pass.
 *
 * @param a - the joint as assessed [-]
 * @param steps - changes of one kind, gentlest first [-]
 * @param judge - what assesses each change where none need be solved [-]
 * @returns the first step that is likely to pass [-], or that passes where no solver is needed
 */
export function likelyStep(a: Assessment, steps: Steps, judge: Judge): number | undefined {
  const most = lastAllowed(steps);
  if (!a.solved) return firstFine((step) => passes(steps.at(step), judge), 0, most);
  const { reason } = a.verdict;
  const isHopeful = isByShape(a) || !passes(a.joint, nearJudge(a, HOPE));
  const [first, hoped] = (isHopeful ? [1, HOPE] : [1]).map((hope) =>
    firstFine(likely(a, steps, reason, hope), 0, most),
  );
  const found = first ?? hoped;
  // Of touching no estimate knows: a step that can be told from nothing.
  return found !== undefined && reason === 'touches' ? Math.max(found, Math.ceil(most * FIRST_STRIDE)) : found;
}

/** A change that passes; assessed where that took a solve. */
interface Found {
  readonly after: Joint;
  readonly assessed?: Assessment;
}

/** What is known so far: a step that fails, the first that passes, the last that can be judged, and how many have been. */
interface Bracket {
  readonly fails: number;
  readonly fine?: number;
  readonly last: number;
  readonly judged: number;
}

/** A step between the two that the last one judged points to; undefined where it says that there is none. */
function inward({ fails, fine = fails }: Bracket, isLikely: ((step: number) => boolean) | undefined) {
  if (fine - fails <= 1) return undefined;
  if (!isLikely) return Math.floor((fails + fine) / 2);
  const step = firstFine(isLikely, fails, fine) ?? fine - 1;
  return step < fine ? step : undefined;
}

/**
 * The smallest change of one kind with which a joint passes: guessed by hand forms held to what has been solved, and judged
 * until one passes of which the one before is known, or by its own figures said, not to.
 *
 * Once one passes, those after it are taken to pass as well.
 *
 * @param a - the joint as assessed [-]
 * @param steps - changes of one kind, gentlest first [-]
 * @param judge - what assesses each [-]
 * @param guess - the step to begin with [-]; undefined when nothing is likely to pass
 * @returns the joint with the change, which passes, and its assessment where it was solved; undefined when none was found
 */
export function leastChange(
  a: Assessment,
  steps: Steps,
  judge: Judge,
  guess = likelyStep(a, steps, judge),
): Found | undefined {
  if (guess === undefined || !a.solved) return guess === undefined ? undefined : { after: steps.at(guess) };
  const byShape = isByShape(a);
  let found: Found | undefined;
  let bracket: Bracket = { fails: 0, last: lastAllowed(steps), judged: 0 };
  for (let next: number | undefined = guess; next !== undefined && bracket.judged < JUDGED;) {
    const step: number = next;
    const answer = judge(steps.at(step));
    const known = answer.ok ? answer.value : undefined;
    const isFine = known !== undefined && isPassing(known);
    if (isFine) found = { after: steps.at(step), ...(known.solved ? { assessed: known } : {}) };
    const learnt = isFine ? { fine: step } : known ? { fails: step } : { last: step - 1 };
    bracket = { ...bracket, ...learnt, judged: bracket.judged + 1 };
    const hope = isFine ? SURE : 1;
    const told =
      known?.solved && !byShape && !isByShape(known) ? likely(known, steps, a.verdict.reason, hope) : undefined;
    next = bracket.fine === undefined ? outward(a, known, bracket, told) : inward(bracket, told);
  }
  return found;
}

/** The next step after one that does not pass, when none does as yet. */
function outward(
  a: Assessment,
  known: Assessment | undefined,
  bracket: Bracket,
  isLikely: ((step: number) => boolean) | undefined,
): number | undefined {
  const { fails, last } = bracket;
  if (fails >= last) return undefined;
  // What cannot be solved so far out may be half-way.
  if (!known) return Math.ceil((fails + last) / 2);
  if (isLikely) return firstFine(isLikely, fails, last);
  // A change that makes it touch, or spoils where it rests, is no better for more of it.
  if (!isByShape(a)) return undefined;
  const isTouching = [a, known].every(({ verdict }) => verdict.reason === 'touches');
  if (isTouching && a.solved && known.solved)
    return clearStep(a.joint.movement.amount, a.solved, known.solved, bracket);
  return Math.min(2 * fails, last);
}

/** Where it will be clear of itself, if it goes on touching later as it did up to the last step that was judged. */
function clearStep(amount: number, before: Solved, after: Solved, { fails, last }: Bracket): number | undefined {
  const touched = touchesAt(before);
  const step = (fails * (amount - touched)) / (touchesAt(after) - touched);
  if (!(step > 0 && step <= MISSED * last)) return undefined;
  return Math.min(Math.max(Math.ceil(step), fails + 1), last);
}
