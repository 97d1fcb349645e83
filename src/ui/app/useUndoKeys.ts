import { useEffect } from 'react';
import { useSession } from '../../store/session.ts';

const TEXT_TYPES: readonly string[] = ['text', 'search', 'url', 'email', 'tel', 'number'];

/**
 * Inside a field with typing that is not yet taken over, undo belongs to the typing. A field that says
 * `data-typing="false"` holds none.
 */
function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  if (!(target instanceof HTMLInputElement) || !TEXT_TYPES.includes(target.type)) return false;
  return target.dataset['typing'] !== 'false';
}

function wanted(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && !event.shiftKey ? 'redo' : undefined;
}

/** Ctrl Z, Ctrl Shift Z and Ctrl Y (or the command key) anywhere on the page. */
export function useUndoKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const what = wanted(event);
      if (what === undefined || isTyping(event.target)) return;
      event.preventDefault();
      useSession.getState()[what]();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
