import { useSession } from '../../store/session.ts';
import { openJointOf } from '../../store/state.ts';
import { subjectOf } from '../text/imagesText.ts';

/** What the page is of, for the names of files: the part and its open joint, or what another place calls itself. */
export function subjectOfPage(): readonly string[] {
  const session = useSession.getState();
  const joint = openJointOf(session)?.name;
  const part = session.part.name;
  // Names may hold commas themselves.
  return joint !== undefined && document.title.startsWith(`${joint}, ${part}:`)
    ? [part, joint]
    : subjectOf(document.title);
}
