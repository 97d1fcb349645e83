import { useSession } from '../../store/session.ts';
import { noticeText } from '../text/shellText.ts';

/** The last change and the way back; it stays until the next change. */
export function Slip() {
  const notice = useSession((state) => state.notice);
  const undo = useSession((state) => state.undo);
  const redo = useSession((state) => state.redo);
  const takenBack = notice?.how === 'undone';
  return (
    <output className="slip">
      {notice !== undefined && (
        <span>
          <span>{noticeText(notice)}.</span>
          <button className="b quiet" type="button" onClick={takenBack ? redo : undo}>
            {takenBack ? 'Redo' : 'Undo'}
          </button>
        </span>
      )}
    </output>
  );
}
