/** How much room each joint of a demonstration may come to need. */
import type { Joint } from '../../../core/design/joint.ts';
import { understand } from '../../../core/design/understand.ts';
import { mechanicsOf } from '../../../core/flexures/networks.ts';
import { bounds, type Bounds } from '../../../core/geometry/flatten.ts';
import type { Demo, Handle, Values } from '../../../core/lesson/demos/demo.ts';
import { startOf } from '../../../core/lesson/demos/handles.ts';
import { assessOnce } from '../../joints/assessOnce.ts';
import { boundsOf } from '../../drawing/solved/swept.ts';
import { reachOfFilm } from '../picture.ts';
import { rolled } from '../rolled.ts';

function union(all: readonly Bounds[]): Bounds {
  return boundsOf(
    all.flatMap(({ left, right, bottom, top }) => [
      { x: left, y: bottom },
      { x: right, y: top },
    ]),
  );
}

/** How far a joint reaches on its way [mm]: as its hand form rolls it, else as printed and carried along by its motion. */
function reachOf(joint: Joint): Bounds | undefined {
  const assessed = assessOnce(joint);
  if (!assessed.ok) return undefined;
  const a = assessed.value;
  if (!a.travel) return carriedReach(joint);
  return reachOfFilm(rolled(a));
}

function carriedReach(joint: Joint): Bounds | undefined {
  const understood = understand(joint);
  if (!understood.ok) return undefined;
  const { sizes, section } = understood.value;
  const { drive, amount } = joint.movement;
  const { bodies, model } = mechanicsOf(joint.family).network(sizes, section.thickness, {
    drive,
    amount,
    widthRatio: 1,
  });
  const half = section.thickness / 2;
  const parts = [
    ...bodies.map(({ pad, outlines }) => ({ pad, box: bounds(outlines) })),
    ...model.nodes.map(({ id, x, y }) => ({
      pad: model.pads.find(({ nodes }) => nodes.includes(id))?.id ?? id,
      box: { left: x - half, right: x + half, bottom: y - half, top: y + half },
    })),
  ];
  return union(
    parts.flatMap(({ pad, box }) => {
      const motion = model.motions.find(({ at }) => at === pad);
      if (!motion) return [box];
      const { x = 0, y = 0 } = motion;
      const { left, right, bottom, top } = box;
      return [box, { left: left + x, right: right + x, bottom: bottom + y, top: top + y }];
    }),
  );
}

/** Both ends of what changes a size; the rest as at first. */
function endsOf({ kind, min, max, start }: Handle): readonly number[] {
  return kind === 'choice' || kind === 'share' ? [start] : [min, max];
}

function cornersOf({ handles }: Demo): readonly Values[] {
  return handles.reduce<readonly Values[]>(
    (all, handle) => all.flatMap((values) => endsOf(handle).map((end) => ({ ...values, [handle.key]: end }))),
    [startOf({ handles })],
  );
}

const known = new Map<string, readonly Bounds[]>();

/** The room of each joint over all that its handles can do [mm], so that nothing moves on the page while they are moved. */
export function roomOf(demo: Demo): readonly Bounds[] {
  const found = known.get(demo.id);
  if (found) return found;
  const corners = cornersOf(demo).map((values) => demo.joints(values));
  const count = corners[0]?.length ?? 0;
  const rooms = Array.from({ length: count }, (_, i) =>
    union(corners.flatMap((joints) => (joints[i] ? [reachOf(joints[i])] : [])).filter((box) => box !== undefined)),
  );
  known.set(demo.id, rooms);
  return rooms;
}
