import { useEffect, useRef, useState, type ReactNode } from 'react';

interface Props {
  readonly className: string;
  /** What is scrolled, for those who come to it by keyboard. */
  readonly label: string;
  readonly children: ReactNode;
}

/** What keeps its size on a narrow screen: scrolled sideways there, by keyboard as well, and no stop for the keyboard else. */
export function Scrolled({ className, label, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const [isWide, setWide] = useState(false);
  useEffect(() => {
    const node = box.current;
    if (!node) return;
    const watch = new ResizeObserver(() => setWide(node.scrollWidth > node.clientWidth));
    watch.observe(node);
    return () => watch.disconnect();
  }, []);
  // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reached
  const reached = isWide ? { tabIndex: 0, role: 'group', 'aria-label': label } : {};
  return (
    <div ref={box} className={`scrolled ${className}`} {...reached}>
      {children}
    </div>
  );
}
