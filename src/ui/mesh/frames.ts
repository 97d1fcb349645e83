/** One thin section laid level: the plane in which it was measured, turned so that it runs to the right. */
import { dot3 } from '../../core/geometry/mesh/vector3.ts';
import { upDirection } from '../../core/inspect/buildDirection.ts';
import type { Flexure, PartSection } from '../../core/inspect/flexure.ts';
import type { PlateUp } from '../../core/inspect/judged.ts';
import type { Point3 } from '../../core/geometry/mesh/triangleMesh.ts';
import type { Point } from '../../core/geometry/outline.ts';

export interface LevelFrame {
  /** From the plane of the section to the frame [mm]: its middle is the origin, x runs along it. */
  readonly into: (point: Point) => Point;
  /** Where y of the frame points in the part. */
  readonly rise: Point3;
}

/** A direction of the frame as a direction of the part. */
function lift({ right, up }: PartSection, { x, y }: Point): Point3 {
  return {
    x: x * right.x + y * up.x,
    y: x * right.y + y * up.y,
    z: x * right.z + y * up.z,
  };
}

/** Half way along a line of points. */
export function middleOf(points: readonly Point[]): Point {
  const lengths = points.slice(1).map((to, i) => {
    const from = points[i] ?? to;
    return Math.hypot(to.x - from.x, to.y - from.y);
  });
  let rest = lengths.reduce((sum, length) => sum + length, 0) / 2;
  for (const [i, length] of lengths.entries()) {
    const [from, to] = [points[i], points[i + 1]];
    if (from && to && rest <= length && length > 0) {
      const u = rest / length;
      return { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) };
    }
    rest -= length;
  }
  return points[0] ?? { x: 0, y: 0 };
}

/** The direction of a line of points about its middle. */
function slopeAtMiddle(points: readonly Point[]): number {
  const at = Math.max(1, Math.floor(points.length / 2));
  const [from = { x: 0, y: 0 }, to = { x: 1, y: 0 }] = [points[at - 1], points[Math.min(at + 1, points.length - 1)]];
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/** The frame of one thin section, level from end to end or, of a long curved one, about its middle; what is thin in the build direction stands the way it is printed. */
export function levelFrame({ centreLine }: Flexure, section: PartSection, up: PlateUp, isByMiddle = false): LevelFrame {
  const { points } = centreLine;
  const [from = { x: 0, y: 0 }, to = { x: 1, y: 0 }] = [points[0], points.at(-1)];
  const middle = middleOf(points);
  const level = isByMiddle ? slopeAtMiddle(points) : Math.atan2(to.y - from.y, to.x - from.x);
  const isOver = dot3(lift(section, { x: -Math.sin(level), y: Math.cos(level) }), upDirection(up)) < -0.5;
  const turn = -level + (isOver ? Math.PI : 0);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return {
    into: ({ x, y }) => {
      const [dx, dy] = [x - middle.x, y - middle.y];
      return { x: c * dx - s * dy, y: s * dx + c * dy };
    },
    rise: lift(section, { x: s, y: c }),
  };
}
