import { useEffect } from 'react';

/** What stands above the curves and may grow or shrink with every value. */
const ABOVE = '.brief, .draw, .answer > *';

/**
 * Keeps what stands above the curves as high as it is while a pointer is down on one of them, so that the point that is
 * dragged does not slide away under the hand.
 */
export function useHeldAbove(): void {
  useEffect(() => {
    const held: HTMLElement[] = [];
    const hold = ({ target }: PointerEvent) => {
      if (!(target instanceof Element) || !target.closest('.curves')) return;
      for (const part of document.querySelectorAll<HTMLElement>(ABOVE)) {
        part.style.height = `${part.getBoundingClientRect().height}px`;
        part.style.boxSizing = 'border-box';
        part.style.overflow = 'clip';
        held.push(part);
      }
    };
    const release = () => {
      for (const { style } of held.splice(0)) {
        for (const property of ['height', 'box-sizing', 'overflow']) style.removeProperty(property);
      }
    };
    window.addEventListener('pointerdown', hold);
    window.addEventListener('pointerup', release);
    window.addEventListener('pointercancel', release);
    return () => {
      release();
      window.removeEventListener('pointerdown', hold);
      window.removeEventListener('pointerup', release);
      window.removeEventListener('pointercancel', release);
    };
  }, []);
}
