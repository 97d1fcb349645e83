import { isAsked } from '../flexures/drives.ts';
import { familyOf } from '../flexures/known.ts';
import { ok } from '../result.ts';
import type { Joint } from './joint.ts';
import { MATCHED, type EffortWanted, type Match, type MatchStep } from './matchAnswer.ts';
import { matchSize, type SizeAsked } from './matchSize.ts';
import { withCount } from './withCount.ts';
import { withSize } from './withSize.ts';

/** A way that was tried: the joint it comes to, and the effort of that. */
export interface Tried {
  readonly steps: Match['steps'];
  readonly joint: Joint;
  readonly effort: number;
  readonly isMatched: boolean;
  /** A whole count alone, which comes near and no nearer. */
  readonly isCount?: true;
}

/** What is asked of every way. */
export interface Asking extends Omit<SizeAsked, 'size'> {
  readonly at: EffortWanted['at'];
}

/** Sizes by which what snaps rises, in kinds that have one. */
const RISES = ['rise', 'incline'];
/** Counts on the way from the guess to those on either side of the wish. */
const MOST_COUNTS = 4;

/**
 * The size of a joint that a step changes.
 *
 * @param joint - any joint of a known kind [-]
 * @param step - what is to be changed [-]
 * @returns name of the size [-]; undefined where the kind has none, or its drive does not ask for it
 */
export function sizeOf(joint: Joint, step: MatchStep): string | undefined {
  const { roles, parameters } = familyOf(joint);
  const names: Readonly<Record<MatchStep, string | undefined>> = {
    length: roles.length,
    depth: roles.depth,
    lines: roles.count,
    'side by side': roles.sideBySide,
    rise: RISES.find((name) => name in parameters),
  };
  const name = names[step];
  const parameter = parameters[name ?? ''];
  return parameter && isAsked(parameter, joint.movement.drive) ? name : undefined;
}

/** A way by one continuous size, after whatever else was changed. */
function bySize(
  asking: Asking,
  step: 'length' | 'depth' | 'rise',
  before: readonly MatchStep[] = [],
): readonly Tried[] {
  const size = sizeOf(asking.joint, step);
  if (size === undefined) return [];
  const [first, ...others] = [...before, step];
  return [{ steps: [first, ...others], ...matchSize({ ...asking, size }) }];
}

/** A whole count, and the rest of the wish taken up by a continuous size. */
function withRest(
  asking: Asking,
  joint: Joint,
  step: 'side by side' | 'lines',
  rest: 'depth' | 'length',
): readonly Tried[] {
  const gauged = asking.gauge(joint);
  if (!gauged.ok || !(gauged.value > 0)) return [];
  const effort = gauged.value;
  const isMatched = Math.abs(effort / asking.effort - 1) <= MATCHED;
  const alone: Tried = { steps: [step], joint, effort, isMatched, isCount: true };
  return isMatched ? [alone] : [alone, ...bySize({ ...asking, joint, now: effort }, rest, [step])];
}

function clamped(value: number, { min, max }: { readonly min: number; readonly max: number }): number {
  return Math.min(max, Math.max(min, value));
}

/** Alike side by side push so many times as hard: the whole counts on either side of the wish. */
function bySideBySide(asking: Asking): readonly Tried[] {
  const { joint, effort, now } = asking;
  const size = sizeOf(joint, 'side by side');
  const parameter = familyOf(joint).parameters[size ?? ''];
  const count = joint.sizes[size ?? ''];
  if (size === undefined || !parameter || count === undefined) return [];
  const wanted = (count * effort) / now;
  const counts = new Set([Math.floor(wanted), Math.ceil(wanted)].map((one) => clamped(one, parameter)));
  counts.delete(count);
  return [...counts].flatMap((one) => withRest(asking, withSize(joint, size, one), 'side by side', 'depth'));
}

/** Whole lines or layers on either side of the wish. Effort goes about by the cube of them, which says where to look. */
function countsAround({ joint, effort, now, gauge }: Asking): readonly number[] {
  const name = familyOf(joint).roles.count;
  const parameter = familyOf(joint).parameters[name];
  const count = joint.sizes[name];
  if (!parameter || count === undefined) return [];
  const isUnder = (one: number) => {
    const gauged = one === count && joint.measuredThickness === undefined ? ok(now) : gauge(withCount(joint, one));
    // What is too thick to be made pushes harder than any wish.
    return gauged.ok && gauged.value < effort;
  };
  let low = clamped(Math.floor(count * Math.cbrt(effort / now)), parameter);
  for (let i = 0; i < MOST_COUNTS && low > parameter.min && !isUnder(low); i += 1) low -= 1;
  for (let i = 0; i < MOST_COUNTS && low < parameter.max && isUnder(low + 1); i += 1) low += 1;
  const present = joint.measuredThickness === undefined ? count : undefined;
  return [low, low + 1].filter((one) => one <= parameter.max && one !== present);
}

function byLines(asking: Asking): readonly Tried[] {
  return countsAround(asking).flatMap((count) => withRest(asking, withCount(asking.joint, count), 'lines', 'length'));
}

/**
 * Every way to an effort: one size, or a whole count with and without a size that takes up the rest.
 *
 * @param asking - joint and effort [N·mm] or [N], what tells efforts [-]
 * @returns what each comes to
 */
export function triedFor(asking: Asking): readonly Tried[] {
  return [
    ...bySize(asking, 'length'),
    ...bySize(asking, 'depth'),
    ...(asking.at === 'snap' ? bySize(asking, 'rise') : []),
    ...bySideBySide(asking),
    ...byLines(asking),
  ];
}
