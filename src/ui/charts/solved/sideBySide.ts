/** Effort of one to twelve alike side by side: a straight line, because they share the movement and not the effort. */
import type { Assessment } from '../../../core/design/assessment.ts';
import { familyOf } from '../../../core/flexures/known.ts';
import type { Parameter } from '../../../core/flexures/family.ts';

interface SidePoint {
  readonly count: number;
  readonly effort: number;
}

export interface SideBySide {
  readonly points: readonly SidePoint[];
  readonly now: SidePoint;
  readonly atMost: number;
  /** Most of them that keep to it; 0 when even one is over. */
  readonly keeps: number;
}

const SHOWN = 12;

/** Undefined where the kind is not laid side by side, or nothing is wanted of the effort. */
export function sideBySideOf(a: Assessment): SideBySide | undefined {
  const { effortAtMost: atMost } = a.joint.movement;
  const { roles, parameters } = familyOf(a.joint);
  if (roles.sideBySide === undefined || atMost === undefined) return undefined;
  const { min, max } = parameters[roles.sideBySide] as Parameter;
  const most = Math.min(Math.max(SHOWN, a.sideBySide), max);
  const each = a.effort.effort / a.sideBySide;
  const points = Array.from({ length: most - min + 1 }, (_, i) => ({ count: min + i, effort: each * (min + i) }));
  const keeping = points.filter(({ effort }) => effort <= atMost);
  return { points, now: { count: a.sideBySide, effort: a.effort.effort }, atMost, keeps: keeping.at(-1)?.count ?? 0 };
}
