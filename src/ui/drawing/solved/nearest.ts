import type { MetGap } from '../../../core/design/solved.ts';
import { leastGap } from '../../../core/design/solvedPath.ts';
import type { Gap } from '../../../core/geometry/gaps.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { distance } from '../../../core/geometry/vector.ts';
import type { Mm } from '../../../core/units.ts';
import { onSheet, type Sheet } from '../sheet.ts';
import type { Scene } from './scene.ts';
import { isSamePair, type StateNow } from './state.ts';

/** What parts should keep off each other, or the printer's lines fuse: one line width [mm]. */
export function keptApart({ a }: Scene): Mm {
  return a.joint.profile.lineWidth;
}

/** The least gap on the way to an amount, where it is nearer than parts should come. */
export function nearestUpTo(scene: Scene, amount: number): MetGap | undefined {
  const least = leastGap(scene.solved, amount);
  return least && least.gap < keptApart(scene) ? least : undefined;
}

/** All places that are nearer in a state than parts should come, the nearest first. */
function nearPlaces(scene: Scene, { gap, near }: StateNow): readonly Gap[] {
  const all = gap ? [gap, ...near.filter((other) => !isSamePair(other, gap))] : near;
  return all.filter((one) => one.gap < keptApart(scene)).toSorted((p, q) => p.gap - q.gap);
}

/** A place to be ringed: how near two parts are there [mm], and where [px]. */
interface NearMark {
  readonly gap: Mm;
  readonly at: Point;
}

/** Rings whose middles are nearer than this would be one blot [px]. */
const APART = 14;

/** Where parts are too near, the nearest first; what lies within a ring that is there already needs none of its own. */
export function nearMarks(scene: Scene, sheet: Sheet, state: StateNow): readonly NearMark[] {
  const marks: NearMark[] = [];
  for (const { gap, a, b } of nearPlaces(scene, state)) {
    const at = onSheet(sheet, { x: (a.at.x + b.at.x) / 2, y: (a.at.y + b.at.y) / 2 });
    if (marks.every((mark) => distance(mark.at, at) > APART)) marks.push({ gap, at });
  }
  return marks;
}
