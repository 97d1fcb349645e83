import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { CHOOSE, partFull } from '../text/shellText.ts';
import { useChoosing } from './choosing.ts';
import { add, MEASURED } from './newJoints.ts';

const OPENER = 'add-a-joint';
const FINDER = 'find-a-joint';

/** Opens the catalogue of kinds or the finder, or adds a joint of a part that exists already. */
export function AddJoint() {
  const count = useSession((state) => state.part.joints.length);
  const full = useSession(isFull);
  const open = useChoosing((state) => state.open);
  const button = (words: string, onClick: () => void, id?: string) => (
    <button
      id={id}
      className="b"
      type="button"
      aria-disabled={full ? true : undefined}
      title={full ? partFull(count) : undefined}
      onClick={full ? undefined : onClick}
    >
      {words}
    </button>
  );
  return (
    <div className="adds">
      {button(CHOOSE.add, () => open('a new joint', OPENER), OPENER)}
      {button(CHOOSE.find, () => open('what is found', FINDER), FINDER)}
      {button(MEASURED.words, () => add(MEASURED))}
    </div>
  );
}
