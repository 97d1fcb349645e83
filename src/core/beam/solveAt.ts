/** The solver's other door: one state of a network, from that of a neighbour where that will do. */
import type { ErrorEstimate, MemberShape, PathPoint } from './answer.ts';
import { estimate } from './estimate.ts';
import { finerMesh, isTooRough, LAST_STEP } from './fineness.ts';
import { keptBy, type Kept } from './kept.ts';
import type { BeamModel } from './model.ts';
import { observe } from './observe.ts';
import { fail, ok, type Result } from '../result.ts';
import { followPath, takenPath, type SolveAsked } from './solve.ts';
import type { Walker } from './walker.ts';
import { beginAt, onFiner } from './warm.ts';

export interface StateAsked extends Pick<SolveAsked, 'accuracy' | 'shapes' | 'keep' | 'from' | 'cancelled' | 'budget'> {
  /** Share of the motions and loads; 1 when left out. Not 0. */
  readonly share?: number;
  /** Equal parts of the way there, where it is walked; 20 when left out. */
  readonly parts?: number;
}

export interface StateAnswer {
  readonly point: PathPoint;
  /** Middle lines; only where they were asked for. */
  readonly shapes?: readonly MemberShape[];
  /** Of this state; efforts are weighed against the largest on the way there. */
  readonly error: ErrorEstimate;
  /** Whether the state was found from that of the neighbour, and not by a walk from rest. */
  readonly warm: boolean;
  readonly kept?: Kept;
  readonly iterations: number;
}

/**
 * One state of a network: found by a few steps from that of a near neighbour (`from`), or by a walk from rest.
 *
 * Both give the same state, with the same count of ways to give, residual and estimate of error; `warm` says which it
 * was. Of two sides to which a network may lean alike, the neighbour's is kept.
 *
 * It is for many neighbours at one amount: draws about a mean, a slider, a search for the effort there. It says nothing
 * of the way: the largest strain on it, its limits and rests need the walk of `followPath`, and no start can spare it.
 *
 * @param model - network that has passed `checkModel` [-]
 * @param asked - at which share, from where, and what else is wanted [-]
 * @returns the state [mm, N, N·mm, rad] on the path that a real part takes
 *
 * Problems: `no-convergence`, `cancelled`, `over-budget`.
 *
 * Source: reissner-rod.
 */
export function solveAt(model: BeamModel, asked: StateAsked = {}): Result<StateAnswer> {
  const { share = 1, from, accuracy = 'interactive' } = asked;
  if (!(Math.abs(share) > 0)) throw new RangeError(`a share other than 0 is needed, not ${share}`);
  const begun = from ? beginAt(model, from, share, LAST_STEP[accuracy]) : undefined;
  const warm = from && begun ? settled(begun, asked, from) : undefined;
  return warm ? ok(warm) : walked(model, asked);
}

/** The state on a mesh that is fine enough; undefined where none is. */
function settled(begun: Walker, asked: StateAsked, from: Kept): StateAnswer | undefined {
  const { accuracy = 'interactive' } = asked;
  let [walker, iterations] = [begun, begun.spent];
  for (;;) {
    const observed = observe(walker, iterations, asked);
    const error = estimate(walker.network, [observed], from.largestEffort);
    if (!isTooRough(error, accuracy)) {
      const { point, shapes } = observed;
      const kept = asked.keep === true ? keptBy(walker, from) : undefined;
      return { point, ...(shapes ? { shapes } : {}), error, warm: true, ...(kept ? { kept } : {}), iterations };
    }
    const finer = finerMesh(walker.network.elements);
    const next = finer ? onFiner(walker, finer, LAST_STEP[accuracy]) : undefined;
    if (!next) return undefined;
    walker = next;
    iterations += next.spent;
  }
}

function walked(model: BeamModel, { share = 1, parts = 20, from: _from, ...asked }: StateAsked): Result<StateAnswer> {
  const answer = followPath(model, { ...asked, parts, to: share });
  const { points, shapes } = takenPath(answer);
  const stopped = answer.second ? answer.second.path.stopped : answer.stopped;
  if (stopped) return fail(stopped);
  const { error, kept, iterations } = answer;
  return ok({
    point: points.at(-1)!,
    ...(shapes.length > 0 ? { shapes: shapes.at(-1)! } : {}),
    error,
    warm: false,
    ...(kept ? { kept } : {}),
    iterations,
  });
}
