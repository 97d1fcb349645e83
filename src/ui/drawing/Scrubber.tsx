import { useMemo, type KeyboardEvent } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { effortAt, peakStrainFor } from '../../core/design/curves.ts';
import { turnOf } from '../../core/design/joint.ts';
import { asRad, degrees, radians } from '../../core/units.ts';
import { effortText } from '../text/amountText.ts';
import { bentText } from '../text/drawingText.ts';
import { percent } from '../text/numbers.ts';
import { draftingScale } from './draftingScale.ts';
import { useWidth } from './useWidth.ts';

interface Props {
  readonly assessment: Assessment;
  readonly fraction: number;
  readonly onBent: (fraction: number) => void;
  readonly moveLabel: string;
  /** Of a button that stays down until it is pressed again. */
  readonly isPressed: boolean | undefined;
  readonly onMove: () => void;
}

/** Moves a joint through its travel: a drafting scale in degrees, and what is felt where it stands. */
export function Scrubber({ assessment, fraction, onBent, moveLabel, isPressed, onMove }: Props) {
  const full = turnOf(assessment.joint.movement);
  const [track, width] = useWidth<HTMLDivElement>();
  const scale = useMemo(() => draftingScale(full, Math.max(1, width)), [full, width]);
  const bent = asRad(full * fraction);
  const strain = peakStrainFor(assessment, { amount: bent });
  const x = width * fraction;

  const press = (event: KeyboardEvent) => {
    const steps = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    const to = event.key === 'Home' ? 0 : event.key === 'End' ? 1 : steps && stepped(steps * (event.shiftKey ? 10 : 1));
    if (to === undefined) return;
    event.preventDefault();
    onBent(to);
  };
  // On whole degrees, and always on the end itself, which need not be one.
  const stepped = (steps: number) => {
    const deg = degrees(bent) + steps;
    const whole = steps > 0 ? Math.floor(deg + 1e-6) : Math.ceil(deg - 1e-6);
    return Math.min(1, Math.max(0, radians(whole) / full));
  };

  return (
    <div className="scrub">
      <button type="button" className="b" aria-pressed={isPressed} onClick={onMove}>
        {moveLabel}
      </button>
      <div className="track" ref={track}>
        <svg aria-hidden="true" width={width} height="40">
          <path className="L" d={`M0 12H${width}${scale.ticks}`} />
          {scale.figures.map(({ x: at, text, anchor }) => (
            <text key={text} className="s12" x={at} y="36" textAnchor={anchor}>
              {text}
            </text>
          ))}
          <path className="travelled" d={`M0 12H${x.toFixed(1)}`} />
          <path className="Ia" d={`M${x.toFixed(1)} 12l-6.5-10h13Z`} />
        </svg>
        <input
          type="range"
          aria-label="Bent by, degrees"
          aria-valuetext={bentText(bent, full, strain)}
          min={0}
          max={degrees(full)}
          step="any"
          value={degrees(bent)}
          onChange={(event) => onBent(Math.min(1, radians(Number(event.currentTarget.value)) / full))}
          onKeyDown={press}
        />
      </div>
      <dl className="read">
        <div>
          <dt>bent</dt>
          <dd className="live">{degrees(bent).toFixed(1)}°</dd>
        </div>
        <div>
          <dt>strain</dt>
          <dd>{percent(strain)}</dd>
        </div>
        <div>
          <dt>effort</dt>
          <dd>{effortText(effortAt(assessment, bent).typical, assessment.drive.measure)}</dd>
        </div>
      </dl>
    </div>
  );
}
