/** The solver's door: a checked network and how far to go in, a path with its own estimate of error out. */
import type { PathAnswer, PathEvent } from './answer.ts';
import { estimate } from './estimate.ts';
import { finerMesh, firstMesh, isTooRough, LAST_STEP, type Accuracy } from './fineness.ts';
import { keptOf, type Kept } from './kept.ts';
import type { BeamModel } from './model.ts';
import { prepare, type Network } from './network.ts';
import { walkPath, type Start } from './path.ts';
import { takenOf, told } from './told.ts';
import { onMesh } from './transfer.ts';
import { BUDGET, type PathAsked } from './walk.ts';
import type { Walker } from './walker.ts';
import { beginAt } from './warm.ts';

export interface SolveAsked extends Omit<PathAsked, 'tolerance'> {
  readonly accuracy?: Accuracy;
  /** Elements along every member, when they are to be just so; a multiple of 4. */
  readonly elements?: number;
  /** What an earlier answer kept, at whose last state this one goes on. */
  readonly from?: Kept;
}

/**
 * Elements that may be set up for one answer, so that a hopeless one ends within a few seconds: an arch takes some
 * twenty thousand.
 */
const WORK = 400_000;

/**
 * Follows a network as its motions and loads grow to what the model asks for: from rest, or on from the last state of an
 * earlier answer.
 *
 * The path is walked on one mesh; its most strained and its last state are then solved on a mesh of half as many
 * elements as well, and where the two differ too much the walk is repeated on a finer one.
 *
 * What is told of a path that goes on from an earlier answer (peaks, events, errors) is told of that part alone. It
 * begins at the share where the other ended; where that is no nearer than the end, or the network is no near neighbour,
 * it is walked from rest, and `warm` is false.
 *
 * @param model - network that has passed `checkModel` [-]
 * @param asked - how far, how finely, from where, and what else is wanted [-]
 * @returns points, events and shapes [mm, N, N·mm, rad], with an estimate of their error; `stopped` says why the
 * path ends early
 *
 * Problems: `no-convergence`, `cancelled`, `over-budget`, in `stopped`.
 *
 * Source: reissner-rod.
 */
export function followPath(model: BeamModel, asked: SolveAsked = {}): PathAnswer {
  const { from, accuracy = 'interactive' } = asked;
  if (!from) return walkOnMeshes(model, asked, accuracy);
  const shares = sharesBeyond(asked, from.state.share);
  const begun = shares.length > 0 ? beginAt(model, from, from.state.share, LAST_STEP[accuracy]) : undefined;
  if (!begun) return { ...walkOnMeshes(model, asked, accuracy), warm: false };
  return { ...walkOnMeshes(model, { ...asked, shares }, accuracy, { from, begun }), warm: true };
}

/** Where a path goes on from an earlier answer. */
interface Onward {
  readonly from: Kept;
  readonly begun: Walker;
}

function walkOnMeshes(model: BeamModel, asked: SolveAsked, accuracy: Accuracy, onward?: Onward): PathAnswer {
  const walkAsked: PathAsked = { ...asked, tolerance: LAST_STEP[accuracy] };
  let work = WORK;
  let budget = asked.budget ?? BUDGET;
  let elements = meshFor(model, asked, accuracy, onward);
  for (;;) {
    const { network, start } = startOn(model, elements, onward);
    const size = network.elements.reduce((sum, count) => sum + count, 0);
    const walked = walkPath(network, { ...walkAsked, budget: Math.min(budget, Math.ceil(work / size)) }, start);
    budget -= walked.iterations;
    work -= walked.iterations * size;
    const error = estimate(network, takenOf(walked), onward?.from.largestEffort);
    // What is left must do for the same walk again.
    const mayGoOn = budget > walked.iterations && work > 2 * walked.iterations * size;
    const isMeant = asked.elements !== undefined || walked.stopped?.code === 'cancelled';
    const finer = finerMesh(elements);
    if (isMeant || !mayGoOn || !finer || !isTooRough(error, accuracy)) {
      const isKept = asked.keep === true && walked.seen.length > 0;
      return { ...told(walked, error, network), ...(isKept ? { kept: keptOf(network, walked, onward?.from) } : {}) };
    }
    elements = finer;
  }
}

function meshFor(model: BeamModel, { elements }: SolveAsked, accuracy: Accuracy, onward?: Onward): readonly number[] {
  if (elements !== undefined) return model.members.map(() => elements);
  return onward?.from.elements ?? firstMesh(model, accuracy);
}

function startOn(
  model: BeamModel,
  elements: readonly number[],
  onward?: Onward,
): { readonly network: Network; readonly start?: Start } {
  if (!onward) return { network: prepare(model, elements) };
  const { network, state } = onward.begun;
  const { way } = onward.from;
  if (network.elements.every((count, i) => count === elements[i])) return { network, start: { state, way } };
  const finer = prepare(model, elements);
  return { network: finer, start: { state: onMesh(network, state, finer), way } };
}

/** What of the grid lies between a share and the end of what is asked. */
function sharesBeyond({ shares, to = 1, parts = 40 }: SolveAsked, start: number): readonly number[] {
  const isBeyond = (share: number) => share * start > 0 && Math.abs(share) > Math.abs(start);
  if (shares) return shares.filter(isBeyond);
  return isBeyond(to) ? Array.from({ length: parts }, (_, i) => start + ((to - start) * (i + 1)) / parts) : [];
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
