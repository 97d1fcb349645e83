import type { Pose } from '../../../core/beam/answer.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Solved } from '../../../core/design/solved.ts';
import { flatten } from '../../../core/geometry/flatten.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import type { Mm } from '../../../core/units.ts';
import { stretches } from '../polygon.ts';
import { stateAt, type StateNow } from './state.ts';

/** A pad in one plane, as printed. */
export interface ScenePad {
  readonly id: string;
  readonly plane: number;
  /** Closed outlines as points [mm], their starts not repeated; holes run the other way. */
  readonly loops: readonly (readonly Point[])[];
  readonly moves: boolean;
  readonly printed: Pose;
}

/** A member as it is drawn. */
export interface SceneMember {
  readonly id: string;
  readonly plane: number;
  /** False for one that lies inside a pad: it stands for something out of sight. */
  readonly isSeen: boolean;
  /** Ends that grow out of a pad, where a fillet concentrates strain. */
  readonly roots: readonly [boolean, boolean];
}

/** What there is to draw of a joint whose states are known, by the solver or by a closed form, in its own coordinates [mm]. */
export interface Posed {
  readonly a: Assessment;
  readonly pads: readonly ScenePad[];
  readonly members: readonly SceneMember[];
  readonly rest: StateNow;
}

/** The same of a solved joint. */
export interface Scene extends Posed {
  readonly solved: Solved;
}

/** How far a chord may lie from its arc [mm]. */
const TOLERANCE: Mm = 0.004;
/** A pad that moves by less than this stays [mm], [rad]. */
const STILL = 1e-6;

export function sceneOf(a: Assessment, solved: Solved): Scene {
  const rest = stateAt(solved, 0);
  const states = [...solved.forward.points, ...(solved.back?.points ?? [])];
  const { model, bodies } = solved.network;
  const pads = bodies.map(({ pad, outlines, plane = 0 }): ScenePad => {
    const printed = rest.poses[pad] ?? { x: 0, y: 0, turn: 0 };
    const moves = states.some(({ poses }) => {
      const now = poses[pad] ?? printed;
      return Math.hypot(now.x - printed.x, now.y - printed.y) + Math.abs(now.turn - printed.turn) > STILL;
    });
    return { id: pad, plane, loops: outlines.map((path) => flatten(path, TOLERANCE).slice(0, -1)), moves, printed };
  });
  const onPad = new Set(model.pads.flatMap(({ nodes }) => nodes));
  const members = model.members.map(({ id, from, to, hinged, plane = 0 }, i): SceneMember => {
    const { x, y } = rest.shapes[i] ?? { x: [], y: [] };
    const middle = Math.floor(x.length / 2);
    const at = { x: x[middle] ?? 0, y: y[middle] ?? 0 };
    return {
      id,
      plane,
      isSeen: !pads.some((pad) => pad.plane === plane && isInside(pad.loops, at)),
      roots: [
        onPad.has(from) && hinged !== 'from' && hinged !== 'both',
        onPad.has(to) && hinged !== 'to' && hinged !== 'both',
      ],
    };
  });
  return { a, solved, pads, members, rest };
}

/** Inside an odd number of outlines: in a pad and in none of its holes. */
export function isInside(loops: ScenePad['loops'], { x, y }: Point): boolean {
  const around = loops.filter((loop) => stretches(loop, 'y', y).some(([from, to]) => x > from && x < to));
  return around.length % 2 === 1;
}

/** Where a point of a pad has gone. */
export function carried({ printed }: ScenePad, now: Pose, { x, y }: Point): Point {
  const turn = now.turn - printed.turn;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [dx, dy] = [x - printed.x, y - printed.y];
  return { x: now.x + c * dx - s * dy, y: now.y + s * dx + c * dy };
}

/** Where a pad is in a state. */
export function poseIn({ id, printed }: ScenePad, state: StateNow): Pose {
  return state.poses[id] ?? printed;
}
