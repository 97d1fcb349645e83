import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { settled, type HandleSpec } from './handles.ts';
import { stepsOf } from './scrubKeys.ts';

export type Phase = 'live' | 'done';

interface Props {
  readonly spec: HandleSpec;
  /** Radius of what can be hit [px]. */
  readonly target: number;
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
  /** While a handle is held, the sheet keeps its scale and place. */
  readonly onHold: (isHeld: boolean) => void;
}

interface Drag {
  readonly x: number;
  readonly y: number;
  readonly value: number;
  last: number;
}

/** A diamond on a governing dimension: dragged, or stepped with the arrow keys. */
export function Handle({ spec, target, onSize, onHold }: Props) {
  const drag = useRef<Drag>(undefined);
  const { at, value, min, max, step, snap, perPx, parameter } = spec;

  const start = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus({ preventScroll: true });
    drag.current = { x: event.clientX, y: event.clientY, value, last: value };
    onHold(true);
  };
  const move = (event: PointerEvent<SVGGElement>) => {
    const held = drag.current;
    if (!held) return;
    const by = (event.clientX - held.x) * perPx.x + (event.clientY - held.y) * perPx.y;
    const now = settled(spec, held.value + by, snap);
    if (now === held.last || Math.abs(by) < snap / 2) return;
    held.last = now;
    onSize(parameter, now, 'live');
  };
  const finish = (isKept: boolean) => {
    const held = drag.current;
    if (!held) return;
    drag.current = undefined;
    onHold(false);
    if (held.last !== held.value) onSize(parameter, isKept ? held.last : held.value, 'done');
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && drag.current) return finish(false);
    const steps = stepsOf(event.key, event.shiftKey);
    const to =
      event.key === 'Home'
        ? min
        : event.key === 'End'
          ? max
          : steps === undefined
            ? undefined
            : settled(spec, value + steps * step, step);
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    if (to !== value) onSize(parameter, to, 'done');
  };

  return (
    <g
      className="hg"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a range input cannot stand inside a drawing
      role="slider"
      tabIndex={0}
      aria-label={spec.label}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={spec.say(value)}
      aria-orientation={spec.cursor === 'ns-resize' ? 'vertical' : 'horizontal'}
      style={{ cursor: spec.cursor }}
      transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={() => finish(true)}
      onPointerCancel={() => finish(false)}
      onKeyDown={press}
    >
      <circle className="target" r={target} />
      <circle className="ring" r={13} />
      <path className="hdl" d="M-6.5 0L0-6.5 6.5 0 0 6.5Z" />
    </g>
  );
}
