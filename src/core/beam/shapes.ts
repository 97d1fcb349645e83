/** Middle lines and surface strains of all members in one state. */
import type { MemberShape, Peak } from './answer.ts';
import type { Run } from './mesh.ts';
import type { Network, State } from './network.ts';

/** Stretch of the middle line and bending strain of the surface at every node of a run. */
interface NodeStrains {
  readonly stretch: Float64Array;
  readonly bending: Float64Array;
}

/**
 * Strains at the nodes by equilibrium: the force in a run is the same all along and the moment follows from where its
 * nodes are, which is far more exact than the slopes of the polynomials at their ends.
 */
function nodeStrains(network: Network, r: number, nodes: Float64Array, forces: Float64Array): NodeStrains {
  const run = network.runs[r]!;
  const [fx, fy, m0] = [-forces[0]!, -forces[1]!, -forces[2]!];
  const [stretch, bending] = [new Float64Array(run.nodes), new Float64Array(run.nodes)];
  for (let i = 0; i < run.nodes; i += 1) {
    const [x, y, angle] = [nodes[3 * i]!, nodes[3 * i + 1]!, nodes[3 * i + 2]!];
    const moment = m0 - ((x - nodes[0]!) * fy - (y - nodes[1]!) * fx);
    stretch[i] = (Math.cos(angle) * fx + Math.sin(angle) * fy) / run.nodeAxial[i]!;
    bending[i] = ((moment / run.nodeBending[i]!) * run.nodeThickness[i]!) / 2;
  }
  return { stretch, bending };
}

/** What the peaks of a state are: the largest anywhere, within members, and at their ends. */
export interface Peaks {
  readonly peak: Peak;
  readonly within: number;
  readonly atEnds: number;
}

/**
 * The largest surface strain anywhere; between nodes by a parabola through the nodes round the largest.
 *
 * @param network - the network, its rooms holding the forces of this state (`forcesOf`) [-]
 * @param state - the state [-]
 * @returns strains as fractions [-], places along the members [mm]
 */
export function peaksOf(network: Network, state: State): Peaks {
  let peak: Peak = { strain: 0, member: network.model.members[0]?.id ?? '', along: 0, side: 'left', atEnd: true };
  let [within, atEnds] = [0, 0];
  network.runs.forEach((run, r) => {
    const strains = nodeStrains(network, r, state.nodes[r]!, network.rooms[r]!.forces);
    const [first, last] = rootsOf(network, run);
    for (const side of SIDES) {
      for (let i = 0; i < run.nodes; i += 1) {
        const strain = isCrest(strains, i, side) ? crest(run, strains, i, side).strain : strainAt(strains, i, side);
        const size = Math.abs(strain);
        const isEnd = i === first || i === last;
        if (isEnd) atEnds = Math.max(atEnds, size);
        else within = Math.max(within, size);
        if (size > Math.abs(peak.strain)) {
          const along = isCrest(strains, i, side) ? crest(run, strains, i, side).along : run.along[i]!;
          peak = { strain, member: network.model.members[run.member]!.id, along, side, atEnd: isEnd };
        }
      }
    }
  });
  return { peak, within, atEnds };
}

/**
 * Which of a run's nodes are roots: ends that grow out of a pad, or out of a node that is kept from turning. Members
 * that meet in a free node have no root there.
 */
function rootsOf({ model, frames }: Network, run: Run): readonly [number, number] {
  const isRoot = (end: 0 | 1) => {
    const { frame, hinged } = run.ends[end];
    return !hinged && (frame < model.pads.length || frames.unknown[3 * frame + 2]! < 0);
  };
  return [isRoot(0) ? 0 : -1, isRoot(1) ? run.nodes - 1 : -1];
}

const SIDES = ['left', 'right'] as const;
type Side = (typeof SIDES)[number];

function strainAt({ stretch, bending }: NodeStrains, i: number, side: Side): number {
  return side === 'left' ? stretch[i]! - bending[i]! : stretch[i]! + bending[i]!;
}

/** Whether a node between the ends of a run is strained more than both its neighbours. */
function isCrest(strains: NodeStrains, i: number, side: Side): boolean {
  if (i === 0 || i === strains.stretch.length - 1) return false;
  const size = Math.abs(strainAt(strains, i, side));
  return size > Math.abs(strainAt(strains, i - 1, side)) && size > Math.abs(strainAt(strains, i + 1, side));
}

/** The crest of the parabola through a node and its neighbours. */
function crest(run: Run, strains: NodeStrains, i: number, side: Side) {
  const [a, b, c] = [strainAt(strains, i - 1, side), strainAt(strains, i, side), strainAt(strains, i + 1, side)];
  const here = run.along[i]!;
  const [p, q] = [run.along[i - 1]! - here, run.along[i + 1]! - here];
  const slope = ((a - b) / p - (c - b) / q) / (p - q);
  const lean = (a - b) / p - slope * p;
  if (!(Math.abs(slope) > 0)) return { strain: b, along: here };
  const s = -lean / (2 * slope);
  return { strain: b + lean * s + slope * s * s, along: here + s };
}

/**
 * The middle line of every member with its surface strains.
 *
 * @param network - the network, its rooms holding the forces of this state (`forcesOf`) [-]
 * @param state - the state [-]
 * @returns by member: places [mm], direction [rad], thickness [mm], strains as fractions [-]
 */
export function shapesOf(network: Network, state: State): readonly MemberShape[] {
  return network.model.members.map((member, m) => {
    const halves = [2 * m, 2 * m + 1].map((r) => network.runs[r]!);
    // The node in the middle belongs to both halves and is told once.
    const count = halves.reduce((sum, run) => sum + run.nodes, -1);
    const shape = emptyShape(member.id, count);
    let at = 0;
    halves.forEach((run, half) => {
      const nodes = state.nodes[2 * m + half]!;
      const strains = nodeStrains(network, 2 * m + half, nodes, network.rooms[2 * m + half]!.forces);
      for (let i = half; i < run.nodes; i += 1, at += 1) fillIn(shape, at, run, nodes, strains, i);
    });
    return shape;
  });
}

function emptyShape(member: string, count: number): MemberShape {
  const array = () => new Float64Array(count);
  return {
    member,
    along: array(),
    x: array(),
    y: array(),
    angle: array(),
    thickness: array(),
    left: array(),
    right: array(),
  };
}

function fillIn(shape: MemberShape, at: number, run: Run, nodes: Float64Array, strains: NodeStrains, i: number): void {
  const [stretch, bending] = [strains.stretch[i]!, strains.bending[i]!];
  shape.along[at] = run.along[i]!;
  shape.x[at] = nodes[3 * i]!;
  shape.y[at] = nodes[3 * i + 1]!;
  shape.angle[at] = nodes[3 * i + 2]!;
  shape.thickness[at] = run.nodeThickness[i]!;
  shape.left[at] = stretch - bending;
  shape.right[at] = stretch + bending;
}
