import { useId, useMemo, type KeyboardEvent, type PointerEvent } from 'react';
import { scaleText } from '../../drawing/sheet.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { layerAt, layerValueText, staveLabel, TOOLPATH_FIGURES } from '../../text/toolpathFigureText.ts';
import { bracketNumbers } from '../brackets.ts';
import { chooseLayer, useShown, useShownPlace, type ShownPlace } from '../shown.ts';
import './figures.css';
import { foundLayers, layerForKey } from './staveKeys.ts';
import { StaveBrackets, StavePaper, StaveWanted } from './StavePaper.tsx';
import { layerAtY, rowOfLayer, stavePlan, type StavePlan } from './stavePlan.ts';
import { RowBeads, StaveRows } from './StaveRows.tsx';
import { findingsIn } from './staveRows.ts';

interface HandleProps {
  readonly plan: StavePlan;
  readonly at: ShownPlace;
  readonly valueText: string;
}

/** The whole stave is one slider; its handle stands at the height of the layer that is looked at. */
function Handle({ plan, at: { judged, layer }, valueText }: HandleProps) {
  const count = judged.audit.layers.length;
  const numbered = useMemo(() => bracketNumbers(judged.findings), [judged]);
  const found = useMemo(() => foundLayers(numbered, count), [numbered, count]);
  const row = rowOfLayer(plan, layer);
  const y = row ? row.y + row.high / 2 : plan.bottom;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const to = layerForKey(event.key, layer, count, found);
    if (to === undefined) return;
    event.preventDefault();
    chooseLayer(to);
  };
  const choose = (event: PointerEvent<SVGGElement>) => {
    const paper = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (paper) chooseLayer(layerAtY(plan, event.clientY - paper.top));
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    // A finger that goes on scrolls the page; only what is pressed is chosen.
    if (event.pointerType === 'mouse') event.currentTarget.setPointerCapture(event.pointerId);
    choose(event);
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    if (event.currentTarget.hasPointerCapture(event.pointerId)) choose(event);
  };
  return (
    <g
      className="hg stave-handle"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there is no slider in a drawing
      role="slider"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label={TOOLPATH_FIGURES.layerHandle}
      aria-valuenow={layer}
      aria-valuemin={1}
      aria-valuemax={count}
      aria-valuetext={valueText}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
    >
      <rect className="hit" x={0} y={plan.top} width={plan.width} height={plan.bottom - plan.top} />
      <circle className="ring" cx={plan.axis} cy={y} r="11" />
      <path className="hdl" d={`M${plan.axis} ${y - 7}l7 7-7 7-7-7Z`} />
    </g>
  );
}

interface ChosenProps {
  readonly plan: StavePlan;
  readonly layer: number;
}

/** Beads wider than their column are drawn as far as its edges. */
function SectionClip({ plan: { section, top, bottom }, id }: { readonly plan: StavePlan; readonly id: string }) {
  return (
    <clipPath id={id}>
      <rect x={section.left - 1} y={top - 2} width={section.right - section.left + 2} height={bottom - top + 4} />
    </clipPath>
  );
}

/** The row that is looked at: the others are not drawn again for it. */
function Chosen({ plan, layer, clip }: ChosenProps & { readonly clip: string | undefined }) {
  const row = rowOfLayer(plan, layer);
  if (!row) return null;
  return (
    <g aria-hidden="true" className="cut-beads on" clipPath={clip}>
      <RowBeads plan={plan} row={row} />
    </g>
  );
}

function ChosenWash({ plan, layer }: ChosenProps) {
  const row = rowOfLayer(plan, layer);
  return row ? (
    <rect className="stave-now" x={plan.axis} y={row.y} width={plan.width - plan.axis} height={row.high} />
  ) : null;
}

/** Fig. 3: every layer of the section that is looked at, and which findings speak of it. */
export function LayerStave() {
  const { unit } = useShown();
  const at = useShownPlace();
  const [ref, width] = useWidth<HTMLElement>();
  const [screenPxPerMm] = usePxPerMm();
  const id = useId();
  const judged = at?.judged;
  const numbered = useMemo(() => bracketNumbers(judged?.findings ?? []), [judged]);
  const plan = useMemo(
    () => (judged && width > 0 ? stavePlan({ judged, numbered, width, screenPxPerMm, unit }) : undefined),
    [judged, numbered, width, screenPxPerMm, unit],
  );
  const layer = judged?.audit.layers[(at?.layer ?? 1) - 1];
  if (!at || !judged || !layer) return null;
  const { wanted, audit } = judged;
  const clip = plan?.section.isBroken ? `url(#${id})` : undefined;
  const paper = plan && { plan, wanted, unit };
  return (
    <figure className="tool-figure layer-stave" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 3</b> {TOOLPATH_FIGURES.stave}, {TOOLPATH_FIGURES.cut}{' '}
          <b className="nw">{plan ? scaleText(plan.scale) : ''}</b>
        </span>
        <span className="kb">{TOOLPATH_FIGURES.staveAid}</span>
      </figcaption>
      {plan && paper && (
        <svg
          width={plan.width}
          height={plan.height}
          viewBox={`0 0 ${plan.width} ${plan.height}`}
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds a slider
          role="group"
          aria-label={staveLabel(judged, plan.rows.length)}
        >
          <StavePaper {...paper} />
          <ChosenWash plan={plan} layer={layer.layer} />
          <SectionClip plan={plan} id={id} />
          <g aria-hidden="true">
            <StaveRows plan={plan} wanted={wanted} clip={clip} />
          </g>
          <Chosen plan={plan} layer={layer.layer} clip={clip} />
          <StaveWanted {...paper} />
          <StaveBrackets plan={plan} />
          <text className="s12 ta" aria-hidden="true" x={plan.axis} y={plan.height - 8}>
            {layerAt(layer, audit.layers.length, unit)}
          </text>
          <Handle plan={plan} at={at} valueText={layerValueText(layer, findingsIn(layer.layer, numbered), unit)} />
        </svg>
      )}
    </figure>
  );
}
