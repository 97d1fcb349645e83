import { useEffect, useLayoutEffect, useRef, type RefObject } from 'react';

/** Keeps a bar at the foot of what can be seen: a soft keyboard covers the foot of the page on some phones. */
function followFoot(bar: HTMLElement): () => void {
  const view = window.visualViewport;
  const follow = (): void => {
    const covered = view ? window.innerHeight - view.height - view.offsetTop : 0;
    bar.style.setProperty('--covered', `${Math.max(0, covered)}px`);
  };
  follow();
  view?.addEventListener('resize', follow);
  view?.addEventListener('scroll', follow);
  return () => {
    view?.removeEventListener('resize', follow);
    view?.removeEventListener('scroll', follow);
  };
}

/**
 * Keeps the hint within its sentence where it stands under it, and off the field where it is a bar at the foot of the
 * view (on a phone).
 */
export function useHintPlace(field: RefObject<HTMLElement | null>): RefObject<HTMLSpanElement | null> {
  const hint = useRef<HTMLSpanElement>(null);
  useEffect(() => (hint.current ? followFoot(hint.current) : undefined), [hint]);

  // After every change, because the text of the hint and the place of the field both change with typing.
  useLayoutEffect(() => {
    const said = hint.current;
    if (!said || !field.current || document.activeElement !== field.current) return;
    said.style.translate = '';
    const box = said.getBoundingClientRect();
    if (getComputedStyle(said).position === 'fixed') {
      if (field.current.getBoundingClientRect().bottom > box.top) field.current.scrollIntoView({ block: 'center' });
      return;
    }
    const right = said.closest('.sentence')?.getBoundingClientRect().right ?? box.right;
    if (box.right > right) said.style.translate = `${right - box.right}px`;
  });
  return hint;
}
