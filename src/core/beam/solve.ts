/** The solver's door: a checked network and how far to go in, a path with its own estimate of error out. */
import type { PathAnswer, PathEvent } from './answer.ts';
import { estimate } from './estimate.ts';
import { finerMesh, firstMesh, isTooRough, LAST_STEP, type Accuracy } from './fineness.ts';
import type { BeamModel } from './model.ts';
import { prepare } from './network.ts';
import { walkPath } from './path.ts';
import { takenOf, told } from './told.ts';
import { BUDGET, type PathAsked } from './walk.ts';

export interface SolveAsked extends Omit<PathAsked, 'tolerance'> {
  readonly accuracy?: Accuracy;
  /** Elements along every member, when they are to be just so; a multiple of 4. */
  readonly elements?: number;
}

/**
 * Elements that may be set up for one answer, so that a hopeless one ends within a few seconds: an arch takes some
 * twenty thousand.
 */
const WORK = 400_000;

/**
 * Follows a network from rest as its motions and loads grow to what the model asks for.
 *
 * The path is walked on one mesh; its most strained and its last state are then solved on a mesh of half as many
 * elements as well, and where the two differ too much the walk is repeated on a finer one.
 *
 * @param model - network that has passed `checkModel` [-]
 * @param asked - how far, how finely, and what else is wanted [-]
 * @returns points, events and shapes [mm, N, N·mm, rad], with an estimate of their error; `stopped` says why the
 * path ends early
 *
 * Problems: `no-convergence`, `cancelled`, `over-budget`, in `stopped`.
 *
 * Source: reissner-rod.
 */
export function followPath(model: BeamModel, asked: SolveAsked = {}): PathAnswer {
  const accuracy = asked.accuracy ?? 'interactive';
  const walkAsked: PathAsked = { ...asked, tolerance: LAST_STEP[accuracy] };
  let work = WORK;
  let budget = asked.budget ?? BUDGET;
  let elements = asked.elements === undefined ? firstMesh(model, accuracy) : model.members.map(() => asked.elements!);
  for (;;) {
    const network = prepare(model, elements);
    const size = network.elements.reduce((sum, count) => sum + count, 0);
    const walked = walkPath(network, { ...walkAsked, budget: Math.min(budget, Math.ceil(work / size)) });
    budget -= walked.iterations;
    work -= walked.iterations * size;
    const error = estimate(network, takenOf(walked));
    // What is left must do for the same walk again.
    const mayGoOn = budget > walked.iterations && work > 2 * walked.iterations * size;
    const isMeant = asked.elements !== undefined || walked.stopped?.code === 'cancelled';
    const finer = finerMesh(elements);
    if (isMeant || !mayGoOn || !finer || !isTooRough(error, accuracy)) return told(walked, error, network);
    elements = finer;
  }
}

/**
 * The path that a real part takes: the first one up to where another leaves it, then that one.
 *
 * @param answer - a path as followed [-]
 * @returns points, events and shapes in the order in which they are passed
 */
export function takenPath(answer: PathAnswer): Pick<PathAnswer, 'points' | 'events' | 'shapes'> {
  const { second } = answer;
  if (!second) return answer;
  const before = answer.points.filter(({ share }) => Math.abs(share) < Math.abs(second.leaves)).length;
  const isBefore = ({ share, kind }: PathEvent) => Math.abs(share) < Math.abs(second.leaves) || kind === 'bifurcation';
  return {
    points: [...answer.points.slice(0, before), ...second.path.points],
    events: [...answer.events.filter(isBefore), ...second.path.events],
    shapes: [...answer.shapes.slice(0, before), ...second.path.shapes],
  };
}
