import type { Joint } from './joint.ts';

/**
 * The joint with one size changed.
 *
 * @param joint - any joint [-]
 * @param name - name of a size of its kind [-]
 * @param value - new value [mm], count, ratio [-] or angle [rad]
 * @returns a new joint
 */
export function withSize(joint: Joint, name: string, value: number): Joint {
  return { ...joint, sizes: { ...joint.sizes, [name]: value } };
}
