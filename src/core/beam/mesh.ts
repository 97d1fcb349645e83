/** A network cut into elements: everything that stays the same while it is moved. */
import type { Point } from '../geometry/outline.ts';
import { centrelineOf } from './centreline.ts';
import { march, type Marched, type Pose3, type Stretch } from './march.ts';
import type { BeamModel } from './model.ts';
import type { Rule } from './rule.ts';
import { sectionStiffness } from './section.ts';

/**
 * A stretch of a member between two frames (pads, free nodes, or the joint in the middle of a member). Nodes are
 * numbered along it; every node has x, y and angle. Arrays by point: element·degree + point.
 */
export interface Run {
  readonly member: number;
  readonly elements: number;
  readonly nodes: number;
  /** Where in the member's parameter it lies, 0 to 1. */
  readonly from: number;
  readonly to: number;
  /** Frames at both ends, with the place of the end [mm] and its direction [rad] seen from the frame as printed. */
  readonly ends: readonly [RunEnd, RunEnd];
  /** x, y, angle of every node as printed. */
  readonly home: Float64Array;
  /** By point: length per ξ [mm], as-printed curvature [1/mm], stiffnesses, thickness [mm]. */
  readonly jacobian: Float64Array;
  readonly curvature: Float64Array;
  readonly axial: Float64Array;
  readonly shear: Float64Array;
  readonly bending: Float64Array;
  readonly thickness: Float64Array;
  /** By node: distance from the member's first node [mm] and thickness [mm], stiffnesses EA, EI there. */
  readonly along: Float64Array;
  readonly nodeThickness: Float64Array;
  readonly nodeAxial: Float64Array;
  readonly nodeBending: Float64Array;
}

export interface RunEnd {
  readonly frame: number;
  readonly offset: Point;
  /** Direction of the middle line there as printed [rad]. */
  readonly heading: number;
  readonly hinged: boolean;
}

/** Stiffness by point and by node of one run. */
function stiffen(stretch: Stretch, elements: number, from: number, to: number) {
  const { member, curve, model, rule } = stretch;
  const { degree } = rule;
  const half = (to - from) / (2 * elements);
  const at = (u: number) => {
    const thickness = curve.thickness(u);
    return {
      thickness,
      ...sectionStiffness(thickness, member.width, model.modulus, model.poisson, member.widthRatio ?? 1),
    };
  };
  const atPoints = Array.from({ length: elements * degree }, (_, i) => {
    const middle = from + half * (2 * Math.floor(i / degree) + 1);
    return at(middle + half * (rule.points[i % degree] ?? 0));
  });
  const atNodes = Array.from({ length: elements * degree + 1 }, (_, i) => {
    const element = Math.min(Math.floor(i / degree), elements - 1);
    return at(from + half * (2 * element + 1) + half * (rule.nodes[i - element * degree] ?? 0));
  });
  return {
    axial: Float64Array.from(atPoints, (s) => s.axial),
    shear: Float64Array.from(atPoints, (s) => s.shear),
    bending: Float64Array.from(atPoints, (s) => s.bending),
    thickness: Float64Array.from(atPoints, (s) => s.thickness),
    nodeThickness: Float64Array.from(atNodes, (s) => s.thickness),
    nodeAxial: Float64Array.from(atNodes, (s) => s.axial),
    nodeBending: Float64Array.from(atNodes, (s) => s.bending),
  };
}

function less(p: Point, q: Point): Point {
  return { x: p.x - q.x, y: p.y - q.y };
}

/** Where a member's ends hang: a frame, and where that frame's reference point lies as printed [mm]. */
export interface Hanger {
  readonly frame: number;
  readonly at: Point;
}

/** A member as two runs joined in its middle by a frame of its own, so that what its middle does can be told apart. */
export interface Halved {
  readonly runs: readonly [Run, Run];
  readonly middle: Point;
  readonly length: number;
}

/**
 * A member cut into two runs of equally many elements.
 *
 * @param model - checked network [-]
 * @param index - which member [-]
 * @param rule - polynomials of an element [-]
 * @param elements - elements in each half [-], ≥ 1
 * @param from - frame at its first node [-]
 * @param to - frame at its second node [-]
 * @param middle - number of the frame that joins the halves [-]
 * @returns both runs and where they meet as printed [mm]
 */
export function halve(
  model: BeamModel,
  index: number,
  rule: Rule,
  elements: number,
  from: Hanger,
  to: Hanger,
  middle: number,
): Halved {
  const member = model.members[index];
  const place = (id: string) => model.nodes.find((node) => node.id === id);
  const [start, end] = [place(member?.from ?? ''), place(member?.to ?? '')];
  if (!member || !start || !end) throw new RangeError(`member ${index} has no nodes`);
  const curve = centrelineOf(member, start, end);
  const stretch: Stretch = { member, index, curve, model, rule };
  const first = march(stretch, elements, 0, 0.5, [start.x, start.y, curve.heading], 0);
  const last = first.along.length - 1;
  const join: Pose3 = [first.home[3 * last] ?? 0, first.home[3 * last + 1] ?? 0, first.home[3 * last + 2] ?? 0];
  const second = march(stretch, elements, 0.5, 1, join, first.along[last] ?? 0);
  const meet = { x: join[0], y: join[1] };
  const tip = { x: second.home[3 * last] ?? 0, y: second.home[3 * last + 1] ?? 0 };
  const hinged = (end_: 'from' | 'to') => member.hinged === end_ || member.hinged === 'both';
  const inMiddle: RunEnd = { frame: middle, offset: { x: 0, y: 0 }, heading: join[2], hinged: false };
  const run = (half: Marched, u0: number, u1: number, ends: readonly [RunEnd, RunEnd]): Run => ({
    member: index,
    elements,
    nodes: elements * rule.degree + 1,
    from: u0,
    to: u1,
    ends,
    ...half,
    ...stiffen(stretch, elements, u0, u1),
  });
  return {
    runs: [
      run(first, 0, 0.5, [
        { frame: from.frame, offset: less(start, from.at), heading: curve.heading, hinged: hinged('from') },
        inMiddle,
      ]),
      run(second, 0.5, 1, [
        inMiddle,
        { frame: to.frame, offset: less(tip, to.at), heading: second.home[3 * last + 2] ?? 0, hinged: hinged('to') },
      ]),
    ],
    middle: meet,
    length: second.along[last] ?? 0,
  };
}
