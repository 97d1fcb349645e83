import { useEffect, useRef, type RefObject } from 'react';

/** Scrolls whatever scrolls sideways round the element until it is in sight; the page itself is left where it is. */
function bringIntoSight(element: Element): void {
  for (let box = element.parentElement; box !== null && box !== document.body; box = box.parentElement) {
    const [inner, outer] = [element.getBoundingClientRect(), box.getBoundingClientRect()];
    // By whole widths of its like: a strip that snaps to their starts would go back from any place between.
    const over = Math.ceil((inner.right - outer.right) / inner.width) * inner.width;
    if (inner.right > outer.right) box.scrollLeft += over;
    if (inner.left < outer.left) box.scrollLeft -= outer.left - inner.left;
  }
}

/** Keeps the element in sight of what scrolls round it from the moment that it matters. */
export function useInSight<E extends Element>(matters: boolean): RefObject<E | null> {
  const ref = useRef<E>(null);
  useEffect(() => {
    if (matters && ref.current !== null) bringIntoSight(ref.current);
  }, [matters]);
  return ref;
}
