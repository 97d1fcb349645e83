import { useMemo, type KeyboardEvent } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { asRad, degrees, radians } from '../../../core/units.ts';
import { effortText } from '../../text/amountText.ts';
import { percent, type LengthUnit } from '../../text/numbers.ts';
import { effortHead, MOVED, pulls, SCRUBBER_LABEL, signedAmount, stateText } from '../../text/solvedDrawingText.ts';
import { useWidth } from '../useWidth.ts';
import { amountScale } from './amountScale.ts';
import type { Reading } from './reading.ts';
import { scrubbed } from './scrubKeys.ts';
import { markWords } from './markWords.ts';
import type { Travelled } from './travelled.ts';

interface Props {
  readonly a: Assessment;
  readonly travelled: Travelled;
  readonly amount: number;
  readonly reading: Reading;
  readonly unit: LengthUnit;
  readonly onAmount: (amount: number) => void;
  readonly moveLabel: string;
  readonly isPressed: boolean | undefined;
  readonly onMove: () => void;
}

/** Moves a joint along its way: a scale with its marked states, and what is felt where it stands. */
export function SolvedScrubber({ a, travelled, amount, reading, unit, onAmount, moveLabel, isPressed, onMove }: Props) {
  const { measure } = a.drive;
  const [track, width] = useWidth<HTMLDivElement>();
  const scale = useMemo(
    () => amountScale(travelled, Math.max(1, width), measure, unit),
    [travelled, width, measure, unit],
  );
  const x = scale.x(amount);
  const isPulling = pulls(reading.effort);
  const standing = travelled.marks.find((mark) => Math.abs(mark.amount - amount) < 1e-6 * travelled.to);
  // Readers of the page by ear are told degrees, as the label says.
  const shown = (value: number) => (measure === 'turn' ? degrees(asRad(value)) : value);
  const meant = (value: number) =>
    Math.min(travelled.to, Math.max(travelled.from, measure === 'turn' ? radians(value) : value));
  const press = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const to = scrubbed(event.key, event.shiftKey, amount, travelled, measure);
    if (to === undefined) return;
    event.preventDefault();
    onAmount(to);
  };
  const said = { amount, ...reading, ...(standing ? { mark: standing.kind } : {}) };
  return (
    <div className="scrub">
      <button type="button" className="b" aria-pressed={isPressed} onClick={onMove}>
        {moveLabel}
      </button>
      <div className={travelled.marks.length > 0 ? 'track marked' : 'track'} ref={track}>
        <svg aria-hidden="true" width={width} height="40">
          <path className="L" d={`M0 12H${width}${scale.ticks}`} />
          {scale.figures.map(({ x: at, text, anchor }) => (
            <text key={text} className="s12" x={at} y="36" textAnchor={anchor}>
              {text}
            </text>
          ))}
          <Marks travelled={travelled} at={scale.x} width={width} />
          <path className="travelled" d={`M${scale.x(0).toFixed(1)} 12H${x.toFixed(1)}`} />
          <path className="Ia" d={`M${x.toFixed(1)} 12l-6.5-10h13Z`} />
        </svg>
        <input
          type="range"
          aria-label={SCRUBBER_LABEL[measure]}
          aria-valuetext={stateText(said, travelled.wanted, measure, unit)}
          aria-keyshortcuts={travelled.marks.length > 0 ? 'n' : undefined}
          min={shown(travelled.from)}
          max={shown(travelled.to)}
          step="any"
          value={shown(amount)}
          onChange={(event) => onAmount(meant(Number(event.currentTarget.value)))}
          onKeyDown={press}
        />
      </div>
      <dl className="read">
        <div>
          <dt>{MOVED[measure]}</dt>
          <dd className="live">{signedAmount(amount, measure, unit)}</dd>
        </div>
        <div>
          <dt>strain</dt>
          <dd>{percent(reading.strain)}</dd>
        </div>
        <div>
          <dt>{effortHead(isPulling)}</dt>
          <dd>{effortText(Math.abs(reading.effort), measure)}</dd>
        </div>
      </dl>
    </div>
  );
}

/** Full ball: it rests there; open ball: balanced; upright stroke: the effort turns round. Words while they have room. */
function Marks({
  travelled,
  at,
  width,
}: {
  readonly travelled: Travelled;
  readonly at: (amount: number) => number;
  readonly width: number;
}) {
  const words = useMemo(() => markWords(travelled, at, width), [travelled, at, width]);
  return (
    <g>
      {travelled.marks.map(({ kind, amount }) => {
        const x = at(amount);
        if (kind === 'rest') return <circle key={kind} className="I" cx={x} cy="12" r="4.2" />;
        if (kind === 'balanced') return <circle key={kind} className="open" cx={x} cy="12" r="3.8" />;
        return <path key={kind} className="W" d={`M${x.toFixed(1)} 5v14`} />;
      })}
      {travelled.wanted < travelled.to && <path className="Wa" d={`M${at(travelled.wanted).toFixed(1)} 12v15`} />}
      {words.map(({ text, x, isWanted }) => (
        <text key={text} className={isWanted ? 's12 ta' : 's12 t2'} x={x} y="52">
          {text}
        </text>
      ))}
    </g>
  );
}
