import { familyOf } from '../flexures/known.ts';
import type { Joint } from './joint.ts';

/**
 * The joint with another count of lines or layers; a measured thickness gives way to the count.
 *
 * @param joint - any joint [-]
 * @param count - whole count [-], ≥ 1
 * @returns a new joint
 */
export function withCount(joint: Joint, count: number): Joint {
  const family = familyOf(joint);
  const { measuredThickness: _measured, ...rest } = joint;
  return { ...rest, sizes: { ...joint.sizes, [family.roles.count]: count } };
}
