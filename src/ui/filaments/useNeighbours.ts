import { useEffect } from 'react';
import { addressOf } from './route.ts';

/** What keeps arrow keys for itself. */
const OWN_ARROWS = 'input, select, textarea, [role="slider"], [role="spinbutton"], [contenteditable]';

/** The filament before and after one, round the ends; its own where there is no other. */
export function neighboursOf(ids: readonly string[], id: string): { readonly before: string; readonly after: string } {
  const at = ids.indexOf(id);
  return { before: ids.at(at - 1) ?? id, after: ids[(at + 1) % ids.length] ?? id };
}

/** Left and Right go to the filaments beside this one, Escape back to all of them. */
export function useNeighbours(ids: readonly string[], id: string): void {
  useEffect(() => {
    function press(event: KeyboardEvent): void {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      if (event.target instanceof Element && event.target.closest(OWN_ARROWS)) return;
      const { before, after } = neighboursOf(ids, id);
      const keys = new Map([
        ['ArrowLeft', addressOf(before)],
        ['ArrowRight', addressOf(after)],
        ['Escape', addressOf()],
      ]);
      const to = keys.get(event.key);
      if (to === undefined) return;
      event.preventDefault();
      location.hash = to;
    }
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [ids, id]);
}
