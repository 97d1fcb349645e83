import { useMemo } from 'react';
import { layableWidths } from '../../core/print/checkProfile.ts';
import { asLaid } from '../../core/inspect/asLaid.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { lengthFigure } from '../text/numbers.ts';
import { COMB, MESH_FIGURES } from '../text/meshText.ts';
import { Mark } from '../app/Mark.tsx';
import { numbersText } from './numbersText.ts';
import { Balloon, balloonReach } from './Balloon.tsx';
import { isChosen, useChecked } from './checked.ts';
import { widthFor, widthsForAll } from './wholePlaces.ts';

const ROW = 44;
const TOP = 52;
const FOOT = 58;
/** Of more kinds than this only the first are drawn, with the one that is looked at. */
const MOST = 10;

/** Fig. 5: at which line widths each thin section would be whole. */
export function WidthComb() {
  const checked = useChecked();
  const [ref, width] = useWidth<HTMLElement>();
  const { groups, part, values, unit } = checked;
  const { as } = values;
  const { box } = part.facts;
  const inLines = groups.filter(({ one }) => one.landing.countOf === 'lines');
  const rows = inLines.filter((alike, i) => i < MOST || isChosen(alike, checked));
  const { hard, soft } = layableWidths(as.profile.nozzle);
  const places = useMemo(
    () =>
      widthsForAll(
        inLines.map(({ one }) => one.flexure),
        box,
        as,
        [soft.min, soft.max],
      ),
    // oxlint-disable-next-line react/exhaustive-deps -- which of them are in lines follows from the groups
    [groups, box, as, soft.min, soft.max],
  );
  if (inLines.length === 0) return null;
  const reach = Math.max(...rows.map(({ numbers }) => balloonReach(numbersText(numbers))));
  const [left, right] = [2 * reach + 10, width - 14];
  const [low, high] = [
    Math.max(hard.min, 0.6 * soft.min),
    Math.max(1.4 * soft.max, Math.min(hard.max, as.profile.lineWidth + 0.05)),
  ];
  const x = (value: number) => left + ((right - left) * (value - low)) / (high - low);
  const bottom = TOP + ROW * rows.length;
  const height = bottom + FOOT;
  const marks = Array.from({ length: 40 }, (_, i) => i * 0.05).filter((at) => at >= low && at <= high);
  const [best] = places.toSorted((a, b) => Number(b.isEven) - Number(a.isEven));
  const set = as.profile.lineWidth;
  const clamp = (at: number, room: number) => Math.min(Math.max(at, left + room), right - room);
  return (
    <figure className="chart comb" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 5</b> {MESH_FIGURES.widths}
        </span>
        <span>
          {COMB.span(lengthFigure(as.profile.nozzle, unit, unit === 'mm' ? 1 : undefined))}
          <Mark kind="memory" about="printer" />
        </span>
      </figcaption>
      <ul className="vh">
        {rows.map(({ one, numbers }) => (
          <li key={one.flexure.number}>
            {COMB.row(
              numbersText(numbers),
              [1, 2, 3, 4, 5, 6]
                .map((count) => ({ count, at: widthFor(asLaid(one.flexure, box, as).thickness, count, as) }))
                .filter(({ at }) => at >= soft.min && at <= soft.max)
                .map(({ count, at }) => `${count} at ${lengthFigure(at, unit)}`),
            )}
          </li>
        ))}
      </ul>
      {width > 0 && (
        <svg
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={MESH_FIGURES.widths}
        >
          <rect
            className="span"
            x={x(soft.min)}
            y={TOP - 16}
            width={x(soft.max) - x(soft.min)}
            height={bottom - TOP + 16}
          />
          {rows.map((alike, i) => {
            const y = TOP + ROW * i + 26;
            const { thickness } = asLaid(alike.one.flexure, box, as);
            const teeth = Array.from({ length: 12 }, (_, n) => ({ n: n + 1, at: widthFor(thickness, n + 1, as) }));
            return (
              <g key={alike.one.flexure.number}>
                <path className="Lh" d={`M${left} ${y}H${right}`} />
                <Balloon x={reach} y={y} text={numbersText(alike.numbers)} isOn={isChosen(alike, checked)} />
                {teeth
                  .filter(({ at }) => at >= low && at <= high)
                  .map(({ n, at }) => (
                    <g key={n}>
                      <path className={n % 2 ? 'pin' : 'tooth'} d={`M${x(at)} ${y - 13}V${y}`} />
                      {n % 2 === 1 && <circle className="odd-dot" cx={x(at)} cy={y - 15} r="2.6" />}
                      <text className="s12 halo" x={x(at) + 6} y={y - 5}>
                        {n}
                      </text>
                    </g>
                  ))}
              </g>
            );
          })}
          <path className="L" d={`M${left} ${bottom}H${right}${marks.map((at) => `M${x(at)} ${bottom}v5`).join('')}`} />
          {marks
            .filter((at) => Math.round(at * 100) % 10 === 0)
            .map((at) => (
              <text key={at} className="s12" x={x(at)} y={bottom + 19} textAnchor="middle">
                {at.toFixed(1)}
              </text>
            ))}
          <text className="s12 t2" x={right} y={height - 4} textAnchor="end">
            {COMB.axis}
          </text>
          <path className="all-whole" d={places.map(({ at }) => `M${x(at)} ${TOP - 20}V${bottom}`).join('')} />
          {best && (
            <text className="tb s12 halo" x={clamp(x(best.at), 34)} y={bottom + 36} textAnchor="middle">
              {COMB.all(lengthFigure(best.at, unit))}
            </text>
          )}
          <path className="now-line" d={`M${x(set)} ${TOP - 20}V${bottom}`} />
          <text className="ta s12 halo" x={clamp(x(set), 26)} y={TOP - 26} textAnchor="middle">
            {COMB.set(lengthFigure(set, unit))}
          </text>
        </svg>
      )}
    </figure>
  );
}
