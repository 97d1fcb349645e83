/** Frames: the rigid places that members hang on, and which of their movements are unknown. */
import type { Point } from '../geometry/outline.ts';
import type { BeamModel } from './model.ts';

const DIRECTIONS = ['x', 'y', 'turn'] as const;

/** A spring between two movements, or a movement and the ground (−1) [N/mm or N·mm/rad]. */
export interface SpringBetween {
  readonly from: number;
  readonly to: number;
  readonly stiffness: number;
}

/** Arrays of three entries by frame: x, y, turn. */
export interface Frames {
  /** Pads, then nodes of no pad, then the middles of members. */
  readonly names: readonly string[];
  /** Named ones come first; those after them are the middles of members. */
  readonly named: number;
  readonly count: number;
  readonly home: Float64Array;
  /** Movement per share of the motion asked for. */
  readonly rate: Float64Array;
  /** Which unknown moves it, −1 for none, and how many times as much. */
  readonly unknown: Int32Array;
  readonly factor: Float64Array;
  readonly unknowns: number;
  readonly load: Float64Array;
  readonly follower: Uint8Array;
  readonly springs: readonly SpringBetween[];
  /** Motions or loads drive the path. */
  readonly isMoved: boolean;
  readonly hasFollower: boolean;
  /** The first direction that a motion moves, or a load pushes: its amount [mm or rad; N or N·mm]. */
  readonly drive: number;
}

/** The frame that carries each node, and all reference points in the order of frames; middles are appended later. */
export function namedFrames(model: Pick<BeamModel, 'nodes' | 'pads'>): {
  readonly names: readonly string[];
  readonly places: readonly Point[];
  readonly ofNode: ReadonlyMap<string, number>;
} {
  const place = new Map(model.nodes.map((node) => [node.id, node] as const));
  const padOf = new Map(model.pads.flatMap((pad, index) => pad.nodes.map((node) => [node, index] as const)));
  const loose = model.nodes.filter((node) => !padOf.has(node.id));
  const names = [...model.pads.map((pad) => pad.id), ...loose.map((node) => node.id)];
  const places = [
    ...model.pads.map((pad) => pad.at ?? place.get(pad.nodes[0] ?? '') ?? { x: 0, y: 0 }),
    ...loose.map(({ x, y }) => ({ x, y })),
  ];
  const ofNode = new Map(padOf);
  loose.forEach((node, index) => ofNode.set(node.id, model.pads.length + index));
  return { names, places, ofNode };
}

/**
 * Where a pad, or a node of no pad, is moved and told of, as printed.
 *
 * @param model - a network [mm]
 * @param id - of a pad or free node of it [-]
 * @returns its reference point [mm]
 */
export function referencePoint(model: Pick<BeamModel, 'nodes' | 'pads'>, id: string): Point {
  const { names, places } = namedFrames(model);
  const place = places[names.indexOf(id)];
  if (!place) throw new RangeError(`there is no pad or free node “${id}”`);
  return place;
}

/**
 * Which movements of the frames are held, driven, tied and unknown.
 *
 * @param model - checked network [-]
 * @param places - reference points of all frames as printed [mm], middles of members last
 * @returns three entries by frame for everything that acts on it
 */
export function framesOf(model: BeamModel, places: readonly Point[]): Frames {
  const { names } = namedFrames(model);
  const count = places.length;
  const index = new Map(names.map((name, i) => [name, i] as const));
  const slot = (at: string, direction: number) => 3 * (index.get(at) ?? 0) + direction;
  const [rate, load] = [new Float64Array(3 * count), new Float64Array(3 * count)];
  const factor = new Float64Array(3 * count).fill(1);
  const unknown = new Int32Array(3 * count).fill(0);
  const follower = new Uint8Array(count);
  let drive = 0;
  const isKnown = new Uint8Array(3 * count);
  for (const support of model.supports) {
    DIRECTIONS.forEach((direction, d) => {
      if (support[direction] === true) isKnown[slot(support.at, d)] = 1;
    });
  }
  for (const motion of model.motions) {
    DIRECTIONS.forEach((direction, d) => {
      const amount = motion[direction];
      if (amount === undefined) return;
      isKnown[slot(motion.at, d)] = 1;
      rate[slot(motion.at, d)] = amount;
      if (drive === 0) drive = amount;
    });
  }
  for (const { at, x = 0, y = 0, moment = 0, follower: turns } of model.loads) {
    [x, y, moment].forEach((amount, d) => {
      load[slot(at, d)] = load[slot(at, d)]! + amount;
      if (drive === 0 && model.motions.length === 0) drive = amount;
    });
    if (turns === true) follower[index.get(at) ?? 0] = 1;
  }
  const shearModulus = model.modulus / (2 * (1 + model.poisson));
  const springs = model.springs
    .flatMap(({ at, to, x = 0, y = 0, turn = 0, twist = 0 }) =>
      [x, y, turn + twist * shearModulus].map((stiffness, d) => ({
        from: slot(at, d),
        to: to === undefined ? -1 : slot(to, d),
        stiffness,
      })),
    )
    .filter(({ stiffness }) => stiffness !== 0);
  const tied = new Map(
    model.ties.flatMap((tie) =>
      DIRECTIONS.flatMap((direction, d) => {
        const times = tie[direction];
        return times === undefined ? [] : [[slot(tie.at, d), { like: slot(tie.like, d), times }] as const];
      }),
    ),
  );
  let unknowns = 0;
  for (const frame of alongChains(model, names, count)) {
    for (let i = 3 * frame; i < 3 * frame + 3; i += 1) {
      if (isKnown[i] === 1) [unknown[i], factor[i]] = [-1, 0];
      else if (!tied.has(i)) unknown[i] = unknowns++;
    }
  }
  for (const [i, { like, times }] of tied) {
    unknown[i] = unknown[like]!;
    factor[i] = times * factor[like]!;
    rate[i] = times * rate[like]!;
  }
  return {
    names,
    named: names.length,
    count,
    home: Float64Array.from(places.flatMap(({ x, y }) => [x, y, 0])),
    rate,
    unknown,
    factor,
    unknowns,
    load,
    follower,
    springs,
    isMoved: model.motions.length > 0,
    hasFollower: follower.includes(1),
    drive,
  };
}

/**
 * All frames, each next to those it is joined to, beginning at an end of a chain: numbered so, the equations of a long
 * chain stay near the diagonal (after E. Cuthill and J. McKee 1969, from memory).
 */
function alongChains(model: BeamModel, names: readonly string[], count: number): readonly number[] {
  const { ofNode } = namedFrames(model);
  const index = new Map(names.map((name, i) => [name, i] as const));
  const joined: number[][] = Array.from({ length: count }, () => []);
  const join = (a: number, b: number) => {
    joined[a]?.push(b);
    joined[b]?.push(a);
  };
  model.members.forEach(({ from, to }, m) => {
    join(ofNode.get(from) ?? 0, names.length + m);
    join(names.length + m, ofNode.get(to) ?? 0);
  });
  for (const { at, to } of model.springs) if (to !== undefined) join(index.get(at) ?? 0, index.get(to) ?? 0);
  const order: number[] = [];
  const seen = new Uint8Array(count);
  const starts = [...joined.keys()].toSorted((a, b) => joined[a]!.length - joined[b]!.length);
  for (const start of starts) {
    if (seen[start] === 1) continue;
    seen[start] = 1;
    const queue = [start];
    for (const frame of queue) {
      order.push(frame);
      for (const next of joined[frame]!) {
        if (seen[next] === 1) continue;
        seen[next] = 1;
        queue.push(next);
      }
    }
  }
  return order;
}
