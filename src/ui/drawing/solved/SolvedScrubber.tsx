import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { asRad, degrees, radians } from '../../../core/units.ts';
import { effortText } from '../../text/amountText.ts';
import { percent, type LengthUnit } from '../../text/numbers.ts';
import { effortHead, MOVED, pulls, SCRUBBER_LABEL, signedAmount, stateText } from '../../text/solvedDrawingText.ts';
import { ScrubberFrame } from '../ScrubberFrame.tsx';
import type { MoveButton } from '../useDrawing.ts';
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
  readonly move: MoveButton;
}

/** Moves a joint along its way: a scale with its marked states, and what is felt where it stands. */
export function SolvedScrubber({ a, travelled, amount, reading, unit, onAmount, move }: Props) {
  const { measure } = a.drive;
  const { from, to, wanted, marks } = travelled;
  const [track, width] = useWidth<HTMLDivElement>();
  const scale = useMemo(
    () => amountScale(travelled, Math.max(1, width), measure, unit),
    [travelled, width, measure, unit],
  );
  const standing = marks.find((mark) => Math.abs(mark.amount - amount) < 1e-6 * to);
  const said = { amount, ...reading, ...(standing ? { mark: standing.kind } : {}) };
  // Readers of the page by ear are told degrees, as the label says.
  const shown = (value: number) => (measure === 'turn' ? degrees(asRad(value)) : value);
  const meant = (value: number) => Math.min(to, Math.max(from, measure === 'turn' ? radians(value) : value));
  const press = (key: string, isShifted: boolean) => {
    const next = scrubbed(key, isShifted, amount, travelled, measure);
    if (next !== undefined) onAmount(next);
    return next !== undefined;
  };
  return (
    <ScrubberFrame
      {...{ move, track, width, scale }}
      rest={scale.x(0)}
      at={scale.x(amount)}
      hasWords={marks.length > 0}
      marks={<Marks travelled={travelled} at={scale.x} width={width} />}
      range={{
        label: SCRUBBER_LABEL[measure],
        text: stateText(said, wanted, measure, unit),
        keys: marks.length > 0 ? 'n' : undefined,
        min: shown(from),
        max: shown(to),
        value: shown(amount),
        onChange: (value) => onAmount(meant(value)),
        onKey: press,
      }}
      readings={[
        [MOVED[measure], signedAmount(amount, measure, unit)],
        ['strain', percent(reading.strain)],
        [effortHead(pulls(reading.effort)), effortText(Math.abs(reading.effort), measure)],
      ]}
    />
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
