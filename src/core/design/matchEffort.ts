import { findDrive, isAsked } from '../flexures/drives.ts';
import { familyOf } from '../flexures/known.ts';
import { outsideRange, type Problem } from '../problems.ts';
import { fail, failIfAny, ok, type Result } from '../result.ts';
import { assess, type Judge } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { gaugeOf, type Gauge } from './effortAt.ts';
import type { Joint } from './joint.ts';
import { MATCHED, type EffortWanted, type Match, type MatchAnswer, type MatchStep } from './matchAnswer.ts';
import { matchSize, rangeOf, type SizeAsked } from './matchSize.ts';
import { MOVEMENT_LIMITS } from './movementLimits.ts';
import { understand } from './understand.ts';
import { withCount } from './withCount.ts';

/** What assesses joints: `quick` the many that are tried, `full` those that are told. */
export interface MatchJudges {
  readonly quick: Judge;
  readonly full: Judge;
}

/** A way that was tried: the joint it comes to, and the effort of that. */
interface Tried {
  readonly steps: Match['steps'];
  readonly joint: Joint;
  readonly effort: number;
  readonly isMatched: boolean;
  /** A whole count alone, which comes near and no nearer. */
  readonly isCount?: true;
}

/** What is asked of every way. */
interface Asking extends Omit<SizeAsked, 'size'> {
  readonly at: EffortWanted['at'];
}

/** Sizes by which what snaps rises, in kinds that have one. */
const RISES = ['rise', 'incline'];
/** Each change beyond the first is one more thing to draw: about as much as a fifth more of a size. */
const SECOND = 0.3;
/** Counts on the way from the guess to those on either side of the wish. */
const MOST_COUNTS = 4;

function sizeOf(joint: Joint, step: MatchStep): string | undefined {
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
  const [first = step, ...others] = [...before, step];
  return [{ steps: [first, ...others], ...matchSize({ ...asking, size }) }];
}

/** A whole count, and the rest of the wish taken up by a continuous size. */
function withRest(
  asking: Asking,
  joint: Joint,
  step: 'side by side' | 'lines',
  rest: 'depth' | 'length',
): readonly Tried[] {
  const told = asking.gauge(joint);
  if (!told.ok || !(told.value > 0)) return [];
  const effort = told.value;
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
  return [...counts].flatMap((one) =>
    withRest(asking, { ...joint, sizes: { ...joint.sizes, [size]: one } }, 'side by side', 'depth'),
  );
}

/** Whole lines or layers on either side of the wish. Effort goes about by the cube of them, which says where to look. */
function countsAround({ joint, effort, now, gauge }: Asking): readonly number[] {
  const name = familyOf(joint).roles.count;
  const parameter = familyOf(joint).parameters[name];
  const count = joint.sizes[name];
  if (!parameter || count === undefined) return [];
  const isUnder = (one: number) => {
    const told = one === count && joint.measuredThickness === undefined ? ok(now) : gauge(withCount(joint, one));
    // What is too thick to be made pushes harder than any wish.
    return told.ok && told.value < effort;
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

function triedFor(asking: Asking): readonly Tried[] {
  return [
    ...bySize(asking, 'length'),
    ...bySize(asking, 'depth'),
    ...(asking.at === 'snap' ? bySize(asking, 'rise') : []),
    ...bySideBySide(asking),
    ...byLines(asking),
  ];
}

/**
 * Doublings and halvings of all sizes that were changed, and a little for each change beyond the first. Lines count as thickness,
 * so that redrawing what was measured counts as well.
 */
function changeOf(before: Joint, { joint: after, section }: Assessment, steps: Match['steps']): number {
  const { count } = familyOf(after).roles;
  const doublings = (value: number, was: number) => (value === was ? 0 : Math.abs(Math.log2(value / was)));
  const thickness = thicknessOf(before) ?? section.thickness;
  return Object.entries(after.sizes).reduce(
    (sum, [name, value]) => sum + (name === count ? 0 : doublings(value, before.sizes[name] ?? value)),
    doublings(section.thickness, thickness) + SECOND * (steps.length - 1),
  );
}

function thicknessOf(joint: Joint): number | undefined {
  const understood = understand(joint);
  return understood.ok ? understood.value.section.thickness : undefined;
}

/** Those that are matched first, smallest change first; then whole counts, the nearest first. */
function inOrder(matches: readonly Match[], effort: number): readonly Match[] {
  const near = (match: Match) => Math.abs(Math.log(match.effort / effort));
  return matches.toSorted((one, other) => {
    if (one.isMatched !== other.isMatched) return one.isMatched ? -1 : 1;
    return one.isMatched ? one.change - other.change : near(one) - near(other);
  });
}

function checkWanted(joint: Joint, { effort, at }: EffortWanted): readonly Problem[] {
  const drive = findDrive(familyOf(joint), joint.movement.drive);
  const turns = drive?.measure === 'turn';
  return [
    outsideRange('wanted.effort', 'an effort of', effort, MOVEMENT_LIMITS.effortAtMost, ''),
    drive && at !== 'snap'
      ? outsideRange('wanted.at', turns ? 'an angle of' : 'a travel of', at, drive, turns ? '°' : 'mm')
      : undefined,
  ].filter((problem) => problem !== undefined);
}

const figures = (effort: number) => String(Number(effort.toPrecision(3)));

function pullsOn(now: number): Result<never> {
  const message = `There it pulls itself on by ${figures(-now)} instead of pushing back; ask for less movement, or where it snaps`;
  return fail({ code: 'effort-out-of-reach', message, field: 'wanted.at', value: now, limit: 0 });
}

/** The efforts at both ends of what a size may be, as far as they can be told. */
function endsOf({ joint, gauge }: Asking, step: MatchStep): readonly number[] {
  const size = sizeOf(joint, step);
  if (size === undefined) return [];
  const { min, max } = rangeOf(joint, size);
  return [min, max].flatMap((value) => {
    const told = gauge({ ...joint, sizes: { ...joint.sizes, [size]: value } });
    return told.ok && told.value > 0 ? [told.value] : [];
  });
}

/** The wish lies outside all that was tried: between what efforts it would lie within. */
function outOfReach(asking: Asking, tried: readonly Tried[]): Result<never> {
  const { effort, now } = asking;
  const ends = (['length', 'depth'] as const).flatMap((step) => endsOf(asking, step));
  const reached = [now, ...tried.map((one) => one.effort), ...ends];
  const [least, most] = [Math.min(...reached), Math.max(...reached)];
  const limit = effort < least ? least : effort > most ? most : undefined;
  const message = `No change of one or two sizes that was tried gives an effort of ${figures(effort)}: they reach from ${figures(least)} to ${figures(most)}; ask for one between them, or choose another kind or filament`;
  return fail({
    code: 'effort-out-of-reach',
    message,
    field: 'wanted.effort',
    value: effort,
    ...(limit === undefined ? {} : { limit }),
  });
}

/** Each that can be made as it is told, with its verdict. */
function told(asking: Asking, tried: readonly Tried[], full: Judge): readonly Match[] {
  return tried.flatMap(({ steps, joint: after, effort, isMatched, isCount }) => {
    const judged = isMatched || isCount ? full(after) : undefined;
    if (!judged?.ok) return [];
    return [
      {
        steps,
        after,
        assessment: judged.value,
        effort,
        isMatched,
        change: changeOf(asking.joint, judged.value, steps),
      },
    ];
  });
}

const ONE_BY_ONE: MatchJudges = { quick: assess, full: assess };

/**
 * Joints like this one that push back as hard as is wished: by their length, depth or rise, by how many stand side by side, and
 * by their lines. Lines and alike are always whole; what a whole count leaves is taken up by a length or the depth.
 *
 * Problems: `below-minimum`, `above-maximum`, `not-a-number` with the field `wanted.effort` or `wanted.at`; those of the joint;
 * `does-not-snap`; `effort-out-of-reach` with the range that is reached.
 *
 * @param joint - any joint of a known kind [-]
 * @param wanted - effort [N·mm] or [N], and the amount at which it is wished for [rad] or [mm], or where it snaps
 * @param judges - what assesses joints; by hand forms when left out, which do not know where anything snaps [-]
 * @returns the effort as it is, and joints that have the one that is wished for, smallest change first
 *
 * Source: plane-bending, chandrupatla.
 */
export function matchEffort(
  joint: Joint,
  wanted: EffortWanted,
  { quick, full }: MatchJudges = ONE_BY_ONE,
): Result<MatchAnswer> {
  const refused = failIfAny(checkWanted(joint, wanted));
  if (refused) return refused;
  const { effort, at } = wanted;
  const gauge = gaugeOf(at, quick);
  const measured = gauge(joint);
  if (!measured.ok) return measured;
  const now = measured.value;
  if (!(now > 0)) return pullsOn(now);
  if (Math.abs(now / effort - 1) <= MATCHED) return ok({ now, isMet: true, matches: [], short: [] });
  const asking: Asking = { joint, effort, at, gauge, rough: roughly(joint, at), now };
  const tried = triedFor(asking);
  if (!tried.some(({ isMatched }) => isMatched)) return outOfReach(asking, tried);
  const short = tried.filter(({ isMatched, isCount }) => !isMatched && !isCount);
  return ok({
    now,
    isMet: false,
    matches: inOrder(told(asking, tried, full), effort),
    short: short.map(({ steps, effort: reached }) => ({ steps, effort: reached })),
  });
}

/** Hand forms at once. Where a joint snaps they do not tell; how its first stiffness goes with a size is a guess at that. */
function roughly(joint: Joint, at: EffortWanted['at']): Gauge {
  const least = findDrive(familyOf(joint), joint.movement.drive)?.min ?? Number.NaN;
  return gaugeOf(at === 'snap' ? least : at, assess);
}
