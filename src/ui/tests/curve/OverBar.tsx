import { useSize } from '../../charts/useSize.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { angle, setLength, unitAfter } from '../../text/numbers.ts';
import { BAR_FIGURE, skinText } from '../../text/testsCurveText.ts';
import { bendText } from '../../text/testsText.ts';
import type { Trial } from '../trial.ts';
import { barPlan, type BarPlan } from './barPlan.ts';

interface Props {
  readonly trial: Trial;
  readonly unit: LengthUnit;
}

/** Thickness over the free end, and the radius from the middle of the bend. */
function Dimensions({ plan, trial, unit }: Props & { readonly plan: BarPlan }) {
  const { centre, inner, thick, end, turn } = plan;
  const [top, foot] = [end.y - thick / 2, end.y + thick / 2];
  const mid = turn / 2;
  const tip = { x: centre.x - inner * Math.sin(mid), y: centre.y - inner * Math.cos(mid) };
  const { bend, values, countOf } = trial;
  const per = countOf === 'lines' && values.count > 1 ? ` = ${values.count} lines` : '';
  return (
    <>
      <path className="La" d={`M${end.x} ${top - 20}V${top}M${end.x} ${foot}V${foot + 16}`} />
      <path className="Ia" d={`M${end.x} ${top}l-2.8-7h5.6ZM${end.x} ${foot}l-2.8 7h5.6Z`} />
      <text className="ta halo" x={end.x + 8} y={top - 10}>
        {setLength(trial.thickness, unit)}
        {per}
      </text>
      {inner > 6 && (
        <>
          <path className="L" d={`M${centre.x - 4} ${centre.y}h8M${centre.x} ${centre.y - 4}v8`} />
          <path className="L" d={`M${centre.x} ${centre.y}L${tip.x} ${tip.y}`} />
          <text className="ta halo" x={centre.x + 8} y={centre.y + 16}>
            {bend.way === 'over'
              ? `R ${setLength(bend.radius, unit)}`
              : `${angle(bend.turn)} over ${setLength(bend.length, unit)}`}
          </text>
        </>
      )}
    </>
  );
}

/** Fig. 1: the strip as it is bent, to scale, in the colours of its strain. */
export function OverBar({ trial, unit }: Props) {
  const [pxPerMm] = usePxPerMm();
  const { bend, thickness, strain, row } = trial;
  const p = row.properties;
  const yields = p.yieldStrain.typical;
  const stops = { repeated: p.permissibleStrainRepeated.typical, yield: yields, full: 1.6 * yields };
  const [figure, size] = useSize<HTMLElement>();
  const plan = barPlan(trial, { width: size?.width ?? 320, pxPerMm, stops });
  const laid = bendText(bend, unit);
  const scale = BAR_FIGURE.scale(`${plan.scale} : 1`);
  const said = BAR_FIGURE.spoken(laid, strain, `${setLength(thickness, unit)}${unitAfter(unit)}`);
  const { skin } = plan;
  return (
    <figure className="over-bar" ref={figure}>
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> {BAR_FIGURE.name(laid, scale).what}, {scale}
        </span>
        <span>{BAR_FIGURE.aid}</span>
      </figcaption>
      <svg
        role="img"
        aria-label={said}
        width={plan.width}
        height={plan.height}
        viewBox={`0 0 ${plan.width} ${plan.height}`}
      >
        {plan.bar && <path className="bar-body" d={plan.bar} />}
        {plan.slices.map(({ d, colour, width }, at) => (
          <path key={at} d={d} fill="none" stroke={colour} strokeWidth={width} />
        ))}
        <path className="Wa" d={plan.outline} />
        <Dimensions {...{ plan, trial, unit }} />
        <path className="L" d={`M${skin.x} ${skin.y}L${Math.max(6, skin.x - 16)} 22`} />
        <text className="halo" x={4} y={14}>
          {skinText(strain, yields)}
        </text>
      </svg>
    </figure>
  );
}
