import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { partFull } from '../text/shellText.ts';
import { add, ADDITIONS } from './newJoints.ts';

/** Every kind that can be added, in words. */
export function AddJoint() {
  const count = useSession((state) => state.part.joints.length);
  const full = useSession(isFull);
  return (
    <fieldset className="adds">
      <legend className="vh">Add a joint</legend>
      <span aria-hidden="true">Add</span>
      {ADDITIONS.map((addition) => (
        <button
          key={addition.id}
          className="b"
          type="button"
          aria-disabled={full ? true : undefined}
          title={full ? partFull(count) : undefined}
          onClick={full ? undefined : () => add(addition)}
        >
          {addition.words}
        </button>
      ))}
    </fieldset>
  );
}
