/** How deep one pad lies inside another. */
import type { Mm } from '../units.ts';
import type { GapPad } from './gapPads.ts';
import { clearOf, lengthOf, newMeeting, type Meeting, type Strand } from './strand.ts';

/** The corner that lies deepest inside the other pad, and the place on its edge that is nearest: a gap below 0. */
export interface Depth {
  readonly edgeA: Strand;
  readonly edgeB: Strand;
  readonly meeting: Meeting;
}

/**
 * The deepest that a corner of either pad lies inside the other. Where edges do not cross, one corner of each outline
 * tells of all.
 *
 * @param a - a pad in a state [mm]
 * @param b - another [mm]
 * @param doCross - whether edges of one cross those of the other [-]
 * @returns the corner and the nearest edge, with a gap below 0 [mm]; undefined where no corner lies inside
 */
export function depthBetween(a: GapPad, b: GapPad, doCross: boolean): Depth | undefined {
  if (clearOf(a.round, b.round) >= 0) return undefined;
  const [ofA, ofB] = [deepest(a, b, doCross), deepest(b, a, doCross)];
  if (ofA && !(ofB && ofB.meeting.gap < ofA.meeting.gap)) return ofA;
  return ofB && { edgeA: ofB.edgeB, edgeB: ofB.edgeA, meeting: swapped(ofB.meeting) };
}

function swapped({ gap, i, u, j, v, ax, ay, bx, by }: Meeting): Meeting {
  return { gap, i: j, u: v, j: i, v: u, ax: bx, ay: by, bx: ax, by: ay };
}

function deepest(a: GapPad, b: GapPad, doCross: boolean): Depth | undefined {
  let found: Depth | undefined;
  for (const edgeA of a.edges) {
    if (!doCross && !isIn(edgeA, 0, b)) continue;
    for (let i = 0; i < edgeA.count; i += 1) {
      const depth = isIn(edgeA, i, b) ? toEdge(edgeA, i, b) : undefined;
      if (depth && !(found && found.meeting.gap <= depth.meeting.gap)) found = depth;
    }
  }
  return found;
}

function isIn({ x, y }: Strand, i: number, { round, holds }: GapPad): boolean {
  const place = { x: x[i]!, y: y[i]! };
  return lengthOf(place.x - round.x, place.y - round.y) <= round.radius && holds(place);
}

/** From a corner inside a pad to the nearest chord of its edges. */
function toEdge(edgeA: Strand, i: number, { edges }: GapPad): Depth | undefined {
  const [ax, ay] = [edgeA.x[i]!, edgeA.y[i]!];
  let [least, edgeB] = [Infinity, edges[0]];
  const meeting = newMeeting();
  for (const edge of edges) {
    for (let j = 0; j < edge.count; j += 1) {
      const [dx, dy] = [edge.x[j + 1]! - edge.x[j]!, edge.y[j + 1]! - edge.y[j]!];
      const along = (dx * (ax - edge.x[j]!) + dy * (ay - edge.y[j]!)) / (dx * dx + dy * dy);
      const v = along > 0 ? Math.min(1, along) : 0;
      const [bx, by] = [edge.x[j]! + v * dx, edge.y[j]! + v * dy];
      const away: Mm = lengthOf(bx - ax, by - ay);
      if (away >= least) continue;
      [least, edgeB] = [away, edge];
      Object.assign(meeting, { gap: -away, i, u: 0, j, v, ax, ay, bx, by });
    }
  }
  return edgeB && least < Infinity ? { edgeA, edgeB, meeting } : undefined;
}
