import type { Frame } from '../charts/frame.ts';
import { rowName } from '../text/filamentsText.ts';
import { spreadNames } from './endNames.ts';
import type { SharedCurve } from './SharedPlot.tsx';

interface Props {
  readonly curves: readonly SharedCurve[];
  readonly marked: readonly string[];
  readonly frame: Frame;
}

/** Between names [px]. */
const NAME_GAP = 14;

/** Those whose names have room: the marked ones, then the others in their order. */
function named({ curves, marked }: Omit<Props, 'frame'>, most: number): readonly SharedCurve[] {
  if (curves.length <= most) return curves;
  const isMarked = ({ row }: SharedCurve) => marked.includes(row.id);
  return [...curves.filter(isMarked), ...curves.filter((curve) => !isMarked(curve))].slice(0, most);
}

/** Names of curves right of the paper, each with a hairline from its end. */
export function CurveNames({ curves, marked, frame: { box, x, y } }: Props) {
  const most = Math.floor((box.bottom - box.top) / NAME_GAP);
  const ends = named({ curves, marked }, most).flatMap(({ row, drawn }) => {
    const end = drawn.median.at(-1);
    return end ? [{ row, at: { x: x(end.cycles), y: Math.max(y(end.strain), box.top) } }] : [];
  });
  const placed = spreadNames(
    ends.map(({ row, at }) => ({ key: row.id, end: at.y })),
    NAME_GAP,
    [box.top + 6, box.bottom - 4],
  );
  return placed.map(({ key, stands }) => {
    const end = ends.find(({ row }) => row.id === key);
    if (!end) return null;
    return (
      <g key={key} className="chart-end">
        <path d={`M${end.at.x} ${end.at.y}L${box.right - 2} ${stands}H${box.right + 5}`} />
        <text className={marked.includes(key) ? 'tb' : ''} x={box.right + 8} y={stands + 4}>
          {rowName(end.row)}
        </text>
      </g>
    );
  });
}
