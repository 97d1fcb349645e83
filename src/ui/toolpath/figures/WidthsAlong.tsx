import { useId, useMemo } from 'react';
import type { Box } from '../../drawing/lettering.ts';
import { MarksView } from '../../drawing/MarksView.tsx';
import { NO_MARKS } from '../../drawing/marks.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { FailHatch } from '../../mesh/Hatches.tsx';
import { TOOLPATH_FIGURES, widthsKey, widthsLabel } from '../../text/toolpathFigureText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { useShown, useShownPlace } from '../shown.ts';
import './figures.css';
import { useLengthwise } from './useLengthwise.ts';
import { widthsPlan, type WidthsPlan } from './widthsPlan.ts';

const upright = (places: readonly number[], { top, bottom }: WidthsPlan['box']) =>
  places.map((x) => `M${x.toFixed(1)} ${top}V${bottom}`).join('');

/** Whether lines must be told apart in the caption, since they are not named beside the chart. */
const needsKey = ({ isNamed, kinds }: WidthsPlan) => !isNamed && (kinds.has('thin') || kinds.has('inner'));

function Axes({ plan, unit }: { readonly plan: WidthsPlan; readonly unit: LengthUnit }) {
  const { box, across, along } = plan;
  return (
    <g>
      <path
        className="L"
        d={`M${box.left} ${box.top}V${box.bottom}H${box.right}${across.map(({ at }) => `M${box.left} ${at.toFixed(1)}h5`).join('')}`}
      />
      {across.map(({ at, text }) => (
        <text key={at} className="s12" x={box.left - 6} y={at + 4} textAnchor="end">
          {text}
        </text>
      ))}
      <text className="s12 t2" x={box.left - 6} y={box.top - 10} textAnchor="end">
        {unit === 'mm' ? 'mm' : 'in'}
      </text>
      {along.map(({ at, text }) => (
        <text key={at} className="s12" x={at} y={box.bottom + 17} textAnchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}

const keyOf = ({ x, y, width }: Box) => `${x} ${y} ${width}`;

/** Gaps beside one another are hatched once. */
const distinct = (boxes: readonly Box[]) => [...new Map(boxes.map((box) => [keyOf(box), box])).values()];

function Curves({ plan }: { readonly plan: WidthsPlan }) {
  const hatch = useId();
  const { wanted, box, open, curves, fine, heavy } = plan;
  return (
    <>
      <defs>
        <FailHatch id={hatch} />
      </defs>
      <path className="G" d={upright(fine, box)} />
      <path className="G5" d={upright(heavy, box)} />
      {wanted && <rect className="wanted-band" {...wanted.band} />}
      {distinct(open).map((one) => (
        <rect key={keyOf(one)} style={{ fill: `url(#${hatch})` }} {...one} />
      ))}
      {wanted && <path className="wanted-line" d={`M${box.left} ${wanted.y.toFixed(1)}H${box.right}`} />}
      {curves.map(({ kind, d }) => (
        <path key={`${kind} ${d}`} className={`width-line ${kind}`} d={d} />
      ))}
    </>
  );
}

/** Fig. 2: how wide each line is along the thin section, in the layer that is looked at. */
export function WidthsAlong() {
  const { unit } = useShown();
  const at = useShownPlace();
  const [ref, width] = useWidth<HTMLElement>();
  const page = useLengthwise(at?.placed, width);
  const layer = at?.judged.audit.layers[at.layer - 1];
  const plan = useMemo(() => {
    if (!at || !layer || !page) return undefined;
    const { audit, wanted } = at.judged;
    return widthsPlan({ layer, audit, wanted, unit }, page);
    // oxlint-disable-next-line react/exhaustive-deps -- what is shown is made anew each time; these are its parts
  }, [at?.judged, layer, page, unit]);
  if (!at || !layer) return null;
  const aid = plan?.isSameScale === false ? TOOLPATH_FIGURES.straightened : TOOLPATH_FIGURES.sameScale;
  return (
    <figure className="tool-figure widths-along" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 2</b> {TOOLPATH_FIGURES.widths}, layer <b>{layer.layer}</b>
        </span>
        <span>{plan && needsKey(plan) ? widthsKey(plan.kinds.has('thin'), plan.kinds.has('inner')) : aid}</span>
      </figcaption>
      {plan && (
        <svg
          width={plan.width}
          height={plan.height}
          viewBox={`0 0 ${plan.width} ${plan.height}`}
          role="img"
          aria-label={widthsLabel(layer, unit)}
        >
          <Curves plan={plan} />
          <Axes plan={plan} unit={unit} />
          <MarksView marks={{ ...NO_MARKS, labels: plan.labels }} />
        </svg>
      )}
    </figure>
  );
}
