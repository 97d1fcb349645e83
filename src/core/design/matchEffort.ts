import { findDrive } from '../flexures/drives.ts';
import { familyOf } from '../flexures/known.ts';
import { outsideRange, type Problem } from '../problems.ts';
import { fail, failIfAny, ok, type Result } from '../result.ts';
import { assess, type Judge } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { gaugeOf, type Gauge } from './effortAt.ts';
import type { Joint } from './joint.ts';
import { MATCHED, type EffortWanted, type Match, type MatchAnswer, type MatchStep } from './matchAnswer.ts';
import { rangeOf } from './matchSize.ts';
import { sizeOf, triedFor, type Asking, type Tried } from './matchWays.ts';
import { MOVEMENT_LIMITS } from './movementLimits.ts';
import { understand } from './understand.ts';
import { withSize } from './withSize.ts';

/** What assesses joints: `quick` the many that are tried, `full` those that are told. */
export interface MatchJudges {
  readonly quick: Judge;
  readonly full: Judge;
}

/** Each change beyond the first is one more thing to draw: about as much as a fifth more of a size. */
const SECOND = 0.3;

function doublings(value: number, was: number): number {
  return value === was ? 0 : Math.abs(Math.log2(value / was));
}

/**
 * Doublings and halvings of all sizes that were changed, and a little for each change beyond the first. Lines count as thickness,
 * so that redrawing what was measured counts as well.
 */
function changeOf(before: Joint, { joint: after, section }: Assessment, steps: Match['steps']): number {
  const { count } = familyOf(after).roles;
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
    const gauged = gauge(withSize(joint, size, value));
    return gauged.ok && gauged.value > 0 ? [gauged.value] : [];
  });
}

/** No way comes to the wish: between what efforts they go, and the one of them that is nearest. */
function outOfReach(asking: Asking, tried: readonly Tried[]): Result<never> {
  const { effort, now } = asking;
  const ends = (['length', 'depth'] as const).flatMap((step) => endsOf(asking, step));
  const reached = [now, ...tried.map((one) => one.effort), ...ends].toSorted((one, other) => one - other);
  const [least = now, most = now] = [reached[0], reached.at(-1)];
  const off = (one: number) => Math.abs(Math.log(one / effort));
  const limit = reached.reduce((nearest, one) => (off(one) < off(nearest) ? one : nearest));
  const message = `No change of one or two sizes that was tried gives an effort of ${figures(effort)}: they go from ${figures(least)} to ${figures(most)}, and the nearest is ${figures(limit)}; ask for that, or choose another kind or filament`;
  return fail({ code: 'effort-out-of-reach', message, field: 'wanted.effort', value: effort, limit });
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
