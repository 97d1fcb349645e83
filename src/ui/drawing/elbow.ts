import type { Point } from '../../core/geometry/outline.ts';
import { labelBox, type Box, type Label } from './lettering.ts';
import { boxAround, leader, type Marks } from './marks.ts';
import { isFree, isFreeOfWords, keep, keepLabel, keepLine, type Room } from './room.ts';

/** A leader that has found its place, with the elbow where it may be held [px]. */
export interface PlacedLeader {
  readonly marks: Marks;
  readonly elbow: Point;
  /** Way out from the tip. */
  readonly out: Point;
}

/** Length of a landing without a handle [px]. */
const LANDING = 8;

/**
 * Words beside the elbow of a leader, on the side it leans to if they can stand there, with a handle of so much reach
 * on the elbow itself; nothing where there is no clear paper.
 */
export function besideElbow(
  room: Room,
  { tip, elbow, out }: { readonly tip: Point; readonly elbow: Point; readonly out: Point },
  text: string,
  reach: number,
  isBarred: (words: Box) => boolean = () => false,
): PlacedLeader | undefined {
  for (const side of out.x >= 0 ? [1, -1] : [-1, 1]) {
    const landing = reach > 0 ? reach : LANDING;
    const label: Label = {
      text,
      x: elbow.x + side * (landing + 4),
      y: elbow.y + 5,
      anchor: side > 0 ? 'start' : 'end',
      tone: 'pencil',
      size: 13,
    };
    if (isBarred(labelBox(label))) continue;
    if (!isFree(room, labelBox(label)) || !isFreeOfWords(room, labelBox(label))) continue;
    // A handle has clear paper of its own; a bare elbow may stand on the joint, but not on words.
    if (reach > 0 ? !isFree(room, boxAround(elbow, reach), 0) : !isFreeOfWords(room, boxAround(elbow, 0))) continue;
    keepLabel(room, label);
    keepLine(room, [tip, elbow]);
    if (reach > 0) keep(room, boxAround(elbow, reach));
    return { marks: leader(tip, elbow, side * landing, label), elbow, out };
  }
  return undefined;
}
