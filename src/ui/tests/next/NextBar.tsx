import { scaleLog } from 'd3';
import type { LifeNow, NextTest } from '../../../core/tallies/nextTest.ts';
import { useSize } from '../../charts/useSize.ts';
import { cycles } from '../../text/numbers.ts';
import { barSpoken, NEXT } from '../../text/testsNextText.ts';

interface Props {
  readonly now: LifeNow;
  readonly test: NextTest;
  readonly wanted: number;
  /** Nobody has counted past here. */
  readonly most: number;
}

const HEIGHT = 44;
const MID = 22;
const SIDE = 6;

/** Where the two ends are lettered: apart, and on the paper. */
function lettered(low: number, high: number, width: number) {
  const apart = high - low < 90;
  return {
    low: { x: Math.max(SIDE, Math.min(low, width - 100)), anchor: 'start' as const },
    high: { x: Math.min(width - SIDE, apart ? Math.max(high, low + 90) : high), anchor: 'end' as const },
  };
}

/** The spread of life now, dashed; expected after the test, filled; and what is wanted. */
export function NextBar({ now, test: { after }, wanted, most }: Props) {
  const [svg, size] = useSize<SVGSVGElement>();
  const width = size?.width ?? 0;
  const [low, high] = [Math.max(1, Math.min(now.life[0], wanted) / 3), Math.max(now.life[1], wanted) * 3];
  const x = scaleLog()
    .domain([low, high])
    .range([SIDE, Math.max(SIDE + 1, width - SIDE)]);
  const at = (value: number) => x(Math.min(high, Math.max(low, value)));
  const [from, to] = [at(now.life[0]), at(now.life[1])];
  const ends = lettered(from, to, width);
  const said = (value: number) => (value > most ? `past ${cycles(most)}` : cycles(Math.max(1, value)));
  return (
    <svg ref={svg} className="next-bar" role="img" aria-label={barSpoken(now, after)} height={HEIGHT}>
      {size && (
        <>
          <path className="Lh" d={`M${SIDE} ${MID}H${width - SIDE}`} />
          <rect className="next-now" x={from} y={MID - 6} width={Math.max(1, to - from)} height="12" />
          <path className="next-after" d={`M${at(after.life[0])} ${MID}H${at(after.life[1])}`} />
          <path className="next-wanted" d={`M${at(wanted)} ${MID - 12}V${MID + 6}`} />
          <text
            className="s12 wanted"
            x={at(wanted) + (at(wanted) > width - 110 ? -4 : 4)}
            y={10}
            textAnchor={at(wanted) > width - 110 ? 'end' : 'start'}
          >
            {NEXT.wanted(wanted)}
          </text>
          <text className="s12 t2" x={ends.low.x} y={HEIGHT - 4} textAnchor={ends.low.anchor}>
            {said(now.life[0])}
          </text>
          <text className="s12 t2" x={ends.high.x} y={HEIGHT - 4} textAnchor={ends.high.anchor}>
            {said(now.life[1])}
          </text>
        </>
      )}
    </svg>
  );
}
