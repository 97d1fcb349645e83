import { useMessages } from '../../store/messages.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { linkRefused } from '../text/shellText.ts';

function refuse(why: string): undefined {
  useMessages.getState().say({ grade: 'fail', text: linkRefused(why) });
}

/** Takes the joint of the address over into the part and cleans the address, so that loading again adds no second. */
export function openAddress(): void {
  const { hash } = location;
  if (!/^#?joint=/.test(hash)) return;
  void Promise.all([import('./openLate.ts'), fetchKinds()])
    .then(([{ openFragment }]) => openFragment(hash, refuse))
    .catch(() => refuse('What reads links did not come; load the page again.'));
  history.replaceState(history.state, '', location.pathname + location.search);
}
