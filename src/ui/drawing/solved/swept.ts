import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { sideOf } from '../../../core/geometry/band.ts';
import type { Mm } from '../../../core/units.ts';
import { densified, gridInside } from '../polygon.ts';
import { carried, isInside, poseIn, type Posed, type Scene } from './scene.ts';
import { stateAt, type StateNow } from './state.ts';
import type { Travelled } from './travelled.ts';

/** Edges of all that is drawn in a state [mm]: pads where they have gone, both sides of the members. */
export function edgesIn(scene: Posed, state: StateNow): readonly Point[] {
  const pads = scene.pads.flatMap((pad) => {
    const now = poseIn(pad, state);
    return pad.loops.flat().map((point) => carried(pad, now, point));
  });
  const bands = state.shapes.flatMap((shape, i) =>
    scene.members[i]?.isSeen === true
      ? Array.from(shape.x, (_, k) => [sideOf(shape, k, 0.5), sideOf(shape, k, -0.5)]).flat()
      : [],
  );
  return [...pads, ...bands];
}

/** States to look at, from the far end of the way back to that of the way there. */
export function looksAt(
  scene: Scene,
  { from, to }: Pick<Travelled, 'from' | 'to'>,
  count: number,
): readonly StateNow[] {
  const ways = from < 0 ? [from, to] : [to];
  return [
    scene.rest,
    ...ways.flatMap((end) => Array.from({ length: count }, (_, i) => stateAt(scene.solved, (end * (i + 1)) / count))),
  ];
}

export function boundsOf(points: readonly Point[]): Bounds {
  return points.reduce<Bounds>(
    ({ left, right, bottom, top }, { x, y }) => ({
      left: Math.min(left, x),
      right: Math.max(right, x),
      bottom: Math.min(bottom, y),
      top: Math.max(top, y),
    }),
    { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity },
  );
}

/** Points on the edges and inside of every pad as printed, no further than `step` from each other [mm]. */
export function padCovers({ pads }: Scene, step: Mm): readonly (readonly Point[])[] {
  return pads.map(({ loops }) => {
    const edge = loops.flatMap((loop) => densified([...loop, ...loop.slice(0, 1)], step));
    const [outer = []] = loops;
    const inside = gridInside(outer, 1.6 * step, -Infinity);
    return [...edge, ...(loops.length > 1 ? inside.filter((point) => isInside(loops, point)) : inside)];
  });
}

/** Points on edges and inside of all that has moved in a state: pads by their covers, and members. */
export function coveredIn(
  scene: Scene,
  state: StateNow,
  covers: readonly (readonly Point[])[],
  step: Mm,
): readonly Point[] {
  const pads = scene.pads.flatMap((pad, i) => {
    if (!pad.moves) return [];
    const now = poseIn(pad, state);
    return (covers[i] ?? []).map((point) => carried(pad, now, point));
  });
  const bands = state.shapes.flatMap((shape, i) => {
    if (scene.members[i]?.isSeen !== true) return [];
    const places = Array.from(shape.x, (_, k) => k);
    return [0.5, 0, -0.5].flatMap((share) =>
      densified(
        places.map((k) => sideOf(shape, k, share)),
        step,
      ),
    );
  });
  return [...pads, ...bands];
}
