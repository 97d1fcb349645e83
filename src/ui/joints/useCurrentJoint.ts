import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { openJointOf } from '../../store/state.ts';

/** The joint that is open; absent when the part has none. */
export function useCurrentJoint(): Joint | undefined {
  return useSession(openJointOf);
}
