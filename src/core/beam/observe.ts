/** What is told of a state that has been reached. */
import type { MemberShape, PathPoint, Pose, Reaction } from './answer.ts';
import { eliminatedOf } from './equilibrium.ts';
import { forcesOf, type Forces } from './forces.ts';
import { placeOf, type Network, type State } from './network.ts';
import { peaksOf, shapesOf } from './shapes.ts';
import { softestWay } from './softest.ts';
import { effortSlope, type Walker } from './walker.ts';

/** A point of a path with what is needed to go on from it. */
export interface Observed {
  readonly point: PathPoint;
  /** Change of the effort with the share; NaN where loads alone drive. */
  readonly slope: number;
  /** The same on the way on from here, where the path has a corner and comes in with another. */
  readonly slopeOn?: number;
  readonly state: State;
  readonly shapes: readonly MemberShape[] | undefined;
  /** Stiffness of its softest way [N·mm], where the answer is to be kept. */
  readonly softest: number;
}

/** What is wanted of every state besides its figures. */
export interface Wanted {
  readonly shapes?: boolean;
  readonly keep?: boolean;
}

/** Ways in which the network would leave this state if the drive were held. */
export function unstableWays({ reduced }: Walker): number {
  return reduced.negative + eliminatedOf(reduced).negative();
}

/**
 * Everything told of the walker's present state.
 *
 * @param walker - just arrived [-]
 * @param iterations - how many it took [-]
 * @param wanted - whether middle lines are wanted, and whether the answer is to be kept [-]
 */
export function observe(walker: Walker, iterations: number, { shapes, keep }: Wanted): Observed {
  const { network, state, reduced, weights } = walker;
  const forces = forcesOf(network, state);
  const { peak, within, atEnds } = peaksOf(network, state);
  const slope = network.frames.isMoved ? effortSlope(walker) : Number.NaN;
  const ways = unstableWays(walker);
  const point: PathPoint = {
    share: state.share,
    effort: forces.effort,
    reactions: reactionsOf(network, forces),
    poses: posesOf(network, state),
    energy: forces.energy,
    unstableWays: ways,
    // Letting one driven direction go adds its own pivot, the slope of the effort, to the signature.
    unstableFree: ways + (slope < 0 ? 1 : 0),
    peak,
    peakWithin: within,
    peakAtEnds: atEnds,
    residual: forces.residual,
    iterations,
  };
  return {
    point,
    slope,
    state,
    shapes: shapes === true ? shapesOf(network, state) : undefined,
    softest: keep === true ? softestWay(reduced.tangent, weights).value : Number.NaN,
  };
}

function posesOf(network: Network, state: State): Readonly<Record<string, Pose>> {
  const { names } = network.frames;
  return Object.fromEntries(
    names.map((name, i) => {
      const at = (d: number) => placeOf(network, state, 3 * i + d);
      return [name, { x: at(0), y: at(1), turn: at(2) }];
    }),
  );
}

/** Forces at frames that are held or moved in some direction; the others are in balance. */
function reactionsOf({ frames }: Network, { atFrames }: Forces): readonly Reaction[] {
  return frames.names.flatMap((at, i) => {
    const isHeld = [0, 1, 2].some((d) => frames.unknown[3 * i + d]! < 0);
    if (!isHeld) return [];
    return [{ at, x: atFrames[3 * i]!, y: atFrames[3 * i + 1]!, moment: atFrames[3 * i + 2]! }];
  });
}
