import type { Point } from '../../core/geometry/outline.ts';
import type { ClearPaper } from './clearPaper.ts';
import { grown, labelBox, type Box, type Label } from './lettering.ts';
import { densified } from './polygon.ts';

/** The sheet while words are being placed. */
export interface Room {
  /** Clear of the joint wherever it goes. */
  readonly paper: ClearPaper;
  /** Clear of words and handles only: for lines that may cross the joint but no lettering. */
  readonly words: ClearPaper;
  /** Clear of the joint at rest only, where words move along with it. */
  readonly rest?: ClearPaper;
  /** Words that stand already, which lines must not hit however much else they may cross. */
  readonly figures?: Box[];
}

/** Clear paper round a word [px]. */
export const MARGIN = 4;

function papersOf({ paper, words, rest }: Room): readonly ClearPaper[] {
  return rest ? [paper, words, rest] : [paper, words];
}

export function isFree({ paper }: Room, box: Box, margin = MARGIN): boolean {
  return paper.isClear(grown(box, margin));
}

export function isFreeOfWords({ words }: Room, box: Box): boolean {
  return words.isClear(grown(box, MARGIN));
}

/** Keeps a place clear from now on. */
export function keep(room: Room, box: Box): void {
  for (const paper of papersOf(room)) paper.inkBox(box);
}

export function keepLabel(room: Room, label: Label): void {
  keep(room, labelBox(label));
  room.figures?.push(labelBox(label));
}

/** Whether a line between two places runs through words. */
export function hitsFigure({ figures = [] }: Room, from: Point, to: Point): boolean {
  const points = densified([from, to], 2);
  return figures.some((box) =>
    points.some(({ x, y }) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height),
  );
}

/** Keeps words off a line through these points from now on. */
export function keepLine(room: Room, points: readonly Point[]): void {
  const along = densified(points, 4);
  for (const paper of papersOf(room)) paper.ink(along);
}

/** Whether a line stays on clear paper, apart from its first `skip` px. */
export function isClearWay(paper: ClearPaper, from: Point, to: Point, skip = 0): boolean {
  return densified([from, to], 4).every(
    ({ x, y }) =>
      Math.hypot(x - from.x, y - from.y) < skip || paper.isClear({ x: x - 1, y: y - 1, width: 2, height: 2 }),
  );
}
