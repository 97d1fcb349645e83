import { acrossStiffness, type BarsAcross } from '../beam/acrossStiffness.ts';
import type { PathAnswer } from '../beam/answer.ts';
import { checkModel } from '../beam/checkModel.ts';
import { referencePoint } from '../beam/frames.ts';
import type { BeamModel } from '../beam/model.ts';
import { followPath, takenPath, type SolveAsked } from '../beam/solve.ts';
import { spatialStiffness, type SpatialStiffness } from '../beam/spatialStiffness.ts';
import { widthRatio } from '../closedForms/leafTorque.ts';
import type { FlexureNetwork } from '../flexures/network.ts';
import { mechanicsOf } from '../flexures/networks.ts';
import { gapFinder, type GapFinder } from '../geometry/gaps.ts';
import { ok, type Result } from '../result.ts';
import { asRad, type Mm } from '../units.ts';
import { firstTouch } from './firstTouch.ts';
import { leastOf } from './joint.ts';
import { askedOf, handResponse } from './response.ts';
import type { Solved, SolvedPath } from './solved.ts';
import type { Understood } from './understand.ts';

/** Points told up to the wanted amount, and beyond it. */
const PARTS = { wanted: 24, beyond: 12 } as const;
/** Curves of effort go on to the family's reach, but not past so many times what is asked, and always a little past it. */
const AT_MOST = 5;
const A_LITTLE_PAST = 1.25;

/** How a joint is solved: with how many points, and whether shapes and what is beyond the wanted amount are needed. */
export interface SolveDetail extends Pick<SolveAsked, 'cancelled' | 'accuracy'> {
  /** Points up to the wanted amount; 24 when left out. */
  readonly parts?: number;
  /** False for a search, where only strain and effort up to the wanted amount are asked for. */
  readonly whole?: boolean;
  /** False where the way ends at the wanted amount, with its shapes; as `whole` when left out. */
  readonly beyond?: boolean;
}

/**
 * How a joint moves, by the solver: effort, energy, stability, strain and shape all along its way, and how its moving
 * pad resists everything else.
 *
 * Solved for a modulus of 1 MPa: efforts and energies scale with the modulus, strains and shapes do not depend on it.
 *
 * Problems: those of `checkModel`, which a joint whose sizes have been checked does not have.
 *
 * @param understood - a checked joint [-]
 * @param detail - how much of the answer is needed [-]
 * @returns paths with amounts [rad] or [mm], efforts per MPa [mm³] or [mm²], strains as fractions
 *
 * Source: reissner-rod, unit-load-method, wide-strip.
 */
export function solveJoint(understood: Understood, detail: SolveDetail = {}): Result<Solved> {
  const { joint, family, section, sizes } = understood;
  const { drive, amount } = joint.movement;
  const least = leastOf(joint.movement);
  const mechanics = mechanicsOf(family.id);
  const poisson = understood.filament.properties.poissonsRatio.typical;
  const reach = Math.min(AT_MOST * amount, mechanics.reach(sizes, section.thickness, drive));
  const limit = mechanics.limit?.(sizes, section.thickness, drive) ?? Infinity;
  const { whole = true, beyond = whole } = detail;
  const end = beyond ? Math.max(amount, Math.min(limit, Math.max(A_LITTLE_PAST * amount, reach))) : amount;
  const narrow = mechanics.network(sizes, section.thickness, { drive, amount: end, widthRatio: 1 });
  const checked = checkModel(modelOf(narrow, poisson));
  if (!checked.ok) return checked;
  // Bars that twist do not know how wide a strip is that bends.
  const across = mechanics.across?.(sizes, section.thickness);
  const ratio = across ? 1 : ratioFor(understood, narrow, poisson);
  const asked = (to: number) => ({ drive, amount: to, widthRatio: ratio });
  const network = mechanics.network(sizes, section.thickness, asked(end));
  const follow = (to: number, wanted: number) =>
    followWay(modelOf(mechanics.network(sizes, section.thickness, asked(to)), poisson), network, to, wanted, {
      ...detail,
      near: joint.profile.lineWidth,
    });
  const forward = follow(end, amount);
  const back = least < 0 ? follow((end * least) / amount, -least) : undefined;
  return ok({
    amount,
    forward: forward.path,
    ...(back ? { back: back.path } : {}),
    ...(back && least !== -amount ? { least } : {}),
    network,
    poisson,
    widthRatio: ratio,
    stiffness: times(stiffnessOf(network, across, poisson), network.alike),
    error: forward.answer.error,
  });
}

/** Of the members in the plane, or of the bars across it that the network only stands for. */
function stiffnessOf(network: FlexureNetwork, across: BarsAcross | undefined, poisson: number): SpatialStiffness {
  const model = modelOf(network, poisson);
  if (!across) return spatialStiffness(model, network.moving);
  return acrossStiffness(across, referencePoint(model, network.moving), model);
}

function modelOf({ model }: FlexureNetwork, poisson: number): BeamModel {
  return { ...model, modulus: 1, poisson };
}

/**
 * Factor on the bending stiffness of its strips because they are wide, as for one leaf of the shortest member's length
 * that is bent as far as the hand form says.
 */
function ratioFor(understood: Understood, { model }: FlexureNetwork, poisson: number): number {
  const { section } = understood;
  const { nominalStrain } = handResponse(askedOf(understood));
  const place = new Map(model.nodes.map((node) => [node.id, node] as const));
  const chords = model.members.map(({ from, to }) => {
    const [a, b] = [place.get(from), place.get(to)];
    return a && b ? Math.hypot(b.x - a.x, b.y - a.y) : Number.POSITIVE_INFINITY;
  });
  const length = Math.min(...chords);
  const arc = asRad((2 * nominalStrain * length) / section.thickness);
  return Number.isFinite(length) ? widthRatio(section.width, length, section.thickness, arc, poisson) : 1;
}

function followWay(
  model: BeamModel,
  network: FlexureNetwork,
  end: number,
  amount: number,
  { parts = PARTS.wanted, whole = true, cancelled, accuracy, near }: SolveDetail & { readonly near: Mm },
): { readonly path: SolvedPath; readonly answer: PathAnswer } {
  const asked = { shares: sharesTo(amount / Math.abs(end), parts), shapes: whole };
  const answer = followPath(model, {
    ...asked,
    ...(cancelled ? { cancelled } : {}),
    ...(accuracy ? { accuracy } : {}),
  });
  return { path: pathOf(answer, network, end, whole ? near : undefined), answer };
}

function even(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 1)) / count);
}

/** Shares up to the wanted amount in equal parts, then on to the end. */
function sharesTo(wanted: number, parts: number): readonly number[] {
  return [...even(0, wanted, parts), ...(wanted < 1 ? even(wanted, 1, PARTS.beyond) : [])];
}

/** Gaps are looked for where it is told how near counts as near. */
function pathOf(answer: PathAnswer, network: FlexureNetwork, end: number, near: Mm | undefined): SolvedPath {
  const taken = takenPath(answer);
  const { alike } = network;
  // Work per share over the way to the end is the effort; that of a movement the other way is counted along it.
  const effort = (perShare: number) => (alike * perShare) / end;
  const gapsOf: GapFinder | undefined =
    near !== undefined && taken.shapes[0] ? gapFinder(network.model, network.bodies, taken.shapes[0], near) : undefined;
  const points = taken.points.map((point, i) => {
    const shapes = taken.shapes[i] ?? [];
    const gaps = gapsOf?.(shapes, point.poses);
    return {
      amount: end * point.share,
      effort: effort(point.effort),
      energy: alike * point.energy,
      unstableWays: point.unstableWays,
      unstableFree: point.unstableFree,
      peak: point.peak,
      peakWithin: point.peakWithin,
      peakAtEnds: point.peakAtEnds,
      poses: point.poses,
      shapes,
      residual: point.residual,
      ...(gaps?.least ? { gap: gaps.least } : {}),
      ...(gaps && gaps.near.length > 0 ? { near: gaps.near } : {}),
    };
  });
  const events = taken.events.map(({ share, ...event }) => ({
    ...event,
    amount: end * share,
    effort: effort(event.effort),
    energy: alike * event.energy,
  }));
  const touches = gapsOf ? firstTouch(points, gapsOf) : undefined;
  const stopped = answer.second ? answer.second.path.stopped : answer.stopped;
  return {
    points,
    events,
    ...(touches ? { touches } : {}),
    ...(stopped ? { stopped } : {}),
    ...(answer.second
      ? { leaves: { amount: end * answer.second.leaves, imperfection: answer.second.imperfection } }
      : {}),
  };
}

function times({ matrix, free, held }: SpatialStiffness, alike: number): SpatialStiffness {
  const scaled = <T extends Readonly<Record<string, number>>>(six: T): T =>
    Object.fromEntries(Object.entries(six).map(([name, k]) => [name, alike * k])) as T;
  return { matrix: matrix.map((row) => row.map((k) => alike * k)), free: scaled(free), held: scaled(held) };
}
