import { useId, type KeyboardEvent, type PointerEvent, type ReactNode, type RefObject } from 'react';
import type { Px, Size } from './frame.ts';
import { GRIP } from './JointMark.tsx';

/** What the reading cursor tells a reader of the page by ear. */
interface Spoken {
  readonly label: string;
  readonly how: string;
  readonly min: number;
  readonly max: number;
  readonly now: number;
  readonly text: string;
}

interface SurfaceProps {
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly size: Size | undefined;
  readonly spoken: Spoken;
  /** The joint's point is taken hold of. */
  readonly onGrab?: (at: Px) => void;
  /** A pointer is over the paper, or dragging from it. */
  readonly onPoint: (at: Px) => void;
  readonly onLeave: () => void;
  readonly onRelease: () => void;
  /** Returns whether the key meant something here. */
  readonly onKey: (key: string, shift: boolean) => boolean;
  readonly children: ReactNode;
}

/** The paper of a figure: one focusable reading cursor, moved by pointer or keys. */
export function Surface({ svg, size, spoken, onGrab, onPoint, onLeave, onRelease, onKey, children }: SurfaceProps) {
  const how = useId();
  const at = (event: PointerEvent): Px => {
    const corner = svg.current?.getBoundingClientRect();
    return { x: event.clientX - (corner?.left ?? 0), y: event.clientY - (corner?.top ?? 0) };
  };
  const touch = (event: PointerEvent<SVGSVGElement>) => {
    if (event.target instanceof Element && event.target.classList.contains(GRIP)) {
      event.currentTarget.setPointerCapture(event.pointerId);
      onGrab?.(at(event));
    } else onPoint(at(event));
  };
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (onKey(event.key, event.shiftKey)) event.preventDefault();
  };
  return (
    <>
      <svg
        ref={svg}
        className="chart-paper"
        viewBox={size && `0 0 ${size.width} ${size.height}`}
        // A range input cannot hold a drawing, and this slider is one.
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
        role="slider"
        tabIndex={0}
        aria-label={spoken.label}
        aria-describedby={how}
        aria-valuemin={spoken.min}
        aria-valuemax={spoken.max}
        aria-valuenow={spoken.now}
        aria-valuetext={spoken.text}
        onPointerDown={touch}
        onPointerMove={(event) => onPoint(at(event))}
        onPointerUp={onRelease}
        onPointerCancel={() => onKey('Escape', false)}
        // A finger that is lifted leaves; its reading stays until the focus goes elsewhere.
        onPointerLeave={(event) => event.pointerType === 'mouse' && onLeave()}
        onBlur={onLeave}
        onKeyDown={press}
      >
        {children}
      </svg>
      <p id={how} className="vh">
        {spoken.how}
      </p>
    </>
  );
}
