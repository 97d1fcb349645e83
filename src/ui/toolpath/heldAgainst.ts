/** What a section of a toolpath is held against. */
import type { Joint } from '../../core/design/joint.ts';
import { jointMatching } from '../../core/inspect/toolpath/judgePlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import type { ToolpathValues } from '../../store/toolpaths.ts';

/** The joint that the user chose, else the one that fits; undefined where it is held against the file itself. */
export function heldJoint(
  place: Place,
  { against }: Pick<ToolpathValues, 'against'>,
  joints: readonly Joint[],
): Joint | undefined {
  const chosen = against[place.number];
  if (chosen === 'file') return undefined;
  const named = chosen && joints.find(({ id }) => id === chosen.joint);
  return named ?? jointMatching(place, joints);
}
