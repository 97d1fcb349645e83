import type { Quantity } from '../../core/material/types.ts';
import { isRangeRemembered } from '../text/filamentValueText.ts';
import { pct, type RowAxis } from './axes.ts';
import { Upright } from './Upright.tsx';

interface Props {
  readonly axis: RowAxis;
  readonly quantity: Quantity;
  /** Said instead of the drawing. */
  readonly label: string;
  readonly second?: Quantity | undefined;
  readonly secondAs?: 'ring' | 'diamond' | undefined;
  /** The strain of the joint, in pencil. */
  readonly joint?: number | undefined;
  /** A dotted line where something is: room temperature. */
  readonly room?: number | undefined;
  /** Places of the other filaments, as ticks. */
  readonly others?: readonly number[] | undefined;
}

/** Half the height of the bar [px]. */
const HALF = 4.5;
/** Beyond the cell at both ends, so that a line goes on from row to row [px]. */
const WHOLE = [-40, 60] as const;

function Box({ axis, quantity, middle }: Pick<Props, 'axis' | 'quantity'> & { readonly middle: number }) {
  const { low = quantity.typical, high = quantity.typical } = quantity;
  const [left, right] = [axis.at(low), axis.at(high)];
  const [top, bottom] = [middle - HALF, middle + HALF];
  const edges = isRangeRemembered(quantity) ? 'range-edge remembered' : 'range-edge';
  return (
    <>
      <rect
        className="range-box"
        x={pct(left)}
        y={top}
        width={pct(Math.max(right - left, 0.002))}
        height={bottom - top}
      />
      <line className={edges} x1={pct(left)} x2={pct(right)} y1={top} y2={top} />
      <line className={edges} x1={pct(left)} x2={pct(right)} y1={bottom} y2={bottom} />
      <Upright className="range-end" at={left} y={[top, bottom]} />
      <Upright className="range-end" at={right} y={[top, bottom]} />
    </>
  );
}

function Second({ axis, quantity, as, middle }: { axis: RowAxis; quantity: Quantity; as: string; middle: number }) {
  const { typical, low = typical, high = typical } = quantity;
  if (as === 'ring') return <circle className="range-ring" cx={pct(axis.at(typical))} cy={middle} r="3.2" />;
  return (
    <>
      <line className="range-second" x1={pct(axis.at(low))} x2={pct(axis.at(high))} y1={middle + 9} y2={middle + 9} />
      <svg x={pct(axis.at(typical))} y={middle + 9} overflow="visible">
        <path className="range-diamond" d="M0-3.6 3.6 0 0 3.6-3.6 0Z" />
      </svg>
    </>
  );
}

/** Low to high as a box, dashed where only remembered; the usual value upright. */
export function RangeBar({ axis, quantity, label, second, secondAs, joint, room, others = [] }: Props) {
  const middle = 9;
  return (
    <svg className="range" role="img" aria-label={label}>
      {axis.ticks.map(({ share }) => (
        <Upright key={share} className="G" at={share} y={WHOLE} />
      ))}
      {room !== undefined && <Upright className="range-room" at={axis.at(room)} y={WHOLE} />}
      {joint !== undefined && <Upright className="range-joint" at={axis.at(joint)} y={WHOLE} />}
      {others.length > 0 && <line className="Lh" x1="0" x2="100%" y1={middle} y2={middle} />}
      {others.map((value, at) => (
        // Two filaments may have the same figure.
        <Upright key={at} className="Lh" at={axis.at(value)} y={[middle - 4, middle + 4]} />
      ))}
      <Box axis={axis} quantity={quantity} middle={middle} />
      <Upright className="range-usual" at={axis.at(quantity.typical)} y={[middle - 8, middle + 8]} />
      {second && secondAs && <Second axis={axis} quantity={second} as={secondAs} middle={middle} />}
    </svg>
  );
}
