import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import type { Px } from '../charts/frame.ts';
import { moveOf, movedTo } from '../charts/stops.ts';

interface Props {
  readonly label: string;
  readonly at: Px;
  readonly isUpright: boolean;
  readonly value: number;
  readonly text: string;
  /** Where it can stand, in rising order; at the open end it lets all through. */
  readonly stops: readonly number[];
  /** What the value at a place on the screen is, along its bar [px]. */
  readonly valueAt: (place: number) => number;
  readonly onMove: (value: number) => void;
}

const ACROSS: Readonly<Record<string, string>> = { ArrowUp: 'ArrowRight', ArrowDown: 'ArrowLeft' };

/** A diamond on a bar of the brush: dragged, or stepped with the arrow keys. */
export function BarHandle({ label, at, isUpright, value, text, stops, valueAt, onMove }: Props) {
  const held = useRef<number>(undefined);
  const place = (event: PointerEvent) => (isUpright ? event.clientY : event.clientX);
  const [first = 0, last = 0] = [stops[0], stops.at(-1)];

  const start = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus({ preventScroll: true });
    held.current = place(event) - (isUpright ? at.y : at.x);
  };
  const move = (event: PointerEvent<SVGGElement>) => {
    if (held.current === undefined) return;
    onMove(Math.min(last, Math.max(first, valueAt(place(event) - held.current))));
  };
  const drop = () => {
    held.current = undefined;
  };
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const to = moveOf(ACROSS[event.key] ?? event.key, event.shiftKey);
    if (to === undefined) return;
    event.preventDefault();
    onMove(movedTo(stops, value, to));
  };

  return (
    <g
      className="hg"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a range input cannot stand inside a drawing
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={isUpright ? 'vertical' : 'horizontal'}
      aria-valuemin={first}
      aria-valuemax={last}
      aria-valuenow={value}
      aria-valuetext={text}
      style={{ cursor: isUpright ? 'ns-resize' : 'ew-resize' }}
      transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={drop}
      onPointerCancel={drop}
      onKeyDown={press}
    >
      <circle className="target" r={16} />
      <circle className="ring" r={11} />
      <path className="hdl" d="M-6.5 0L0-6.5 6.5 0 0 6.5Z" />
    </g>
  );
}
