import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { dot3, from3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { SpaceRun } from './flexureOf.ts';
import type { MeasuredRun } from './measureRun.ts';
import { inPlane, type Section } from './sectionAt.ts';

/** A flexure before it has its number and its pads. */
export interface Draft {
  readonly run: MeasuredRun;
  readonly space: SpaceRun;
  readonly section: number;
  /** How squarely the axis of its section meets the edges there. */
  readonly squareness: number;
}

/** Whether a place lies in a flexure: as far from its centre line as it is thick, and within its depth. */
export function isIn(sections: readonly Section[], draft: Draft, place: Point3, thickness: Mm): boolean {
  const { run, space, section } = draft;
  const { plane } = sections[section]!;
  if (Math.abs(dot3(from3(space.centre, place), plane.normal)) > 0.55 * space.depth) return false;
  const at = inPlane(plane, place);
  const reach = Math.max(space.least, thickness);
  return run.centreLine.some(({ x, y }, i) => {
    const before = run.centreLine[i - 1] ?? { x, y };
    const length = Math.hypot(x - before.x, y - before.y);
    const share =
      length > 0 ? ((at.x - before.x) * (x - before.x) + (at.y - before.y) * (y - before.y)) / length ** 2 : 0;
    const near = Math.min(1, Math.max(0, share));
    return Math.hypot(before.x + near * (x - before.x) - at.x, before.y + near * (y - before.y) - at.y) < reach;
  });
}
