import { isAsked } from '../flexures/drives.ts';
import type { FlexureFamily } from '../flexures/family.ts';
import { familyOf } from '../flexures/known.ts';
import { everyFilament } from '../material/shelf.ts';
import type { Result } from '../result.ts';
import { radians } from '../units.ts';
import { assess, type Judge } from './assess.ts';
import type { Assessment } from './assessment.ts';
import type { Joint } from './joint.ts';
import { stoppedAt } from './swing.ts';
import { withCount } from './withCount.ts';
import { withSize } from './withSize.ts';

/** What is changed a little. */
export type NudgeOf =
  'count' | 'thickness' | 'length' | 'lineWidth' | 'fillet' | 'depth' | 'amount' | 'sideBySide' | 'filament';

/** A joint that is changed a little in one respect. */
export interface Nudge {
  readonly of: NudgeOf;
  /** Lines, layers or alike [-]; lengths and travel [mm]; an angle [rad]; 0 of a filament. */
  readonly by: number;
  readonly after: Joint;
}

/** The same with what comes of it, or why it cannot be. */
export interface Nudged extends Nudge {
  readonly assessed: Result<Assessment>;
}

/** What a drawing is off by, and what calipers tell of a thickness [mm]. */
const LITTLE = 0.1;
const CALIPERS = [0.05, 0.1] as const;
/** What a slicer rounds to, and about what a printer's flow is off by [mm]. */
const LINE_WIDTH = 0.01;

/** To a nanometre, so that 11.9 does not become 11.899999999999999. */
function plainly(value: number): number {
  return Number(value.toFixed(6));
}

type Role = Exclude<keyof FlexureFamily['roles'], 'pad' | 'inRow'>;

/** A size that plays a role, so much larger; none where the kind has no such size, or its drive does not ask for it. */
function grown(joint: Joint, role: Role, of: NudgeOf, by: number): readonly Nudge[] {
  const { roles, parameters } = familyOf(joint);
  const name = roles[role];
  const [parameter, value] = [parameters[name ?? ''], joint.sizes[name ?? '']];
  if (name === undefined || value === undefined || !parameter || !isAsked(parameter, joint.movement.drive)) return [];
  return [{ of, by, after: withSize(joint, name, plainly(value + by)) }];
}

/** One line or layer more and fewer; of a part that exists, as much as calipers may be off. */
function thicker(joint: Joint): readonly Nudge[] {
  const { measuredThickness } = joint;
  if (measuredThickness === undefined) {
    const count = joint.sizes[familyOf(joint).roles.count] ?? Number.NaN;
    return [1, -1].map((by) => ({ of: 'count', by, after: withCount(joint, count + by) }));
  }
  return CALIPERS.flatMap((size) => [size, -size]).map((by) => ({
    of: 'thickness',
    by,
    after: { ...joint, measuredThickness: plainly(measuredThickness + by) },
  }));
}

/** Wider lines make what is laid as lines thicker; a thickness that was measured stays. */
function wider(joint: Joint): readonly Nudge[] {
  if (familyOf(joint).countOf !== 'lines' || joint.measuredThickness !== undefined) return [];
  const lineWidth = plainly(joint.profile.lineWidth + LINE_WIDTH);
  return [{ of: 'lineWidth', by: LINE_WIDTH, after: { ...joint, profile: { ...joint.profile, lineWidth } } }];
}

/** A degree, or a tenth of a millimetre, more and less; smaller movements beside it go no further than it does. */
function moved(joint: Joint): readonly Nudge[] {
  const { movement } = joint;
  const drive = familyOf(joint).drives.find(({ id }) => id === movement.drive);
  if (!drive) return [];
  const step: number = drive.measure === 'turn' ? radians(1) : LITTLE;
  return [step, -step].map((by) => {
    const amount = drive.measure === 'turn' ? movement.amount + by : plainly(movement.amount + by);
    return { of: 'amount', by, after: { ...joint, movement: stoppedAt(movement, amount, drive.step) } };
  });
}

function inOthers(joint: Joint): readonly Nudge[] {
  return everyFilament()
    .filter(({ printable, id }) => printable && id !== joint.profile.filament)
    .map(({ id }) => ({ of: 'filament', by: 0, after: { ...joint, profile: { ...joint.profile, filament: id } } }));
}

/**
 * A joint with one thing at a time changed a little: by a line, a tenth of a millimetre, a degree, another filament.
 *
 * @param joint - any joint of a known kind [-]
 * @returns changed joints, sizes first and filaments last; whether each can be is for its assessment to tell
 */
export function nudgesOf(joint: Joint): readonly Nudge[] {
  return [
    ...thicker(joint),
    ...grown(joint, 'length', 'length', LITTLE),
    ...grown(joint, 'length', 'length', -LITTLE),
    ...wider(joint),
    ...grown(joint, 'fillet', 'fillet', LITTLE),
    ...grown(joint, 'depth', 'depth', LITTLE),
    ...moved(joint),
    ...grown(joint, 'sideBySide', 'sideBySide', 1),
    ...inOthers(joint),
  ];
}

/**
 * What each small change of a joint does, each through the same assessment as the joint itself.
 *
 * @param joint - any joint of a known kind [-]
 * @param judge - what assesses each [-]
 * @returns as `nudgesOf`, each with its assessment, or the problems for which it cannot be
 */
export function nudged(joint: Joint, judge: Judge = assess): readonly Nudged[] {
  return nudgesOf(joint).map((nudge) => ({ ...nudge, assessed: judge(nudge.after) }));
}
