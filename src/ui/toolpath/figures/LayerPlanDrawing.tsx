import { useMemo } from 'react';
import { Ground } from '../../drawing/Ground.tsx';
import { onSheet, scaleText, through } from '../../drawing/sheet.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { Balloon } from '../../mesh/Balloon.tsx';
import { passedName } from '../../text/inspectText.ts';
import { boxSize, PLAN_BOX, planLabel, TOOLPATH_FIGURES } from '../../text/toolpathFigureText.ts';
import { useShown, useShownPlace } from '../shown.ts';
import './figures.css';
import { PlaceKey } from './PlaceKey.tsx';
import { cornersOf, type DraggedBox } from './plateBox.ts';
import { plateExtent, platePlan, type PlatePlan } from './platePlan.ts';
import { useDragBox } from './useDragBox.ts';

interface Props {
  /** Takes a box that was dragged out; without, none can be. */
  readonly onBox?: (box: DraggedBox) => void;
}

function Printed({ plan, chosen }: { readonly plan: PlatePlan; readonly chosen: number | undefined }) {
  return (
    <g aria-hidden="true">
      <Ground sheet={plan.sheet} />
      <path className="plate-laid" fillRule="evenodd" d={plan.d} />
      {plan.runs.map(({ number, d }) => (
        <path key={number} className={number === chosen ? 'plate-run on' : 'plate-run'} d={d} />
      ))}
      {plan.balloons.map(({ number, from }) => (
        <path key={number} className="L" d={through([from.balloon, from.box])} />
      ))}
      {plan.passed.map(({ index, balloon, at }) => (
        <g key={index}>
          <path className="L" d={through([balloon.from.balloon, at])} />
          <circle className="I" cx={at.x} cy={at.y} r={2.2} />
          <Balloon x={balloon.x} y={balloon.y} text={passedName(index)} isOn={false} isPassed />
        </g>
      ))}
    </g>
  );
}

function Drawn({ plan, onBox }: Props & { readonly plan: PlatePlan }) {
  const { unit } = useShown();
  const chosen = useShownPlace()?.judged.place.number;
  const { box, take } = useDragBox(plan, onBox);
  const { sheet } = plan;
  const corners = box && cornersOf(box).map((corner) => onSheet(sheet, corner));
  const low = corners && Math.max(...corners.map(({ y }) => y));
  return (
    <>
      <Printed plan={plan} chosen={chosen} />
      {onBox && (
        <rect
          className="plate-drag"
          aria-hidden="true"
          x={0}
          y={sheet.top}
          width={sheet.width}
          height={sheet.bottom - sheet.top}
          {...take}
        />
      )}
      {plan.balloons.map(({ number, x, y }) => (
        <PlaceKey key={number} number={number} isOn={number === chosen}>
          <Balloon x={x} y={y} text={String(number)} isOn={number === chosen} />
        </PlaceKey>
      ))}
      {box && corners && low !== undefined && (
        <g aria-hidden="true">
          <path className="plate-box" d={through(corners, true)} />
          <text
            className="ta halo"
            x={(corners[0]!.x + corners[2]!.x) / 2}
            y={Math.min(sheet.bottom - 24, low + 18)}
            textAnchor="middle"
          >
            {boxSize(box.length, box.thickness, unit)}
          </text>
        </g>
      )}
    </>
  );
}

/** Fig. 4: all that stands in the layer that is looked at, from above, with every thin section numbered on it. */
export function LayerPlanDrawing({ onBox }: Props) {
  const { toolpath, judged, unit } = useShown();
  const at = useShownPlace();
  const [ref, width] = useWidth<HTMLElement>();
  const [pxPerMm] = usePxPerMm();
  const { plans, passedOver } = toolpath;
  const extent = useMemo(() => plateExtent(plans), [plans]);
  const places = useMemo(() => judged.map(({ place }) => place), [judged]);
  const middle = plans[plans.length >> 1]?.z ?? 0;
  const z = at?.judged.audit.layers[at.layer - 1]?.z ?? middle;
  const plan = useMemo(
    () => (width > 0 ? platePlan({ plans, extent, z, places, passedOver }, width, pxPerMm) : undefined),
    [plans, extent, z, places, passedOver, width, pxPerMm],
  );
  if (plans.length === 0) return null;
  return (
    <figure className="tool-figure plate-plan" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 4</b> {TOOLPATH_FIGURES.plan}, scale <b className="nw">{plan ? scaleText(plan.sheet.scale) : ''}</b>;
          grid {plan && plan.sheet.pxPerMm < 3 ? '5' : '1'} mm
        </span>
        <span>{onBox ? PLAN_BOX.aid : PLAN_BOX.noDrag}</span>
      </figcaption>
      {plan && (
        <svg
          width={plan.sheet.width}
          height={plan.sheet.bottom - plan.sheet.top}
          viewBox={`0 ${plan.sheet.top} ${plan.sheet.width} ${plan.sheet.bottom - plan.sheet.top}`}
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds buttons
          role="group"
          aria-label={planLabel(places.length, passedOver.length, plan.z, unit)}
        >
          <Drawn plan={plan} {...(onBox && { onBox })} />
        </svg>
      )}
    </figure>
  );
}
