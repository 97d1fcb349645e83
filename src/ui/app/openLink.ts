import { readJointLink } from '../../files/jointLink.ts';
import { isFull } from '../../store/edits.ts';
import { useMessages } from '../../store/messages.ts';
import { useSession } from '../../store/session.ts';
import { problemsText } from './problemsText.ts';
import { linkRefused, partFull, SAID } from '../text/shellText.ts';

/** Adds the joint that a fragment carries, if it carries one; returns whether the fragment was a joint link at all. */
function addLinkedJoint(fragment: string): boolean {
  if (!/^#?joint=/.test(fragment)) return false;
  const { say } = useMessages.getState();
  const session = useSession.getState();
  const read = readJointLink(fragment);
  if (!read.ok) say({ grade: 'fail', text: linkRefused(problemsText(read.problems)) });
  else if (isFull(session)) say({ grade: 'fail', text: linkRefused(partFull(session.part.joints.length)) });
  else session.addJoint(read.value, SAID.linkOpened(read.value.name));
  return true;
}

/** Takes the joint of the address over into the part and cleans the address, so that loading again adds no second. */
export function openAddress(): void {
  if (!addLinkedJoint(location.hash)) return;
  history.replaceState(history.state, '', location.pathname + location.search);
}
