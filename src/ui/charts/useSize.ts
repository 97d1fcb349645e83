import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import type { Size } from './frame.ts';

/** Narrower than this no figure can be read [px]. */
const LEAST = 160;

/** The size of an element as the page lays it out, kept up to date; undefined before that and where it has no room. */
export function useSize<T extends Element>(): [RefObject<T | null>, Size | undefined] {
  const ref = useRef<T>(null);
  const [size, setSize] = useState<Size>();
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      setSize((was) =>
        was?.width === width && was.height === height ? was : width < LEAST ? undefined : { width, height },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, size];
}
