/** What there is to draw of a joint that is moved: at once where it rolls to an arc, else once it is solved. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Bounds } from '../../core/geometry/flatten.ts';
import { sceneOf, type Posed } from '../drawing/solved/scene.ts';
import { stateAt, type StateNow } from '../drawing/solved/state.ts';
import { boundsOf, edgesIn } from '../drawing/solved/swept.ts';
import { rolled } from './rolled.ts';

/** A joint as there is to draw of it, and its state when it is moved by a share of its amount. */
export interface Film {
  readonly posed: Posed;
  readonly stateAt: (share: number) => StateNow;
}

/** One state of it. */
export interface Picture {
  readonly posed: Posed;
  readonly now: StateNow;
}

/** What there is to draw of a joint; nothing where it has to be solved and is not yet. */
export function filmOf(a: Assessment): Film | undefined {
  if (a.travel) return rolled(a);
  const { solved } = a;
  if (!solved) return undefined;
  return { posed: sceneOf(a, solved), stateAt: (share) => stateAt(solved, a.joint.movement.amount * share) };
}

/** States that reach farthest lie among these. */
const LOOKS: readonly number[] = [0, 0.25, 0.5, 0.75, 1];

/** How far a joint reaches on its way, pads and all [mm]. */
export function reachOfFilm({ posed, stateAt: at }: Film): Bounds {
  return boundsOf(LOOKS.flatMap((share) => edgesIn(posed, at(share))));
}
