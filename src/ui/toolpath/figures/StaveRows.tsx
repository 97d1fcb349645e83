import { memo } from 'react';
import type { JudgedPlace } from '../../../core/inspect/toolpath/judgedPlace.ts';
import { FailSquare } from './FailSquare.tsx';
import type { PlacedRow } from './staveScale.ts';
import type { StavePlan } from './stavePlan.ts';

interface Props {
  readonly plan: StavePlan;
  readonly wanted: JudgedPlace['wanted'];
}

/** Beads of a row as they are cut, each a stadium of its width and height. */
export function RowBeads({ plan, row }: { readonly plan: StavePlan; readonly row: PlacedRow }) {
  const { pxPerMm, section } = plan;
  const high = Math.max(2, Math.min(row.high - 0.8, row.height * pxPerMm - 0.8));
  const y = row.y + (row.high - high) / 2;
  return row.beads.map(({ off, width }) => {
    const wide = Math.max(1, width * pxPerMm);
    return (
      <rect
        key={off}
        x={(section.middle + off * pxPerMm - wide / 2).toFixed(2)}
        y={y.toFixed(2)}
        width={wide.toFixed(2)}
        height={high.toFixed(2)}
        rx={(Math.min(high, wide) / 2).toFixed(2)}
      />
    );
  });
}

function RowLines({ plan: { lines }, row, wanted }: Props & { readonly row: PlacedRow }) {
  const middle = row.y + row.high / 2;
  const reach = row.high < 11 ? 2.4 : 3.1;
  const { least, most } = row.lines;
  const ends = least === most ? [most] : [least, most];
  const isAsWanted = (count: number) => wanted.countOf === 'layers' || count === wanted.count;
  return (
    <>
      {least < most && <path className="L" d={`M${lines.x(least)} ${middle}H${lines.x(most)}`} />}
      {ends.map((count) => (
        <circle
          key={count}
          className={isAsWanted(count) ? 'count-dot' : 'count-dot other'}
          cx={lines.x(count)}
          cy={middle}
          r={reach}
        />
      ))}
    </>
  );
}

/** Least to most with a short bar at both ends; one thick bar where they are nearly the same. */
function RowWidths({ plan: { widths }, row }: { readonly plan: StavePlan; readonly row: PlacedRow }) {
  if (!row.widths) return null;
  const middle = row.y + row.high / 2;
  const [from, to] = [widths.x(row.widths.least), widths.x(row.widths.most)];
  const half = row.high < 11 ? 2.6 : 4;
  return (
    <path
      className="width-span"
      d={`M${from.toFixed(1)} ${middle}H${to.toFixed(1)}M${from.toFixed(1)} ${middle - half}v${2 * half}M${to.toFixed(1)} ${middle - half}v${2 * half}`}
    />
  );
}

/** The edges at which beads wider than the column are broken off. */
function brokenEdges({ section: { left, right }, top, bottom }: StavePlan): string {
  const waves = Array.from({ length: Math.ceil((bottom - top) / 12) }, (_, i) => `q${i % 2 ? 4 : -4} 6 0 12`).join('');
  return [left, right].map((x) => `M${x} ${top}${waves}`).join('');
}

/** All rows: drawn anew only when the section changes, not when another layer is looked at. */
export const StaveRows = memo(function StaveRows({
  plan,
  wanted,
  clip,
}: Props & { readonly clip: string | undefined }) {
  const { rows, section, starts, isTrue } = plan;
  return (
    <>
      <g className="cut-beads" clipPath={clip}>
        {rows.map((row) => (
          <RowBeads key={row.first} plan={plan} row={row} />
        ))}
      </g>
      {section.isBroken && <path className="L" clipPath={clip} d={brokenEdges(plan)} />}
      {rows.map((row) => (
        <g key={row.first}>
          {!isTrue && row.last > row.first && (
            <text className="s12 t2" x={section.right + 8} y={row.y + row.high / 2 + 4}>
              × {row.last - row.first + 1}
            </text>
          )}
          <RowLines plan={plan} row={row} wanted={wanted} />
          <RowWidths plan={plan} row={row} />
          {row.starts > 0 && <FailSquare x={starts.left + 12} y={row.y + row.high / 2} />}
        </g>
      ))}
    </>
  );
});
