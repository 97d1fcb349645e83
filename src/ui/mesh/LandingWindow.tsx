import { useId, useMemo } from 'react';
import { heightAbovePlate } from '../../core/inspect/buildDirection.ts';
import { dot3 } from '../../core/geometry/mesh/vector3.ts';
import { upDirection } from '../../core/inspect/buildDirection.ts';
import type { PartSection } from '../../core/inspect/flexure.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import { Beads } from '../drawing/Beads.tsx';
import { measured } from '../drawing/marks.ts';
import { MarksView } from '../drawing/MarksView.tsx';
import { through } from '../drawing/sheet.ts';
import { lengthFigure } from '../text/numbers.ts';
import { landingCount, landingSays } from '../text/inspectText.ts';
import { windowLabel } from '../text/meshFigureText.ts';
import { isChosen, useChecked } from './checked.ts';
import { Balloon, balloonReach } from './Balloon.tsx';
import type { Alike } from '../../core/inspect/alike.ts';
import { numbersText } from './numbersText.ts';
import { middleOf, levelFrame } from './frames.ts';
import { FailHatch } from './Hatches.tsx';
import { landingPlan, type LandingPlan } from './landingPlan.ts';

interface Props {
  readonly alike: Alike;
  readonly section: PartSection;
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
}

/** Where y of the frame is 0 above the first layer of the plate, counted down [mm]; of a crease. */
function firstBorder(judged: Judged, section: PartSection, { part, values }: ReturnType<typeof useChecked>): number {
  const { as } = values;
  const middle = middleOf(judged.flexure.centreLine.points);
  const { origin, right, up } = section;
  const at = {
    x: origin.x + middle.x * right.x + middle.y * up.x,
    y: origin.y + middle.x * right.y + middle.y * up.y,
    z: origin.z + middle.x * right.z + middle.y * up.z,
  };
  const { rise } = levelFrame(judged.flexure, section, as.up);
  const sense = Math.sign(dot3(rise, upDirection(as.up))) || 1;
  return -sense * (heightAbovePlate(at, part.facts.box, as) - as.profile.firstLayerHeight);
}

interface DrawnProps {
  readonly plan: LandingPlan;
  readonly at: (loop: readonly { readonly x: number; readonly y: number }[], closed?: boolean) => string;
  readonly pxPerMm: number;
  readonly lineWidth: number;
  readonly layerHeight: number;
  readonly hatch: string;
}

function Layers({ plan, pxPerMm, clip }: Pick<DrawnProps, 'plan' | 'pxPerMm'> & { readonly clip: string }) {
  const d = plan.layers.map(({ at, isLevel }) =>
    isLevel ? `M-2000 ${(-at * pxPerMm).toFixed(2)}H2000` : `M${(at * pxPerMm).toFixed(2)} -2000V2000`,
  );
  return <path className="layer-border" clipPath={`url(#${clip})`} d={d.join('')} />;
}

function Drawn({ plan, at, pxPerMm, lineWidth, hatch }: DrawnProps) {
  const clip = useId();
  const outline = plan.outlines.map((loop) => at(loop, true)).join('');
  const isLayered = plan.layers.length > 0;
  return (
    <>
      <clipPath id={clip}>
        <path clipRule="evenodd" d={outline} />
      </clipPath>
      <path className={isLayered ? 'plastic laid' : 'plastic'} fillRule="evenodd" d={outline} />
      {isLayered && <Layers plan={plan} pxPerMm={pxPerMm} clip={clip} />}
      <Beads d={plan.contours.map((loop) => at(loop, true)).join('')} width={lineWidth * pxPerMm} />
      {plan.middle.length > 0 && <Beads d={at(plan.middle)} width={lineWidth * pxPerMm} />}
      {plan.wrong.map((loop) => (
        <path key={at(loop)} className="wrong-strip" fill={`url(#${hatch})`} d={at(loop, true)} />
      ))}
      <path className="W" fillRule="evenodd" d={outline} />
    </>
  );
}

/** How the set lines fall in one thin section, ten times as large. */
export function LandingWindow({ alike, section, width, height, pxPerMm }: Props) {
  const checked = useChecked();
  const { values, unit } = checked;
  const { one, numbers } = alike;
  const hatch = useId();
  const { as } = values;
  const long = as.scale * one.flexure.centreLine.chord;
  // What is too long for the window is shown from one of its roots on.
  const excess = Math.max(0, (long * pxPerMm - width + 60) / 2) / pxPerMm;
  const isByMiddle = one.flexure.isCurved && excess > 0;
  const shift = isByMiddle ? 0 : excess;
  const plan = useMemo(() => {
    const half = { x: width / 2 / pxPerMm, y: height / 2 / pxPerMm };
    const window = { left: -half.x - shift, right: half.x - shift, bottom: -half.y, top: half.y };
    return landingPlan(one, section, as, window, firstBorder(one, section, checked), isByMiddle);
    // oxlint-disable-next-line react/exhaustive-deps -- of the part as it is shown only its box is used, and it comes with the section
  }, [one, section, as, width, height, pxPerMm, shift, isByMiddle]);
  const x0 = width / 2 + shift * pxPerMm;
  const at: DrawnProps['at'] = (loop, closed = false) =>
    through(
      loop.map(({ x, y }) => ({ x: x * pxPerMm, y: -y * pxPerMm })),
      closed,
    );
  const [top, bottom] = plan.walls.map((y) => height / 2 - y * pxPerMm) as [number, number];
  const isCut = excess > 0;
  const x = shift > 0 ? Math.min(x0, width - 70) : x0 + plan.at * pxPerMm;
  const thick = lengthFigure(as.scale * one.flexure.thickness.least, unit);
  const text = numbersText(numbers);
  const { landing } = one;
  return (
    <figure>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-label={windowLabel(text, landing, unit)}
      >
        <defs>
          <FailHatch id={hatch} />
        </defs>
        <g transform={`translate(${x0.toFixed(2)} ${height / 2})`}>
          <Drawn
            {...{ plan, at, pxPerMm, hatch }}
            lineWidth={as.profile.lineWidth}
            layerHeight={as.profile.layerHeight}
          />
        </g>
        {!one.flexure.isCurved && <path className="C" d={`M0 ${height / 2}H${width}`} />}
        {isCut && <BreakLine x={width - 6} height={height} />}
        {isByMiddle && (
          <g transform={`rotate(180 ${width / 2} ${height / 2})`}>
            <BreakLine x={width - 6} height={height} />
          </g>
        )}
        <MarksView
          marks={{
            ...measured({ x, y: top }, { x, y: bottom }, true),
            labels: [{ text: thick, x: x + 7, y: top - 8, anchor: 'start', tone: 'bold', size: 13 }],
          }}
        />
        <Balloon x={balloonReach(text) + 6} y={16} text={text} isOn={isChosen(alike, checked)} />
      </svg>
      <p>
        <b className="num">{landingCount(landing)}</b>: {landingSays(landing, unit)}
      </p>
    </figure>
  );
}

/** The sign for “it goes on”. */
function BreakLine({ x, height }: { readonly x: number; readonly height: number }) {
  const waves = Array.from({ length: Math.ceil(height / 14) }, (_, i) => `q${i % 2 ? 5 : -5} 7 0 14`).join('');
  return (
    <>
      <path className="P" d={`M${x} 0${waves}H${x + 12}V0Z`} />
      <path className="L" d={`M${x} 0${waves}`} />
    </>
  );
}
