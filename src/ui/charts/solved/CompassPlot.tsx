import { memo } from 'react';
import { directionText, giveText, stiffnessText } from '../../text/solvedChartText.ts';
import { atBearing, COLUMN, figured, needleCorners, type Compass, type CompassLayout, type Needle } from './compass.ts';

interface CompassPlotProps {
  readonly compass: Compass;
  readonly layout: CompassLayout;
  /** Which needle is read. */
  readonly read: number | undefined;
}

const WAIST = 6;

export const CompassPlot = memo(function CompassPlot({ compass, layout, read }: CompassPlotProps) {
  const { needles, top } = compass;
  const { centre, reach } = layout;
  const rings = figured(compass);
  const far = (give: number) => (top > 0 && Number.isFinite(give) ? (reach * give) / top : 0);
  // The wanted needle lies over its neighbours.
  const order = needles.toSorted((one, other) => Number(one.isWanted) - Number(other.isWanted));
  const held = read === undefined ? undefined : needles[read];
  const tip = held && atBearing(held.bearingDeg, far(held.give));
  return (
    <>
      <g transform={`translate(${centre.x} ${centre.y})`}>
        {rings.map(({ at }) => (
          <circle key={at} className={`compass-ring${at === top ? ' outer' : ''}`} r={far(at)} />
        ))}
        {order.map((needle) => {
          const corners = needleCorners(needle.bearingDeg, far(needle.give), Math.min(WAIST, far(needle.give) / 2 + 1));
          return (
            <path
              key={needle.direction}
              className={`compass-needle${needle.isWanted ? ' wanted' : ''}`}
              d={`M${corners.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`}
            />
          );
        })}
        {rings.map(({ at, text }) => (
          <text key={at} className="t2 s12 halo" x={far(at) * 0.5} y={-far(at) * 0.866 + 4} textAnchor="middle">
            {text}
          </text>
        ))}
        {tip && <circle className="compass-read" r="8" cx={tip.x} cy={tip.y} />}
      </g>
      {needles.map((needle) => (
        <NeedleWords key={needle.direction} needle={needle} layout={layout} />
      ))}
    </>
  );
});

const LINE = 14;
/** Half the least distance between two columns of words, one above the other [px]. */
const HALF_APART = 26;

/** The words at a needle's end of the outer ring: one line above and below, three at the sides. */
function NeedleWords({ needle, layout: { centre, reach, width } }: { needle: Needle; layout: CompassLayout }) {
  const { direction, give, stiffness, bearingDeg, isWanted } = needle;
  const name = directionText(direction);
  const look = isWanted ? 'ta' : '';
  const up = bearingDeg === 0;
  if (up || bearingDeg === 180) {
    const y = up ? centre.y - reach - 22 : centre.y + reach + 17;
    return (
      <g className="compass-words" transform={`translate(${centre.x} ${y})`}>
        <text className={look} textAnchor="middle">
          {name} {giveText(give)}
        </text>
        <text className="t2" y={LINE} textAnchor="middle">
          {stiffnessText(stiffness, direction)}
        </text>
      </g>
    );
  }
  const right = bearingDeg < 180;
  // At the edge of narrow paper, beside the ring on wide paper.
  const out = Math.min(width / 2 - 2, reach + COLUMN);
  const x = centre.x + (right ? out : -out);
  const above = bearingDeg < 90 || bearingDeg > 270;
  const y = centre.y + (above ? -1 : 1) * Math.max(reach * 0.31, HALF_APART) - 10;
  return (
    <g className="compass-words" transform={`translate(${x} ${y})`}>
      {[name, giveText(give), stiffnessText(stiffness, direction)].map((text, i) => (
        <text key={text} className={i === 2 ? 't2' : look} y={i * LINE} textAnchor={right ? 'end' : 'start'}>
          {text}
        </text>
      ))}
    </g>
  );
}
