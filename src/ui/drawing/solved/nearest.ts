import { leastGap, type MetGap } from '../../../core/design/solvedPath.ts';
import type { Mm } from '../../../core/units.ts';
import type { Scene } from './scene.ts';

/** What parts should keep off each other, or the printer's lines fuse: one line width [mm]. */
export function keptApart({ a }: Scene): Mm {
  return a.joint.profile.lineWidth;
}

/** The least gap on the way to an amount, where it is nearer than parts should come. */
export function nearestUpTo(scene: Scene, amount: number): MetGap | undefined {
  const least = leastGap(scene.solved, amount);
  return least && least.gap < keptApart(scene) ? least : undefined;
}
