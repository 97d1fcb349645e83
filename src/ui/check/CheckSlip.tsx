import { useEffect, useRef } from 'react';
import type { Changing } from '../../store/history.ts';
import { useSession } from '../../store/session.ts';
import { noticeText } from '../text/shellText.ts';

/** What of a history its slip shows and does. */
type Slips = Pick<Changing<never>, 'notice' | 'undo' | 'redo' | 'dismiss'>;
const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.dataset['typing'] === 'true');

/** Here Ctrl Z takes back what was changed here; the joints have theirs. */
function useKeys({ undo, redo }: Slips): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      const isRedo = (key === 'z' && event.shiftKey) || key === 'y';
      if (key !== 'z' && !isRedo) return;
      event.preventDefault();
      event.stopPropagation();
      if (isRedo) redo();
      else undo();
    };
    window.addEventListener('keydown', onKey, true);
    return () => window.removeEventListener('keydown', onKey, true);
  }, [undo, redo]);
}

/** The last change made here, and the way back. */
export function CheckSlip({ history }: { readonly history: Slips }) {
  const { notice, undo, redo, dismiss } = history;
  const other = useSession((state) => state.notice);
  const known = useRef(other);
  useKeys(history);
  // What happens to the joints meanwhile is said by their own slip.
  useEffect(() => {
    if (known.current === other) return;
    known.current = other;
    dismiss();
  }, [other, dismiss]);
  const isTakenBack = notice?.how === 'undone';
  return (
    <output className="slip of-check">
      {notice !== undefined && (
        <span>
          <span>{noticeText(notice)}.</span>
          <button className="b quiet" type="button" onClick={isTakenBack ? redo : undo}>
            {isTakenBack ? 'Redo' : 'Undo'}
          </button>
        </span>
      )}
    </output>
  );
}
