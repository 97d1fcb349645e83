/** How a pad resists small movements in space, in the plane of bending and out of it. */
import type { Point } from '../geometry/outline.ts';
import { condense } from '../numeric/condense.ts';
import { namedFrames } from './frames.ts';
import { memberStiffness } from './memberStiffness.ts';
import type { BeamModel } from './model.ts';

/** Moves along x, y, z and turns about them, in the order of rows and columns. */
export const DIRECTIONS = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** One stiffness for each direction: moves [N/mm], turns [N·mm/rad]. */
export type SixStiffnesses = Readonly<Record<Direction, number>>;

export interface SpatialStiffness {
  /** Loads on the pad over its movements, symmetric [N/mm, N/rad, N·mm/rad]. */
  readonly matrix: readonly (readonly number[])[];
  /** Load in one direction over the movement there, while the pad gives way in all others too; 0 where it moves freely. */
  readonly free: SixStiffnesses;
  /** The same while its five other movements are held. */
  readonly held: SixStiffnesses;
}

const IN_PLANE = { x: 0, y: 1, turn: 5 } as const;
const OUT_OF_PLANE = [2, 3, 4];
type PlaneDirection = keyof typeof IN_PLANE;
const PLANE_DIRECTIONS: readonly PlaneDirection[] = ['x', 'y', 'turn'];

/**
 * The linear stiffness in space of one pad about its reference point, as printed and unloaded; everything else that is
 * free follows.
 *
 *     S = K₂₂ − K₂₁·K₁₁⁻¹·K₁₂,   free_i = 1/(S⁻¹)_ii,   held_i = S_ii
 *
 * The pad's own supports, motions and ties are left off, so that the answer is its own. Other supports and motions hold
 * what they name, and whatever has a support is held across the plane as well (move along z, turns about x and y).
 * Springs act; loads do not. Where nothing resists, a stiffness is 0: the pad then gives without bound. Members in
 * different planes are taken to lie in one. Clamped ends of a twisted member keep it from warping and stiffen short
 * strips; that is not included.
 *
 * @param model - network that has passed `checkModel` [-]
 * @param pad - id of the pad, or of a node of no pad [-]
 * @returns matrix, and stiffnesses with the rest of the pad free and held [N/mm, N·mm/rad]
 *
 * Source: unit-load-method.
 */
export function spatialStiffness(model: BeamModel, pad: string): SpatialStiffness {
  const { names, places, ofNode } = namedFrames(model);
  const asked = names.indexOf(pad);
  if (asked < 0) throw new RangeError(`there is no pad or free node “${pad}”`);
  const movements = movementsOf(model, names, asked);
  const system = assemble(model, movements, places, ofNode);
  addSprings(system, movements, model, names);
  const matrix = condense(system, movements.count - 6);
  return { matrix, free: six((i) => aloneFelt(matrix, i)), held: six((i) => matrix[i]![i]!) };
}

function six(value: (i: number) => number): SixStiffnesses {
  return Object.fromEntries(DIRECTIONS.map((name, i) => [name, value(i)])) as SixStiffnesses;
}

/** Stiffness in one direction while all others follow. */
function aloneFelt(matrix: readonly (readonly number[])[], last: number): number {
  const order = [...matrix.keys()].filter((i) => i !== last).concat(last);
  const turned = order.map((i) => order.map((j) => matrix[i]![j]!));
  return condense(turned, order.length - 1)[0]![0]!;
}

/** Which unknown moves each direction of each frame (six by frame, −1 for held) and how many times as much. */
interface Movements {
  readonly unknown: Int32Array;
  readonly factor: Float64Array;
  readonly count: number;
}

/** The six of the pad that is asked about come last. */
function movementsOf(model: BeamModel, names: readonly string[], asked: number): Movements {
  const size = 6 * names.length;
  const [unknown, factor] = [new Int32Array(size), new Float64Array(size).fill(1)];
  const isHeld = heldDirections(model, names, asked);
  const slot = (at: string, direction: PlaneDirection) => 6 * names.indexOf(at) + IN_PLANE[direction];
  const ties = model.ties.flatMap((tie) =>
    PLANE_DIRECTIONS.flatMap((direction) => {
      const times = tie[direction];
      const at = slot(tie.at, direction);
      if (times === undefined || Math.floor(at / 6) === asked) return [];
      return [{ at, like: slot(tie.like, direction), times }];
    }),
  );
  const isTied = new Set(ties.map(({ at }) => at));
  let count = 0;
  const isOfAsked = (i: number) => Math.floor(i / 6) === asked;
  for (let i = 0; i < size; i += 1) {
    if (isHeld[i] === 1) unknown[i] = -1;
    else if (!isTied.has(i) && !isOfAsked(i)) unknown[i] = count++;
  }
  for (let i = 0; i < 6; i += 1) unknown[6 * asked + i] = count++;
  for (const { at, like, times } of ties) [unknown[at], factor[at]] = [unknown[like]!, times];
  return { unknown, factor, count };
}

function heldDirections(model: BeamModel, names: readonly string[], asked: number): Uint8Array {
  const isHeld = new Uint8Array(6 * names.length);
  const hold = (at: string, directions: readonly number[]) => {
    const frame = names.indexOf(at);
    if (frame !== asked) for (const direction of directions) isHeld[6 * frame + direction] = 1;
  };
  for (const support of model.supports) {
    hold(support.at, [...inPlane((direction) => support[direction] === true), ...OUT_OF_PLANE]);
  }
  for (const motion of model.motions) {
    hold(
      motion.at,
      inPlane((direction) => motion[direction] !== undefined),
    );
  }
  return isHeld;
}

function inPlane(isNamed: (direction: PlaneDirection) => boolean): readonly number[] {
  return PLANE_DIRECTIONS.filter(isNamed).map((direction) => IN_PLANE[direction]);
}

type System = number[][];

/** Adds k·f_a·f_b where the movements a and b are unknown. */
function add(system: System, { unknown, factor }: Movements, a: number, b: number, stiffness: number): void {
  const [row, column] = [unknown[a]!, unknown[b]!];
  if (row >= 0 && column >= 0) system[row]![column] = system[row]![column]! + factor[a]! * factor[b]! * stiffness;
}

function assemble(
  model: BeamModel,
  movements: Movements,
  places: readonly Point[],
  ofNode: ReadonlyMap<string, number>,
): System {
  const system = Array.from({ length: movements.count }, () => Array.from({ length: movements.count }, () => 0));
  const nodes = new Map(model.nodes.map((node) => [node.id, node]));
  for (const member of model.members) {
    const [from, to] = [nodes.get(member.from), nodes.get(member.to)];
    if (!from || !to) throw new RangeError(`member ${member.id} has no nodes`);
    const { heading, matrix } = memberStiffness(member, from, to, model);
    const ends = [ofNode.get(member.to)!, ofNode.get(member.from)!];
    // What moves the second node against the first, seen from both: the second end's move less that of the first.
    const ways = ends.map((frame, k) => carriedTo(to, places[frame]!, heading, k === 0 ? 1 : -1));
    const slots = ends.flatMap((frame) => Array.from({ length: 6 }, (_, i) => 6 * frame + i));
    const way = Array.from({ length: 6 }, (_, i) => ways.flatMap((each) => each[i]!));
    addForm(system, movements, slots, way, matrix);
  }
  return system;
}

/** Adds wayᵀ·matrix·way. */
function addForm(
  system: System,
  movements: Movements,
  slots: readonly number[],
  way: readonly (readonly number[])[],
  matrix: readonly (readonly number[])[],
): void {
  const loads = matrix.map((row) => slots.map((_, b) => row.reduce((sum, m, j) => sum + m * way[j]![b]!, 0)));
  slots.forEach((slotA, a) =>
    slots.forEach((slotB, b) =>
      add(
        system,
        movements,
        slotA,
        slotB,
        way.reduce((sum, row, i) => sum + row[a]! * loads[i]![b]!, 0),
      ),
    ),
  );
}

/** Movement of a point that a frame carries, along axes turned by `heading`, times a sign: rows by movement of the frame. */
function carriedTo(point: Point, frame: Point, heading: number, sign: 1 | -1): number[][] {
  const [c, s] = [sign * Math.cos(heading), sign * Math.sin(heading)];
  const [dx, dy] = [point.x - frame.x, point.y - frame.y];
  return [
    [c, s, 0, 0, 0, s * dx - c * dy],
    [-s, c, 0, 0, 0, c * dx + s * dy],
    [0, 0, sign, sign * dy, -sign * dx, 0],
    [0, 0, 0, c, s, 0],
    [0, 0, 0, -s, c, 0],
    [0, 0, 0, 0, 0, sign],
  ];
}

function addSprings(system: System, movements: Movements, model: BeamModel, names: readonly string[]): void {
  const shearModulus = model.modulus / (2 * (1 + model.poisson));
  for (const { at, to, x = 0, y = 0, turn = 0, twist = 0 } of model.springs) {
    const stiffness = { x, y, turn: turn + twist * shearModulus };
    for (const direction of PLANE_DIRECTIONS) {
      const [a, k] = [6 * names.indexOf(at) + IN_PLANE[direction], stiffness[direction]];
      add(system, movements, a, a, k);
      if (to === undefined) continue;
      const b = 6 * names.indexOf(to) + IN_PLANE[direction];
      add(system, movements, b, b, k);
      add(system, movements, a, b, -k);
      add(system, movements, b, a, -k);
    }
  }
}
