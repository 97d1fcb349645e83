import { useId, useMemo, useRef } from 'react';
import type { PartSection } from '../../core/inspect/flexure.ts';
import { isInside } from '../../core/geometry/loop.ts';
import { Ground } from '../drawing/Ground.tsx';
import { levelDimension, together, uprightDimension } from '../drawing/marks.ts';
import { MarksView } from '../drawing/MarksView.tsx';
import { scaleText, through } from '../drawing/sheet.ts';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { lengthFigure, type LengthUnit } from '../text/numbers.ts';
import { MESH_FIGURES, sectionItem, sectionTitle } from '../text/meshFigureText.ts';
import { Balloon } from './Balloon.tsx';
import { BalloonKey } from './BalloonKey.tsx';
import { sectionOf, useChecked } from './checked.ts';
import { CutHatch } from './Hatches.tsx';
import { placeBalloons } from './placeBalloons.ts';
import { choose } from './partCheck.ts';
import { sectionPlan, type SectionPlan } from './sectionPlan.ts';

/** The sections, and which of them the thin section that is looked at was measured in. */
function useSection(): { readonly section: PartSection | undefined; readonly at: number; readonly count: number } {
  const checked = useChecked();
  const one = checked.judged.find(({ flexure }) => flexure.number === checked.chosen);
  const { sections } = checked.part.findings;
  const at = one?.flexure.section ?? 0;
  return { section: one ? sectionOf(checked, one) : sections[0], at, count: sections.length };
}

/** Below this an upright dimension has no room for letters along it [px]. */
const LOW = 44;

/** Where the dimensions run, which no balloon may cover. */
function dimensionBoxes({ left, right, top, bottom }: SectionPlan['box']) {
  return [
    { x: right + 10, y: top - 4, width: 22, height: bottom - top + 8 },
    { x: left - 4, y: bottom + 8, width: right - left + 8, height: 24 },
  ];
}

/** How wide and how high what is cut is, as printed. */
function dims({ box, sheet: { pxPerMm } }: SectionPlan, unit: LengthUnit) {
  const size = (from: number, to: number) => lengthFigure(Math.abs(to - from) / pxPerMm, unit);
  const { left, right, top, bottom } = box;
  const [x, y] = [right + 26, bottom + 26];
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const label = { tone: 'ink', size: 13, anchor: 'middle' } as const;
  const isLow = bottom - top < LOW;
  const beside = isLow
    ? ({ ...label, anchor: 'start', x: x + 8, y: middle.y + 4 } as const)
    : { ...label, x: x - 5, y: middle.y, upright: true };
  return together(
    levelDimension(
      left,
      right,
      y,
      bottom + 5,
      { ...label, text: size(left, right), x: middle.x, y: y - 5 },
      right - left < 60,
    ),
    uprightDimension(bottom, top, x, right + 5, { ...beside, text: size(bottom, top) }),
  );
}

/** Fig. 2: what is cut, at a true scale, with every thin section that shows in it. */
export function SectionDrawing() {
  const checked = useChecked();
  const { values, judged, chosen, unit } = checked;
  const [ref, width] = useWidth<HTMLElement>();
  const [pxPerMm] = usePxPerMm();
  const { section, at, count } = useSection();
  const { scale } = values.as;
  const hatch = useId();
  const words = useId();
  const svg = useRef<SVGSVGElement>(null);
  const plan = useMemo(
    () => (section && width > 0 ? sectionPlan(section, judged, scale, width, pxPerMm) : undefined),
    [section, judged, scale, width, pxPerMm],
  );
  const balloons = useMemo(
    () =>
      plan
        ? placeBalloons(
            plan.boxes.map(({ number, box }) => ({ number, box })),
            plan.room,
            ({ x, y }) => isInside(plan.loops, { x, y }),
            dimensionBoxes(plan.box),
          )
        : [],
    [plan],
  );
  if (!section) return null;
  const shown = plan ? judged.filter(({ flexure }) => section.shows.includes(flexure.number)) : [];
  const marks = plan && dims(plan, unit);
  return (
    <figure ref={ref} className="section-drawing">
      <figcaption className="cap">
        <span>
          <b>Fig. 2</b> {sectionTitle(at, count)}, scale <b className="nw">{plan ? scaleText(plan.sheet.scale) : ''}</b>
          ; grid {plan && plan.sheet.pxPerMm < 3 ? '5' : '1'} mm
        </span>
        <span>{MESH_FIGURES.sectionAid}</span>
      </figcaption>
      <div className="vh" id={words}>
        <ul>
          {shown.map((one) => (
            <li key={one.flexure.number}>{sectionItem(one, scale, unit)}</li>
          ))}
        </ul>
      </div>
      {plan && (
        <svg
          ref={svg}
          width={plan.sheet.width}
          height={plan.sheet.bottom - plan.sheet.top}
          viewBox={`0 ${plan.sheet.top} ${plan.sheet.width} ${plan.sheet.bottom - plan.sheet.top}`}
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds buttons
          role="group"
          aria-label={MESH_FIGURES.section}
          aria-describedby={words}
        >
          <defs>
            <CutHatch id={hatch} pitch={Math.max(5, 2 * values.as.profile.lineWidth * plan.sheet.pxPerMm)} />
          </defs>
          <g aria-hidden="true">
            <Ground sheet={plan.sheet} />
            <path className="P" fillRule="evenodd" d={plan.d} />
            <path className="W" style={{ fill: `url(#${hatch})` }} fillRule="evenodd" d={plan.d} />
            {marks && <MarksView marks={marks} />}
            {plan.boxes.map(({ number, box }) => (
              <rect key={number} className={number === chosen ? 'spot on' : 'spot'} {...box} />
            ))}
            {balloons.map(({ number, from }) => (
              <path key={number} className="L" d={through([from.balloon, from.box])} />
            ))}
          </g>
          {balloons.map(({ number, x, y, thick }) => {
            const one = judged.find(({ flexure }) => flexure.number === number);
            return (
              one && (
                <BalloonKey key={number} number={number} label={sectionItem(one, scale, unit)} onChoose={choose}>
                  <Balloon x={x} y={y} text={String(number)} isOn={number === chosen} />
                  {thick && (
                    <text className="s12 halo" x={thick.x} y={thick.y} textAnchor={thick.anchor}>
                      {lengthFigure(scale * one.flexure.thickness.least, unit)}
                    </text>
                  )}
                </BalloonKey>
              )
            );
          })}
        </svg>
      )}
    </figure>
  );
}
