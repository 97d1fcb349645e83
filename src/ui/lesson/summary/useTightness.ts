import { useEffect, useLayoutEffect, useRef, useState, type RefObject } from 'react';
import { PAPER_HEIGHT, TIGHTNESS, type Tightness } from './tightness.ts';

/** Lays the page out as paper has it, whatever the width of the screen, while it is measured. */
const AS_PAPER = 'as-paper';

/** The first tightness at which a page fills no more than one sheet; measured before anything is painted. */
export function useTightness(): readonly [RefObject<HTMLElement | null>, Tightness] {
  const page = useRef<HTMLElement>(null);
  const [setting, set] = useState({ step: 0 });
  useEffect(() => {
    if (document.fonts.status === 'loaded') return undefined;
    // Faces that stand in are as wide, but not to the px.
    let isOver = false;
    void document.fonts.ready.then(() => !isOver && set({ step: 0 }));
    return () => {
      isOver = true;
    };
  }, []);
  useLayoutEffect(() => {
    const { step } = setting;
    const node = page.current;
    if (!node || step >= TIGHTNESS.length - 1) return;
    node.classList.add(AS_PAPER);
    const { height } = node.getBoundingClientRect();
    node.classList.remove(AS_PAPER);
    if (height > PAPER_HEIGHT) set({ step: step + 1 });
  }, [setting]);
  const tightness = TIGHTNESS[setting.step] ?? TIGHTNESS[0];
  if (!tightness) throw new RangeError('a page is set somehow');
  return [page, tightness];
}
