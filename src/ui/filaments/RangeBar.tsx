import type { Quantity } from '../../core/material/types.ts';
import { isRangeRemembered } from '../text/filamentValueText.ts';
import { pct, type RowAxis } from './axes.ts';

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

/** Half the height of the bar, and its middle [px]. */
const HALF = 4.5;

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
      <line className="range-end" x1={pct(left)} x2={pct(left)} y1={top} y2={bottom} />
      <line className="range-end" x1={pct(right)} x2={pct(right)} y1={top} y2={bottom} />
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
        <line key={share} className="G" x1={pct(share)} x2={pct(share)} y1="-40" y2="60" />
      ))}
      {room !== undefined && (
        <line className="range-room" x1={pct(axis.at(room))} x2={pct(axis.at(room))} y1="-40" y2="60" />
      )}
      {joint !== undefined && (
        <line className="range-joint" x1={pct(axis.at(joint))} x2={pct(axis.at(joint))} y1="-40" y2="60" />
      )}
      {others.length > 0 && <line className="Lh" x1="0" x2="100%" y1={middle} y2={middle} />}
      {others.map((value, at) => (
        <line
          // Two filaments may have the same figure.
          key={at}
          className="Lh"
          x1={pct(axis.at(value))}
          x2={pct(axis.at(value))}
          y1={middle - 4}
          y2={middle + 4}
        />
      ))}
      <Box axis={axis} quantity={quantity} middle={middle} />
      <line
        className="range-usual"
        x1={pct(axis.at(quantity.typical))}
        x2={pct(axis.at(quantity.typical))}
        y1={middle - 8}
        y2={middle + 8}
      />
      {second && secondAs && <Second axis={axis} quantity={second} as={secondAs} middle={middle} />}
    </svg>
  );
}
