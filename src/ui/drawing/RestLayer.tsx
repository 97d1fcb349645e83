import { memo, useMemo } from 'react';
import { Beads } from './Beads.tsx';
import type { Layout } from './layout.ts';
import { boxOnSheet, boxPath, runsPath, shrunk, stadiumPath } from './paths.ts';
import { through } from './sheet.ts';

/** The joint as printed, under whatever moves: filling, beads, what goes wrong between them. */
export const RestLayer = memo(function RestLayer({
  layout,
  hatch,
}: {
  readonly layout: Layout;
  readonly hatch: string;
}) {
  const { sheet, contours, a, landing, figure } = layout;
  const line = a.joint.profile.lineWidth * sheet.pxPerMm;
  const paths = useMemo(() => {
    const { layers } = layout;
    return {
      filling: contours ? runsPath(sheet, contours.filling) : '',
      runs: contours ? runsPath(sheet, contours.runs) : '',
      layers: layers
        .map(({ left, right, bottom, top }) => stadiumPath(shrunk(boxOnSheet(sheet, left, right, bottom, top), 0.35)))
        .join(''),
      faults: landing.faults.map(({ from, to }) => boxPath(boxOnSheet(sheet, 0, figure.length, from, to))).join(''),
    };
  }, [layout, sheet, contours, landing, figure]);
  return (
    <g>
      <g className="filling">
        <path d={paths.filling} style={{ stroke: 'var(--line)', strokeWidth: line }} />
        <path d={paths.filling} style={{ stroke: 'var(--sheet)', strokeWidth: Math.max(0.5, line - 1.5) }} />
      </g>
      {paths.runs !== '' && <Beads d={paths.runs} width={line} />}
      {paths.layers !== '' && <path className="bead-ends" d={paths.layers} />}
      {paths.faults !== '' && <path className="fault" d={paths.faults} style={{ fill: `url(#${hatch})` }} />}
    </g>
  );
});

/** What of the rest position stays in sight over the bent leaf: its outline, and where its lines meet. */
export const RestLines = memo(function RestLines({ layout }: { readonly layout: Layout }) {
  const { sheet, figure, landing, keepOut, start } = layout;
  const paths = useMemo(() => {
    const inner = landing.laid.slice(1).map(({ from }, i) => (from + (landing.laid[i]?.to ?? from)) / 2);
    const across = inner.map((y) => [
      { x: 0, y },
      { x: figure.length, y },
    ]);
    return {
      outline: runsPath(sheet, [figure.points], true),
      joints: runsPath(sheet, across),
      centre: through([
        { x: sheet.rootX + figure.box.left * sheet.pxPerMm - 10, y: 0 },
        { x: sheet.rootX + figure.box.right * sheet.pxPerMm + 12, y: 0 },
      ]),
    };
  }, [sheet, figure, landing]);
  return (
    <g>
      <path className="L" d={paths.joints} />
      <path className="W" d={paths.outline} />
      <path className="C" d={paths.centre} />
      <path className="K" d={through(keepOut)} />
      {figure.laid === 'layers' && <Plate layout={layout} />}
      {start && <circle className="L" cx={start.circle.x} cy={start.circle.y} r={start.radius} />}
    </g>
  );
});

/** The plate of the printer under a joint that is seen from the side. */
function Plate({ layout: { sheet, figure } }: { readonly layout: Layout }) {
  const y = -figure.box.bottom * sheet.pxPerMm + 1.6;
  const [left, right] = [figure.box.left, figure.box.right].map((x) => sheet.rootX + x * sheet.pxPerMm);
  const [from, to] = [(left ?? 0) - 14, (right ?? 0) + 14];
  const strokes = Array.from(
    { length: Math.floor((to - from) / 9) },
    (_, i) => `M${(from + 9 * i + 8).toFixed(1)} ${y}l-5 5`,
  );
  return <path className="Lh" d={`M${from} ${y}H${to}${strokes.join('')}`} />;
}
