import { useId, useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { allowableNamed } from '../../core/design/allowables.ts';
import { runsPath } from '../drawing/paths.ts';
import type { RampStops } from '../drawing/ramp.ts';
import type { Sheet } from '../drawing/sheet.ts';
import { movedMembers } from '../drawing/solved/movedPaths.ts';
import { MovedLayer } from '../drawing/solved/MovedLayer.tsx';
import type { StateNow } from '../drawing/solved/state.ts';
import './picture.css';
import type { Picture } from './picture.ts';

/** The ramp ends at so many times the strain at which the filament stays bent, as on the drawing of a joint. */
const RAMP_END = 1.6;

export function stopsFor(a: Assessment): RampStops {
  const [repeated, bent] = (['repeated', 'yield'] as const).map((name) => allowableNamed(a.allowables, name).limit);
  return { repeated: repeated ?? 0, yield: bent ?? 0, full: RAMP_END * (bent ?? 0) };
}

const none = (values: Float64Array) => new Float64Array(values.length);

/** The same shapes with nothing said of their strain. */
function without(state: StateNow): StateNow {
  return {
    ...state,
    shapes: state.shapes.map((shape) => ({ ...shape, left: none(shape.left), right: none(shape.right) })),
  };
}

/** A joint at rest, dashed, and as it is moved, with its strain; plain where nothing is said of that yet. */
export function MovedPicture({
  picture,
  sheet,
  isPlain = false,
}: {
  readonly picture: Picture;
  readonly sheet: Sheet;
  readonly isPlain?: boolean;
}) {
  const id = useId();
  const { posed } = picture;
  const stops = useMemo(() => stopsFor(posed.a), [posed]);
  const state = useMemo(() => (isPlain ? without(picture.now) : picture.now), [picture, isPlain]);
  const rest = useMemo(
    () => ({
      still: posed.pads
        .filter(({ moves }) => !moves)
        .map(({ loops }) => runsPath(sheet, loops, true))
        .join(''),
      moving: posed.pads
        .filter(({ moves }) => moves)
        .map(({ loops }) => runsPath(sheet, loops, true))
        .join(''),
      members: movedMembers(posed, sheet, without(posed.rest), stops).plain,
    }),
    [posed, sheet, stops],
  );
  return (
    <>
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="Lh" d="M3.5 0V7" />
      </pattern>
      <path d={rest.still} fill={`url(#${id})`} fillRule="evenodd" />
      <path className="W still" d={rest.still} />
      <path className="Lh at-rest" d={rest.moving + rest.members} />
      <MovedLayer scene={posed} sheet={sheet} state={state} stops={stops} />
    </>
  );
}
