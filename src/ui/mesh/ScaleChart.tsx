import { useMemo, useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { scaleChart } from '../../core/inspect/scaleChart.ts';
import { CHECK_LIMITS, useChecking } from '../../store/checking.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { MESH_FIGURES, SCALE_CHART, scaleFigure, wholePlaceText } from '../text/meshFigureText.ts';
import { BRIEF_SAID } from '../text/meshText.ts';
import { numbersText } from './numbersText.ts';
import { Balloon } from './Balloon.tsx';
import { useChecked } from './checked.ts';
import { scalePlan, scalesShown, type ScalePlan } from './scalePlan.ts';

/** One press of an arrow key, and how near a drag takes a whole place. */
const STEP = 0.01;
const SNAP = 0.012;

const said = (scale: number) => `${scaleFigure(scale)}×`;

/** Where a drag or a key leads. */
function useScale(plan: ScalePlan | undefined) {
  const { values } = useChecked();
  const { change, endGesture } = useChecking();
  const put = (wanted: number, was: number, gesture?: string) => {
    const { min, max } = CHECK_LIMITS.scale;
    const scale = Math.min(max, Math.max(min, wanted));
    change({ ...values, as: { ...values.as, scale } }, BRIEF_SAID.scale(said(scale), said(was)), gesture);
  };
  const snapped = (at: number) => {
    const place = plan?.places.find((one) => Math.abs(one.at - at) < SNAP);
    return place?.at ?? Math.round(at / STEP) * STEP;
  };
  return { scale: values.as.scale, put, snapped, endGesture };
}

function Handle({ plan }: { readonly plan: ScalePlan }) {
  const { scale, put, snapped, endGesture } = useScale(plan);
  const was = useRef(scale);
  const { x, box } = plan;
  const at = x(scale);
  const onKeyDown = (event: KeyboardEvent) => {
    const next = plan.places.find((one) => one.at > scale + 1e-6)?.at;
    const last = plan.places.findLast((one) => one.at < scale - 1e-6)?.at;
    const to = {
      ArrowRight: scale + STEP,
      ArrowUp: scale + STEP,
      ArrowLeft: scale - STEP,
      ArrowDown: scale - STEP,
      PageUp: next,
      PageDown: last,
      Home: plan.span.min,
      End: plan.span.max,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    if (!event.repeat) was.current = scale;
    put(Number(to.toFixed(6)), was.current, event.repeat ? 'scale-key' : undefined);
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    was.current = scale;
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const paper = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (paper) put(snapped(x.invert(event.clientX - paper.left)), was.current, 'scale-drag');
  };
  return (
    <g
      className="hg"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there is no slider in a drawing
      role="slider"
      tabIndex={0}
      aria-label={SCALE_CHART.handle}
      aria-valuenow={Number(scale.toFixed(3))}
      aria-valuemin={CHECK_LIMITS.scale.min}
      aria-valuemax={CHECK_LIMITS.scale.max}
      aria-valuetext={plan.valueText}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={endGesture}
      onPointerCancel={endGesture}
    >
      <rect className="hit" x={at - 16} y={box.top} width={32} height={box.bottom - box.top + 16} />
      <circle className="ring" cx={at} cy={box.bottom} r="11" />
      <path className="hdl" d={`M${at} ${box.bottom - 7}l7 7-7 7-7-7Z`} />
    </g>
  );
}

function Paper({ plan }: { readonly plan: ScalePlan }) {
  const { x, y, box, most, marks } = plan;
  const counts = Array.from({ length: Math.floor(most) }, (_, i) => i + 1);
  return (
    <g aria-hidden="true">
      {counts
        .filter((count) => count % 2 === 0)
        .map((count) => (
          <rect
            key={count}
            className="whole-band"
            x={box.left}
            width={box.right - box.left}
            y={y(count + 0.05)}
            height={y(count - 0.05) - y(count + 0.05)}
          />
        ))}
      <path className="chart-grid" d={marks.map((at) => `M${x(at)} ${box.top}V${box.bottom}`).join('')} />
      <path
        className="odd-line"
        d={counts
          .filter((n) => n % 2)
          .map((n) => `M${box.left} ${y(n)}H${box.right}`)
          .join('')}
      />
      <path
        className="L"
        d={counts
          .filter((n) => n % 2 === 0)
          .map((n) => `M${box.left} ${y(n)}H${box.right}`)
          .join('')}
      />
      <path
        className="L"
        d={`M${box.left} ${box.top}V${box.bottom}H${box.right}${marks.map((at) => `M${x(at)} ${box.bottom}v-5`).join('')}`}
      />
      {counts
        .filter((n) => most <= 8 || n % 2 === 0)
        .map((n) => (
          <text key={n} className="s12" x={box.left - 6} y={y(n) + 4} textAnchor="end">
            {n}
          </text>
        ))}
      {marks.map((at) => (
        <text key={at} className="s12" x={x(at)} y={box.bottom + 16} textAnchor="middle">
          {at.toFixed(1)}
        </text>
      ))}
      <text className="t2 s12" x={box.left - 22} y={box.top - 9}>
        {plan.countsOf}
      </text>
      <text className="t2 s12" x={box.right} y={box.bottom + 46} textAnchor="end">
        {SCALE_CHART.along}
      </text>
    </g>
  );
}

function Places({ plan }: { readonly plan: ScalePlan }) {
  const { x, box, places, lettered } = plan;
  return (
    <g aria-hidden="true">
      <path className="all-whole" d={places.map(({ at }) => `M${x(at)} ${box.top}V${box.bottom}`).join('')} />
      {lettered.map((place) => (
        <text key={place.at} className="tb s12 halo" x={place.x} y={box.top - 9} textAnchor="middle">
          {place.text}
        </text>
      ))}
    </g>
  );
}

function Lines({ plan }: { readonly plan: ScalePlan }) {
  const { x, y, box, lines, span } = plan;
  const { scale } = useChecked().values.as;
  const isWithin = scale >= span.min && scale <= span.max;
  return (
    <g aria-hidden="true">
      {lines.map(({ numbers, d, dots, balloon, count, isChosen }) => (
        <g key={numbers[0]}>
          <path className={isChosen ? 'W' : 'L run'} d={d} />
          {dots.map(({ at, count: whole, isEven }) => (
            <circle key={whole} className={isEven ? 'even-dot' : 'odd-dot'} cx={x(at)} cy={y(whole)} r="4" />
          ))}
          {balloon && <Balloon {...balloon} text={numbersText(numbers)} isOn={isChosen} />}
          {balloon && count <= plan.most && isWithin && (
            <>
              <circle className="now-ring" cx={x(scale)} cy={y(count)} r="6.5" />
              <circle className="Ia" cx={x(scale)} cy={y(count)} r="2.6" />
            </>
          )}
        </g>
      ))}
      <path className="now-line" d={`M${x(scale)} ${box.top}V${box.bottom}`} />
      {plan.nows.map(({ text, y: at }) => (
        <text
          key={`${text} ${at}`}
          className="ta s12 halo"
          x={x(scale) + plan.nowSide * 11}
          y={at}
          textAnchor={plan.nowSide > 0 ? 'start' : 'end'}
        >
          {text}
        </text>
      ))}
      <text
        className="ta s12 halo"
        x={Math.min(Math.max(x(scale), box.left + 20), box.right - 20)}
        y={box.bottom + 32}
        textAnchor="middle"
      >
        {SCALE_CHART.now(scale)}
      </text>
    </g>
  );
}

/** Fig. 4: how many lines each thin section is across, at any scale of the whole part. */
export function ScaleChart() {
  const checked = useChecked();
  const [ref, width] = useWidth<HTMLElement>();
  const { part, values, chosen } = checked;
  const { flexures } = part.findings;
  const chart = useMemo(
    () => scaleChart(flexures, part.facts.box, values.as, scalesShown(values.as.scale)),
    [flexures, part, values.as],
  );
  const plan = useMemo(() => (width > 0 ? scalePlan(chart, chosen, width) : undefined), [chart, chosen, width]);
  return (
    <figure className="chart scale-chart" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 4</b> {MESH_FIGURES.scale(plan?.countsOf ?? '')}
        </span>
        <span>{MESH_FIGURES.scaleAid}</span>
      </figcaption>
      <p className="vh">{plan?.places.map(wholePlaceText).join(' ')}</p>
      {plan && (
        <svg
          width={width}
          height={plan.height}
          viewBox={`0 0 ${width} ${plan.height}`}
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds buttons
          role="group"
          aria-label={MESH_FIGURES.scale(plan.countsOf)}
        >
          <Paper plan={plan} />
          <Places plan={plan} />
          <Lines plan={plan} />
          <Handle plan={plan} />
        </svg>
      )}
    </figure>
  );
}
