import { memo, useMemo } from 'react';
import { Beads } from './Beads.tsx';
import type { Stadium } from './layers.ts';
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
    const seen = layers === 'too fine' ? undefined : layers;
    return {
      filling: contours ? runsPath(sheet, contours.filling) : '',
      runs: contours ? runsPath(sheet, contours.runs) : '',
      solid: layers === 'too fine' ? runsPath(sheet, [figure.points], true) : '',
      layers: seen?.lines.map((bead) => stadiumPath(shrunk(stadiumBox(sheet, bead), 0.35))).join('') ?? '',
      core: seen?.core.map((slice) => boxPath(stadiumBox(sheet, slice))).join('') ?? '',
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
      {paths.solid !== '' && <path className="solid" d={paths.solid} />}
      {paths.core !== '' && <path className="Lh" d={paths.core} />}
      {paths.layers !== '' && <path className="bead-ends" d={paths.layers} />}
      {paths.faults !== '' && <path className="fault" d={paths.faults} style={{ fill: `url(#${hatch})` }} />}
    </g>
  );
});

const stadiumBox = (sheet: Layout['sheet'], { left, right, bottom, top }: Stadium) =>
  boxOnSheet(sheet, left, right, bottom, top);

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
      {figure.laid !== 'along' && <Plate layout={layout} />}
      {start?.circles.map(({ x, y }) => (
        <circle key={x} className="L" cx={x} cy={y} r={start.radius} />
      ))}
    </g>
  );
});

/** The plate of the printer: under a joint that lies on it, at the left of one that stands and is drawn turned. */
function Plate({ layout: { sheet, figure } }: { readonly layout: Layout }) {
  const { box, laid } = figure;
  const s = sheet.pxPerMm;
  const off = 1.6;
  const [from, to] =
    laid === 'layers'
      ? [sheet.rootX + box.left * s - 14, sheet.rootX + box.right * s + 14]
      : [-box.top * s - 14, -box.bottom * s + 14];
  const at = laid === 'layers' ? -box.bottom * s + off : sheet.rootX + box.left * s - off;
  const strokes = Array.from({ length: Math.floor((to - from) / 9) }, (_, i) => from + 9 * i + 8).map((along) =>
    laid === 'layers' ? `M${along.toFixed(1)} ${at}l-5 5` : `M${at} ${along.toFixed(1)}l-5 -5`,
  );
  const line = laid === 'layers' ? `M${from} ${at}H${to}` : `M${at} ${from}V${to}`;
  return <path className="Lh" d={line + strokes.join('')} />;
}
