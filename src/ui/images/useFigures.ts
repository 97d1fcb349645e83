import { useEffect, useState } from 'react';
import { figuresIn, type PageFigure } from './figures.ts';

/** The page is looked at again when it has stood still for so long [ms]. */
const QUIET_MS = 300;

const page = () => document.querySelector('.sheet') ?? document.body;

/** The pictures of the page, looked for again whenever something comes or goes on it. */
export function useFigures(): readonly PageFigure[] {
  const [figures, setFigures] = useState(() => figuresIn(page()));
  useEffect(() => {
    let timer = 0;
    const watch = new MutationObserver((changes) => {
      const isOwn = changes.every(({ target }) => target instanceof Element && target.closest('.pictures') !== null);
      if (isOwn) return;
      window.clearTimeout(timer);
      timer = window.setTimeout(() => setFigures(figuresIn(page())), QUIET_MS);
    });
    watch.observe(page(), { childList: true, subtree: true });
    return () => {
      watch.disconnect();
      window.clearTimeout(timer);
    };
  }, []);
  return figures;
}
