import { lengthFigure, type LengthUnit } from '../../text/numbers.ts';
import { CENTRE_PATH } from '../../text/solvedDrawingText.ts';
import { onSheet, scaleText, through } from '../sheet.ts';
import { captionedWidth, CIRCLE, driftAt } from './centrePath.ts';
import type { SolvedLayout } from './solvedLayout.ts';

/** The path of the centre of a turn, much enlarged, with the dot where it stands now and a leader to the place itself. */
export function CentreInset({
  layout,
  amount,
  unit,
}: {
  readonly layout: SolvedLayout;
  readonly amount: number;
  readonly unit: LengthUnit;
}) {
  const { centre: path, placed, sheet, scene } = layout;
  const corner = placed.centre;
  if (!path || !corner) return null;
  const middle = { x: corner.x + captionedWidth(path) / 2, y: corner.y + CIRCLE };
  const times = (path.scale * sheet.pxPerMm) / sheet.scale;
  const at = ({ x, y }: { x: number; y: number }) => ({ x: middle.x + x * times, y: middle.y - y * times });
  const off = driftAt(scene, path, amount);
  const now = at(off);
  const spot = onSheet(sheet, path.centre);
  const gap = Math.hypot(middle.x - spot.x, middle.y - spot.y);
  const toward = { x: (middle.x - spot.x) / gap, y: (middle.y - spot.y) / gap };
  const lead = [
    { x: spot.x + 7 * toward.x, y: spot.y + 7 * toward.y },
    { x: middle.x - CIRCLE * toward.x, y: middle.y - CIRCLE * toward.y },
  ];
  const figure = lengthFigure(Math.hypot(off.x, off.y), unit, unit === 'mm' ? 3 : 4);
  const below = now.y <= middle.y;
  return (
    <g>
      <circle className="L" cx={spot.x} cy={spot.y} r="7" />
      <path className="Lh" d={through(lead)} />
      <circle className="disc" cx={middle.x} cy={middle.y} r={CIRCLE} />
      <path
        className="C"
        d={`M${middle.x - CIRCLE} ${middle.y}h${2 * CIRCLE}M${middle.x} ${middle.y - CIRCLE}v${2 * CIRCLE}`}
      />
      <path className="W" d={through(path.points.map(at))} />
      <circle className="Ia" cx={now.x} cy={now.y} r="4" />
      <text className="ta halo" x={middle.x} y={middle.y + (below ? 27 : -18)} textAnchor="middle">
        {figure}
      </text>
      <text className="s12 halo" x={middle.x} y={middle.y + CIRCLE + 17} textAnchor="middle">
        {CENTRE_PATH}, {scaleText(path.scale)}
      </text>
    </g>
  );
}
