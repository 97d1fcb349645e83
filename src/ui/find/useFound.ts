/** What happens with what was found: it becomes a joint of the part, and the finder closes. */
import type { Joint } from '../../core/design/joint.ts';
import { isFull } from '../../store/edits.ts';
import { useFinding } from '../../store/finding.ts';
import { useSession } from '../../store/session.ts';
import { cleanName } from '../../files/names.ts';
import { useChoosing } from '../joints/choosing.ts';
import { foundName } from '../text/foundText.ts';
import { newName, partFull, SAID } from '../text/shellText.ts';

export interface UseFound {
  /** Adds it at the end, opens it, and closes the finder. */
  readonly use: (joint: Joint) => void;
  /** Why that cannot be. */
  readonly cannot: string | undefined;
}

/** Takes what was found into the part. */
export function useFound(): UseFound {
  const about = useFinding((state) => state.brief?.about ?? '');
  const close = useChoosing((state) => state.close);
  const full = useSession(isFull);
  const count = useSession((state) => state.part.joints.length);
  const use = (joint: Joint) => {
    const { part, addJoint } = useSession.getState();
    const taken = part.joints.map(({ name }) => name);
    const name = newName(cleanName(foundName(joint.family, about)), taken);
    addJoint({ ...joint, name }, SAID.added(name));
    close(false);
  };
  return { use, cannot: full ? partFull(count) : undefined };
}
