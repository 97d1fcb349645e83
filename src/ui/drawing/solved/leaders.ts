import type { Point } from '../../../core/geometry/outline.ts';
import { along } from '../../../core/geometry/vector.ts';
import { besideElbow, type PlacedLeader } from '../elbow.ts';
import { isClearWay, type Room } from '../room.ts';

/** Lengths of a leader [px], and how far it may lean from square to the surface [rad]. */
const REACHES = [30, 42, 56, 74, 96, 124, 160, 204, 260, 330];
const LEANS = [0.4, -0.4, 0.75, -0.75, 0, 1.05, -1.05];
/** A leader leaves what it points at over so many px. */
const SKIP = 14;

/**
 * A leader to one of several places on surfaces, each with the way out of it; over clear paper if there is any such way,
 * else across whatever bears no words.
 */
export function placeLeader(
  room: Room,
  tips: readonly { readonly tip: Point; readonly out: Point }[],
  text: string,
  reach: number,
): PlacedLeader | undefined {
  for (const paper of [room.paper, room.words]) {
    for (const length of REACHES) {
      for (const { tip, out: square } of tips) {
        for (const lean of LEANS) {
          const out = turned(square, lean);
          const elbow = along(tip, out, length);
          if (!isClearWay(paper, tip, elbow, SKIP)) continue;
          const found = besideElbow(room, { tip, elbow, out }, text, reach);
          if (found) return found;
        }
      }
    }
  }
  return undefined;
}

function turned({ x, y }: Point, by: number): Point {
  const [c, s] = [Math.cos(by), Math.sin(by)];
  return { x: c * x - s * y, y: s * x + c * y };
}
