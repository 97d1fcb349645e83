/** A network made ready to be solved: its mesh, its frames, and the room that a solution works in. */
import type { BeamModel } from './model.ts';
import { KEPT } from './element.ts';
import { framesOf, namedFrames, type Frames } from './frames.ts';
import { halve, type Run } from './mesh.ts';
import { ruleOf, type Rule } from './rule.ts';

/** A state of the network: what is unknown, and what follows from it along every run. */
export interface State {
  share: number;
  readonly unknowns: Float64Array;
  readonly nodes: readonly Float64Array[];
  /** N, V, M carried at the points of every run. */
  readonly stress: readonly Float64Array[];
}

/** What elimination leaves of one run, for the way back. */
export interface RunRoom {
  readonly elements: readonly { readonly matrix: Float64Array; readonly force: Float64Array }[];
  readonly joins: readonly { readonly matrix: Float64Array; readonly force: Float64Array }[];
  readonly ends: { readonly matrix: Float64Array; readonly force: Float64Array };
  readonly kept: Float64Array;
  readonly step: Float64Array;
  readonly forces: Float64Array;
  negative: number;
}

export interface Network {
  readonly model: BeamModel;
  readonly rule: Rule;
  readonly runs: readonly Run[];
  readonly frames: Frames;
  readonly rooms: readonly RunRoom[];
  /** A length by which movements are weighed against turns [mm]: the longest member. */
  readonly scale: number;
  readonly lengths: readonly number[];
  /** Elements along each member. */
  readonly elements: readonly number[];
}

/** Degree of the polynomials; why this one is argued, with figures, in DEVELOPERS.md. */
export const DEGREE = 4;
const RULE = ruleOf(DEGREE);

/**
 * A checked network cut into elements.
 *
 * @param model - network that has passed `checkModel` [-]
 * @param elements - elements along each member [-], even, ≥ 2
 * @param rule - polynomials of an element; others than the usual ones are for comparing [-]
 * @returns the network ready to be solved
 */
export function prepare(model: BeamModel, elements: readonly number[], rule: Rule = RULE): Network {
  const { places, ofNode } = namedFrames(model);
  const hang = (node: string) => {
    const frame = ofNode.get(node) ?? 0;
    return { frame, at: places[frame] ?? { x: 0, y: 0 } };
  };
  const halved = model.members.map((member, index) => {
    const half = Math.max(1, Math.ceil((elements[index] ?? 2) / 2));
    return halve(model, index, rule, half, hang(member.from), hang(member.to), places.length + index);
  });
  const runs = halved.flatMap(({ runs: both }) => both);
  const frames = framesOf(model, [...places, ...halved.map(({ middle }) => middle)]);
  return {
    model,
    rule,
    runs,
    frames,
    rooms: runs.map((run) => roomFor(run, rule)),
    scale: Math.max(...halved.map(({ length }) => length)),
    lengths: halved.map(({ length }) => length),
    elements: halved.map(({ runs: [first] }) => 2 * first.elements),
  };
}

function square(side: number) {
  return { matrix: new Float64Array(side * side), force: new Float64Array(side) };
}

function roomFor(run: Run, { degree }: Rule): RunRoom {
  const size = 3 * (degree + 1);
  return {
    elements: Array.from({ length: run.elements }, () => square(size)),
    joins: Array.from({ length: run.elements - 1 }, () => square(9)),
    ends: square(6),
    kept: new Float64Array(KEPT * run.elements * degree),
    step: new Float64Array(3 * run.nodes),
    forces: new Float64Array(3 * run.nodes),
    negative: 0,
  };
}

/** The network as printed, at rest. */
export function restOf({ runs, frames, rule }: Network): State {
  return {
    share: 0,
    unknowns: new Float64Array(frames.unknowns),
    nodes: runs.map((run) => run.home.slice()),
    stress: runs.map((run) => new Float64Array(3 * run.elements * rule.degree)),
  };
}

/** A copy that can be changed without the other. */
export function copyOf({ share, unknowns, nodes, stress }: State): State {
  return {
    share,
    unknowns: unknowns.slice(),
    nodes: nodes.map((array) => array.slice()),
    stress: stress.map((array) => array.slice()),
  };
}

/** Where a frame's direction is in a state: place [mm] or turn [rad]. */
export function placeOf({ frames }: Network, state: State, slot: number): number {
  const unknown = frames.unknown[slot]!;
  const moved = frames.rate[slot]! * state.share + (unknown < 0 ? 0 : frames.factor[slot]! * state.unknowns[unknown]!);
  return frames.home[slot]! + moved;
}
