import { useId, useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { BentOutline } from '../../drawing/BentOutline.tsx';
import { figureOf } from '../../drawing/figure.ts';
import { runsPath } from '../../drawing/paths.ts';
import type { RampStops } from '../../drawing/ramp.ts';
import { scaleText, through, type Sheet } from '../../drawing/sheet.ts';
import { Defs, StrainLayer } from '../../drawing/StrainLayer.tsx';

interface Props {
  readonly a: Assessment;
  readonly sheet: Sheet;
  readonly stops: RampStops;
  readonly withStrain: boolean;
  /** How far it is moved, as a share of its angle. */
  readonly share: number;
}

/** So much room is kept for it right of the joint [px]. */
export const INSET_ROOM = 148;
const RADIUS = 66;
const SCALE = 40;
/** The corner stands a little left of the middle, so that the leaf is seen to strain less further on [mm]. */
const LEFT = 0.12;

/** A corner of the root through a glass, on the side that is stretched: how it strains, sharp or filleted. */
export function RootInset({ a, sheet, stops, withStrain, share }: Props) {
  const id = useId();
  const layout = useMemo(() => {
    const pxPerMm = SCALE * (sheet.pxPerMm / sheet.scale);
    const near: Sheet = { ...sheet, scale: SCALE, pxPerMm, rootX: -LEFT * pxPerMm };
    return { a, figure: figureOf(a, 0), sheet: near, legend: stops };
  }, [a, sheet, stops]);
  const { figure, sheet: near } = layout;
  const fixed = runsPath(near, [figure.points.filter(({ x }) => x <= 1e-9)], true);
  const corner = a.section.thickness / 2;
  const centre = { x: sheet.width - RADIUS - 8, y: (sheet.top + sheet.bottom) / 2 };
  return (
    <>
      <Glass sheet={sheet} corner={corner} ratio={sheet.pxPerMm / near.pxPerMm} centre={centre} />
      <g transform={`translate(${centre.x} ${centre.y})`}>
        <clipPath id={`${id}-glass`}>
          <circle r={RADIUS} />
        </clipPath>
        <circle className="P" r={RADIUS} />
        <g clipPath={`url(#${id}-glass)`}>
          <g transform={`translate(0 ${-corner * near.pxPerMm})`}>
            <Defs layout={layout} id={id} />
            <path className="bead-like" d={fixed} />
            {withStrain && <StrainLayer layout={layout} fraction={share} fade={id} />}
            <path className="W still" d={fixed} />
            <BentOutline figure={figure} sheet={near} fraction={share} className="Wa" />
          </g>
        </g>
        <circle className="L" r={RADIUS} />
        <text y={RADIUS + 17} textAnchor="middle">
          {scaleText(SCALE)}
        </text>
      </g>
    </>
  );
}

interface GlassProps {
  readonly sheet: Sheet;
  /** From the middle of the leaf to the corner [mm]. */
  readonly corner: number;
  /** Of the scale of the drawing to that of the glass. */
  readonly ratio: number;
  readonly centre: { readonly x: number; readonly y: number };
}

/** Where the glass looks, and the line from there to what it shows. */
function Glass({ sheet, corner, ratio, centre }: GlassProps) {
  const seen = { x: sheet.rootX, y: corner * sheet.pxPerMm };
  const r = RADIUS * ratio;
  const way = Math.atan2(centre.y - seen.y, centre.x - seen.x);
  const on = (from: typeof centre, by: number) => ({ x: from.x + by * Math.cos(way), y: from.y + by * Math.sin(way) });
  return (
    <>
      <circle className="L" cx={seen.x} cy={seen.y} r={r} />
      <path className="Lh" d={through([on(seen, r), on(centre, -RADIUS)])} />
    </>
  );
}
