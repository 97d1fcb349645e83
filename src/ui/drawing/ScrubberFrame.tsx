import { type KeyboardEvent, type ReactNode, type RefObject } from 'react';
import type { Scale } from './draftingScale.ts';
import type { MoveButton } from './useDrawing.ts';

/** The range input that lies over the drawn scale, in what the scale counts in. */
interface Range {
  readonly label: string;
  readonly text: string;
  readonly keys?: string | undefined;
  readonly min: number;
  readonly max: number;
  readonly value: number;
  readonly onChange: (value: number) => void;
  /** Returns whether the key meant something here. */
  readonly onKey: (key: string, isShifted: boolean) => boolean;
}

interface Props {
  readonly move: MoveButton;
  readonly track: RefObject<HTMLDivElement | null>;
  readonly width: number;
  readonly scale: Scale;
  /** Where rest and the shown state lie on the scale [px]. */
  readonly rest: number;
  readonly at: number;
  /** What is marked on the scale, and whether that has words under the figures. */
  readonly marks?: ReactNode;
  readonly hasWords?: boolean;
  readonly range: Range;
  /** Name and value: where it stands, and what is felt there. */
  readonly readings: readonly (readonly [name: string, value: string])[];
}

/** A drafting scale that moves a joint, drawn over a range input, with what is read where it stands. */
export function ScrubberFrame({ move, track, width, scale, rest, at, marks, hasWords, range, readings }: Props) {
  const press = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (range.onKey(event.key, event.shiftKey)) event.preventDefault();
  };
  return (
    <div className="scrub">
      <button type="button" className="b" aria-pressed={move.isPressed} onClick={move.onMove}>
        {move.label}
      </button>
      <div className={hasWords === true ? 'track marked' : 'track'} ref={track}>
        <svg aria-hidden="true" width={width} height="40">
          <path className="L" d={`M0 12H${width}${scale.ticks}`} />
          {scale.figures.map(({ x, text, anchor }) => (
            <text key={text} className="s12" x={x} y="36" textAnchor={anchor}>
              {text}
            </text>
          ))}
          {marks}
          <path className="travelled" d={`M${rest.toFixed(1)} 12H${at.toFixed(1)}`} />
          <path className="Ia" d={`M${at.toFixed(1)} 12l-6.5-10h13Z`} />
        </svg>
        <input
          type="range"
          aria-label={range.label}
          aria-valuetext={range.text}
          aria-keyshortcuts={range.keys}
          min={range.min}
          max={range.max}
          step="any"
          value={range.value}
          onChange={(event) => range.onChange(Number(event.currentTarget.value))}
          onKeyDown={press}
        />
      </div>
      <dl className="read">
        {readings.map(([name, value], i) => (
          // oxlint-disable-next-line react/no-array-index-key -- the readings keep their order, their names may change
          <div key={i}>
            <dt>{name}</dt>
            <dd className={i === 0 ? 'live' : undefined}>{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
