/** The solver's door: a checked network and how far to go in, a path with its own estimate of error out. */
import type { ErrorEstimate, PathAnswer, PathEvent } from './answer.ts';
import type { SecondPath } from './branch.ts';
import { centrelineOf } from './centreline.ts';
import { correct } from './correct.ts';
import { reducedFor } from './equilibrium.ts';
import { eventsBetween, loadLimits } from './events.ts';
import { forcesOf } from './forces.ts';
import type { BeamModel, Member } from './model.ts';
import { prepare, type Network, placeOf } from './network.ts';
import type { Observed } from './observe.ts';
import { walkPath, type Walked } from './path.ts';
import { peaksOf } from './shapes.ts';
import { toCoarse } from './transfer.ts';
import { BUDGET, type PathAsked } from './walk.ts';

export interface SolveAsked extends Omit<PathAsked, 'tolerance'> {
  /** `interactive` aims at 1e-6 in effort and places, `refined` at 1e-9. */
  readonly accuracy?: 'interactive' | 'refined';
  /** Elements along every member, when they are to be just so; a multiple of 4. */
  readonly elements?: number;
}

const AIM = { interactive: 1e-6, refined: 1e-9 } as const;
/** Newton's last step: its square is what is left, well below the aim. */
const LAST_STEP = { interactive: 1e-5, refined: 1e-8 } as const;
/** An element bends by up to so much before the first mesh has another [rad]. */
const TURN_PER_ELEMENT = { interactive: 1, refined: 0.4 } as const;
const FEWEST = 4;
const MOST = 128;
/** Between nodes the largest strain is read off a parabola, so it is known to fewer figures than the states are. */
const STRAIN_ALLOWANCE = 30;
/** A strain that matters to nobody: errors are not weighed against less. */
const NO_STRAIN = 1e-6;
/** A movement, of the network's scale, that matters to nobody. */
const NO_MOVEMENT = 1e-6;
/**
 * Elements that may be set up for one answer, so that a hopeless one ends within a few seconds: an arch takes some
 * twenty thousand.
 */
const WORK = 400_000;
/** Halving the mesh raises the error 256 times in theory; taking only 8 keeps the estimate above the error. */
const GAIN = 8;

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
  let elements = model.members.map((member) => asked.elements ?? firstElements(model, member, accuracy));
  for (;;) {
    const network = prepare(model, elements);
    const size = network.elements.reduce((sum, count) => sum + count, 0);
    const walked = walkPath(network, { ...walkAsked, budget: Math.min(budget, Math.ceil(work / size)) });
    budget -= walked.iterations;
    work -= walked.iterations * size;
    const error = estimate(network, walked);
    const tooRough =
      Math.max(error.effort, error.position, error.strain / STRAIN_ALLOWANCE) > AIM[accuracy] &&
      asked.elements === undefined &&
      // What is left must do for the same walk again.
      budget > walked.iterations &&
      work > 2 * walked.iterations * size &&
      walked.stopped?.code !== 'cancelled';
    const finer = elements.map((count) => Math.min(MOST, 2 * count));
    if (!tooRough || finer.every((count, i) => count === elements[i])) return told(walked, error, network);
    elements = finer;
  }
}

/** Enough elements that none bends far: a multiple of 4, so that each half can be halved again. */
function firstElements(model: BeamModel, member: Member, accuracy: 'interactive' | 'refined'): number {
  const at = (id: string) => model.nodes.find((node) => node.id === id) ?? { x: 0, y: 0 };
  const curve = centrelineOf(member, at(member.from), at(member.to));
  const samples = 32;
  let turn = 0;
  for (let i = 0; i < samples; i += 1) {
    const u = (i + 0.5) / samples;
    turn += (Math.abs(curve.curvature(u)) * curve.speed(u)) / samples;
  }
  const asked = Math.max(0, ...model.motions.map((motion) => Math.abs(motion.turn ?? 0)));
  const count = (turn + Math.min(asked, Math.PI)) / TURN_PER_ELEMENT[accuracy];
  // Waves give way in shorter waves, and thicknesses that change want more points, than their turning tells.
  const isPlain = typeof member.thickness === 'number' && member.shape.kind !== 'rise' && member.shape.kind !== 'wave';
  const shaped = isPlain ? FEWEST : 2 * FEWEST;
  return Math.min(MOST, Math.max(shaped, 4 * Math.ceil(count / 4)));
}

const UNKNOWN = {
  effort: Number.POSITIVE_INFINITY,
  strain: Number.POSITIVE_INFINITY,
  position: Number.POSITIVE_INFINITY,
};

/** The same states on half the mesh, compared. */
function estimate(network: Network, walked: Walked): ErrorEstimate {
  const { elements } = network;
  const seen = takenOf(walked);
  const last = seen.at(-1);
  if (!last || seen.length < 2) return { effort: 0, strain: 0, position: 0, elements };
  if (elements.some((count) => count % 4 !== 0)) return { ...UNKNOWN, elements };
  const coarse = prepare(
    network.model,
    elements.map((count) => count / 2),
  );
  const worst = seen.reduce((a, b) => (Math.abs(b.point.peak.strain) > Math.abs(a.point.peak.strain) ? b : a));
  const effortScale = seen.reduce((most, { point }) => Math.max(most, Math.abs(point.effort)), 0);
  const gaps = [...new Set([worst, last])].map((observed) => gapTo(network, coarse, observed));
  const most = (of: (gap: Gap) => number) => Math.max(...gaps.map(of)) / GAIN;
  const strain = Math.max(Math.abs(worst.point.peak.strain), NO_STRAIN);
  return {
    effort: effortScale > 0 ? most((gap) => gap.effort) / effortScale : 0,
    strain: most((gap) => gap.strain) / strain,
    position:
      most((gap) => gap.position) /
      Math.max(movementIn(network, last), movementIn(network, worst), NO_MOVEMENT * network.scale),
    elements,
  };
}

/** How far any pad or free node has gone [mm]; turns count by the network's scale. */
function movementIn({ frames, scale }: Network, { point }: Observed): number {
  let most = 0;
  frames.names.forEach((name, i) => {
    const pose = point.poses[name];
    if (!pose) return;
    const [x, y] = [frames.home[3 * i]!, frames.home[3 * i + 1]!];
    most = Math.max(most, Math.hypot(pose.x - x, pose.y - y), Math.abs(pose.turn) * scale);
  });
  return most;
}

/** The states that a real part passes: beyond a crossing, those of the second path. */
function takenOf({ seen, second }: Walked): readonly Observed[] {
  if (!second) return seen;
  const isBefore = ({ point }: Observed) => Math.abs(point.share) < Math.abs(second.leaves);
  return [...seen.filter(isBefore), ...second.seen];
}

interface Gap {
  readonly effort: number;
  readonly strain: number;
  readonly position: number;
}

function gapTo(fine: Network, coarse: Network, { state, point }: Observed): Gap {
  const start = toCoarse(fine, state, coarse);
  const { converged } = correct(coarse, start, reducedFor(coarse), LAST_STEP.refined);
  if (!converged) return UNKNOWN;
  const forces = forcesOf(coarse, start);
  const { peak } = peaksOf(coarse, start);
  let position = 0;
  for (let slot = 0; slot < 3 * fine.frames.named; slot += 1) {
    const moved = Math.abs(placeOf(coarse, start, slot) - placeOf(fine, state, slot));
    position = Math.max(position, slot % 3 === 2 ? moved * fine.scale : moved);
  }
  return {
    effort: Math.abs(forces.effort - point.effort),
    strain: Math.abs(Math.abs(peak.strain) - Math.abs(point.peak.strain)),
    position,
  };
}

function told(walked: Walked, error: ErrorEstimate, network: Network): PathAnswer {
  const { seen, second, stopped, iterations } = walked;
  const eventsOf = network.frames.isMoved ? eventsBetween : loadLimits;
  return {
    points: seen.map(({ point }) => point),
    events: [...eventsOf(seen), ...(second ? [leaving(second)] : [])],
    shapes: seen.flatMap(({ shapes }) => (shapes ? [shapes] : [])),
    error,
    ...(stopped ? { stopped } : {}),
    ...(second ? { second: secondTold(second, error, network) } : {}),
    iterations,
  };
}

function secondTold({ seen, stopped, imperfection, leaves }: SecondPath, error: ErrorEstimate, network: Network) {
  const path = told({ seen, iterations: 0, ...(stopped ? { stopped } : {}) }, error, network);
  return { path, imperfection, leaves };
}

function leaving({ seen, leaves }: SecondPath): PathEvent {
  const { effort, energy } = seen[0]!.point;
  return { kind: 'bifurcation', share: leaves, effort, energy, stable: false };
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
