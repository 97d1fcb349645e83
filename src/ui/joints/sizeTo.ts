/** Sizes changed by hand on the drawing and on the curves: a drag is one step to undo, whatever figure it is made on. */
import type { Joint } from '../../core/design/joint.ts';
import { withCount } from '../../core/design/withCount.ts';
import { driveOf } from '../../core/flexures/drives.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import { findFamily } from '../../core/flexures/known.ts';
import { useChoices } from '../../store/choices.ts';
import { workBefore } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { changedText, type NamedSize, type SizeRole } from '../text/briefText.ts';
import { kindText } from '../text/kindText.ts';
import { briefField, sayValue, suffixOf } from './briefValues.ts';
import { tryChange } from './tryChange.ts';

const GESTURE = 'sizing by hand';

/** A size as the brief names it: by the common role that it plays, or by its own name. */
function briefName(name: string, family: FlexureFamily): SizeRole | NamedSize {
  const found = Object.entries(family.roles).find(([, size]) => size === name);
  return found === undefined ? `sizes.${name}` : (found[0] as SizeRole);
}

function saidOf(size: string, family: FlexureFamily, joint: Joint, before: Joint): string {
  const { unit } = useChoices.getState();
  const name = briefName(size, family);
  const [now, was] = [briefField(name, joint, family), briefField(name, before, family)];
  const kind = kindText(joint.family);
  return changedText(name, {
    now: `${sayValue(now, now.value, unit)}${suffixOf(now, unit)}`,
    was: sayValue(was, was.value, unit),
    label: kind.sizes[size] ?? size,
    kind,
    measure: driveOf(family, joint.movement.drive).measure,
    count: now.value,
  });
}

/**
 * Gives a size of the open joint a value, `live` while the hand moves and `done` when it lets go. What the joint
 * cannot be is not done: the handle stays where it was.
 */
export function sizeTo(name: string, value: number, phase: 'live' | 'done'): void {
  const session = useSession.getState();
  const joint = session.part.joints.find(({ id }) => id === session.current);
  const family = findFamily(joint?.family ?? '');
  if (joint === undefined || family === undefined) return;
  const isCount = name === family.roles.count;
  const asked = isCount ? withCount(joint, value) : { ...joint, sizes: { ...joint.sizes, [name]: value } };
  const { next, problem } = tryChange(joint, asked, family);
  if (problem === undefined) {
    const before = workBefore(session, GESTURE).part.joints.find(({ id }) => id === joint.id) ?? joint;
    session.changeJoint(next, saidOf(name, family, next, before), GESTURE);
  }
  // Two sizes may be done one after the other, and they are one step.
  if (phase === 'done') queueMicrotask(session.endGesture);
}
