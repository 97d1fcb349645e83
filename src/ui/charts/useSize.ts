import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import type { Size } from './frame.ts';

/** The size of an element as the page lays it out, kept up to date; undefined before the first layout. */
export function useSize<T extends Element>(): [RefObject<T | null>, Size | undefined] {
  const ref = useRef<T>(null);
  const [size, setSize] = useState<Size>();
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      setSize((was) => (was?.width === width && was.height === height ? was : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, size];
}
