import { isFull } from '../../store/edits.ts';
import { useMessages } from '../../store/messages.ts';
import { useSession } from '../../store/session.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { problemsText } from './problemsText.ts';
import { linkRefused, partFull, SAID } from '../text/shellText.ts';

/** Adds the joint that a fragment carries. */
async function addLinkedJoint(fragment: string): Promise<void> {
  const [{ readJointLink }] = await Promise.all([import('../../files/jointLink.ts'), fetchKinds()]);
  const { say } = useMessages.getState();
  const session = useSession.getState();
  const read = readJointLink(fragment);
  if (!read.ok) say({ grade: 'fail', text: linkRefused(problemsText(read.problems)) });
  else if (isFull(session)) say({ grade: 'fail', text: linkRefused(partFull(session.part.joints.length)) });
  else session.addJoint(read.value, SAID.linkOpened(read.value.name));
}

/** Takes the joint of the address over into the part and cleans the address, so that loading again adds no second. */
export function openAddress(): void {
  const { hash } = location;
  if (!/^#?joint=/.test(hash)) return;
  void addLinkedJoint(hash).catch(() => {
    useMessages
      .getState()
      .say({ grade: 'fail', text: linkRefused('What reads links did not come; load the page again.') });
  });
  history.replaceState(history.state, '', location.pathname + location.search);
}
