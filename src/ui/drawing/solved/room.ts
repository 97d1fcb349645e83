import type { Point } from '../../../core/geometry/outline.ts';
import type { ClearPaper } from '../clearPaper.ts';
import { grown, labelBox, type Box, type Label } from '../lettering.ts';
import { densified } from '../polygon.ts';

/** The sheet while words are being placed: clear of the joint wherever it goes, and clear of other words only. */
export interface Room {
  readonly paper: ClearPaper;
  readonly words: ClearPaper;
}

/** Clear paper round a word [px]. */
const MARGIN = 4;

export function isFree({ paper }: Room, box: Box, margin = MARGIN): boolean {
  return paper.isClear(grown(box, margin));
}

export function isFreeOfWords({ words }: Room, box: Box): boolean {
  return words.isClear(grown(box, MARGIN));
}

export function taken({ paper, words }: Room, box: Box): void {
  paper.inkBox(box);
  words.inkBox(box);
}

export function takenLine({ paper, words }: Room, points: readonly Point[]): void {
  const along = densified(points, 4);
  paper.ink(along);
  words.ink(along);
}

export function takenLabel(room: Room, label: Label): void {
  taken(room, labelBox(label));
}

/** Whether a line stays on clear paper, apart from its first `skip` px. */
export function isClearWay(paper: ClearPaper, from: Point, to: Point, skip = 0): boolean {
  return densified([from, to], 4).every(
    ({ x, y }) =>
      Math.hypot(x - from.x, y - from.y) < skip || paper.isClear({ x: x - 1, y: y - 1, width: 2, height: 2 }),
  );
}
