/** Leaves that roll to an arc, one or several in a row, as a scene: what the solver would say of them, in closed form and at once. */
import type { MemberShape, Pose } from '../../core/beam/answer.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { mechanicsOf } from '../../core/flexures/networks.ts';
import { flatten } from '../../core/geometry/flatten.ts';
import type { Mm } from '../../core/units.ts';
import type { Posed } from '../drawing/solved/scene.ts';
import type { StateNow } from '../drawing/solved/state.ts';

/** How far a chord may lie from its arc [mm]. */
const TOLERANCE: Mm = 0.004;
/** Samples along one leaf: arcs between them are drawn as cubics. */
const SAMPLES = 13;
/** Below this an arc is straight [rad]. */
const STRAIGHT = 1e-9;

/** One leaf of the row as printed, along x. */
interface Run {
  readonly member: string;
  readonly start: Mm;
  readonly end: Mm;
}

/** Where a point so far along an arc that begins at a pose has gone. */
function along(from: Pose, curvature: number, s: Mm): Pose {
  const turned = curvature * s;
  const [x, y] =
    Math.abs(turned) < STRAIGHT ? [s, 0] : [Math.sin(turned) / curvature, (2 * Math.sin(turned / 2) ** 2) / curvature];
  const [c, d] = [Math.cos(from.turn), Math.sin(from.turn)];
  return { x: from.x + c * x - d * y, y: from.y + d * x + c * y, turn: from.turn + turned };
}

function shapeOf({ member, start, end }: Run, from: Pose, curvature: number, thickness: Mm): MemberShape {
  const places = Float64Array.from({ length: SAMPLES }, (_, i) => ((end - start) * i) / (SAMPLES - 1));
  const poses = Array.from(places, (s) => along(from, curvature, s));
  const even = (value: number) => new Float64Array(SAMPLES).fill(value);
  return {
    member,
    along: places,
    x: Float64Array.from(poses, ({ x }) => x),
    y: Float64Array.from(poses, ({ y }) => y),
    angle: Float64Array.from(poses, ({ turn }) => turn),
    thickness: even(thickness),
    // The left side lies inside a bend to the left.
    left: even((-curvature * thickness) / 2),
    right: even((curvature * thickness) / 2),
  };
}

/** A joint that rolls to an arc, and its state at any share of its angle. */
export function rolled(a: Assessment): { readonly posed: Posed; readonly stateAt: (share: number) => StateNow } {
  const { amount } = a.joint.movement;
  const { thickness } = a.section;
  const asked = { drive: a.drive.id, amount, widthRatio: 1 };
  const { model, bodies } = mechanicsOf(a.joint.family).network(a.sizes, thickness, asked);
  const nodes = new Map(model.nodes.map((node) => [node.id, node] as const));
  const runs = model.members.map(({ id, from, to }): Run => ({
    member: id,
    start: nodes.get(from)?.x ?? 0,
    end: nodes.get(to)?.x ?? 0,
  }));
  const stateAt = (share: number) => stateOf(runs, a, share);
  const rest = stateAt(0);
  const pads = bodies.map(({ pad, outlines }, i) => ({
    id: pad,
    plane: 0,
    loops: outlines.map((path) => flatten(path, TOLERANCE).slice(0, -1)),
    moves: i > 0,
    printed: rest.poses[pad] ?? { x: 0, y: 0, turn: 0 },
  }));
  const members = runs.map(({ member }) => ({ id: member, plane: 0, isSeen: true, roots: [true, true] as const }));
  return { posed: { a, pads, members, rest }, stateAt };
}

function stateOf(runs: readonly Run[], a: Assessment, share: number): StateNow {
  const { amount } = a.joint.movement;
  const poses: Record<string, Pose> = { fixed: { x: 0, y: 0, turn: 0 } };
  const shapes: MemberShape[] = [];
  let from: Pose = { x: 0, y: 0, turn: 0 };
  for (const [i, run] of runs.entries()) {
    const length = run.end - run.start;
    const curvature = (amount * share) / runs.length / length;
    shapes.push(shapeOf(run, from, curvature, a.section.thickness));
    const end = along(from, curvature, length);
    const next = runs[i + 1];
    poses[next ? `between${i + 1}` : 'moving'] = end;
    if (next) from = along(end, 0, next.start - run.end);
  }
  const strain = a.strain.nominal * share;
  return { amount: amount * share, poses, shapes, within: strain, atRoots: strain, gap: undefined, near: [] };
}
