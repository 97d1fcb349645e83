/** Words with a leader on clear paper beside what they are about [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { grown, labelBox, type Box, type Label } from '../../drawing/lettering.ts';
import { NO_MARKS, type Marks } from '../../drawing/marks.ts';
import { hitsFigure, isClearWay, isFree, keep, keepLine, MARGIN, type Room } from '../../drawing/room.ts';
import { through } from '../../drawing/sheet.ts';
import type { Wordings } from '../../text/toolpathFigureText.ts';

export interface Words {
  /** What they are about, and how far round it the leader begins. */
  readonly tip: Point;
  readonly clear: number;
  /** The fullest first. */
  readonly texts: Wordings;
  readonly tone: Label['tone'];
  /** Whether the barred square stands before them. */
  readonly isFailed: boolean;
}

export interface PlacedWords {
  readonly marks: Marks;
  /** Middle of the barred square. */
  readonly square: Point | undefined;
}

/** Level end of a leader, room of the barred square, and both before the words [px]. */
const LANDING = 8;
const SQUARE = 17;
const GAP = 4;
/** How far the elbow may be beside the tip, nearest first; up and down it goes as far as there is paper. */
const BESIDE = [16, 30, 50, 80, 120, 170, 230, 300, 400];
const STEP = 6;
const FARTHEST = 200;

interface Try {
  readonly elbow: Point;
  readonly side: 1 | -1;
  readonly cost: number;
}

/** Elbows in the order in which they are wished for: near, rather above than below, rather to the right. */
function triesFor({ tip, clear }: Words): readonly Try[] {
  const tries: Try[] = [];
  for (let up = clear + 8; up <= FARTHEST; up += STEP)
    for (const way of [-1, 1])
      for (const beside of BESIDE)
        for (const lean of [1, -1])
          for (const side of [1, -1] as const) {
            const elbow = { x: tip.x + lean * beside, y: tip.y + way * up };
            const cost = up + 0.6 * beside + (way > 0 ? 8 : 0) + (lean < 0 ? 4 : 0) + (side === lean ? 0 : 30);
            tries.push({ elbow, side, cost });
          }
  return tries.toSorted((a, b) => a.cost - b.cost);
}

function labelOf(text: string, { elbow, side }: Try, { tone, isFailed }: Words): Label {
  // The square stands between the leader and the words.
  const lead = LANDING + GAP + (isFailed ? SQUARE : 0);
  return { text, x: elbow.x + side * lead, y: elbow.y + 4.5, anchor: side > 0 ? 'start' : 'end', tone, size: 13 };
}

/** The room of the words with their square. */
function boxOf(label: Label, isFailed: boolean): Box {
  const box = labelBox(label);
  if (!isFailed) return box;
  const left = label.anchor === 'start' ? box.x - SQUARE : box.x;
  return { x: left, y: box.y - 2, width: box.width + SQUARE, height: box.height + 4 };
}

function leaderOf({ tip, clear }: Words, { elbow, side }: Try): readonly Point[] {
  const long = Math.hypot(elbow.x - tip.x, elbow.y - tip.y) || 1;
  const start = {
    x: tip.x + (clear * (elbow.x - tip.x)) / long,
    y: tip.y + (clear * (elbow.y - tip.y)) / long,
  };
  return [start, elbow, { x: elbow.x + side * LANDING, y: elbow.y }];
}

/** Whether words are clear, and their leader of all other words, once it has left what it is about. */
function fitsAt(room: Room, box: Box, line: readonly Point[], clear: number): boolean {
  if (!isFree(room, box) || !room.words.isClear(grown(box, MARGIN))) return false;
  const [start, elbow, end] = line;
  if (!start || !elbow || !end || hitsFigure(room, start, elbow) || hitsFigure(room, elbow, end)) return false;
  return isClearWay(room.words, start, elbow, clear + 2) && isClearWay(room.words, elbow, end);
}

function squareOf({ x, y, anchor }: Label): Point {
  return { x: x + (anchor === 'start' ? -1 : 1) * (SQUARE / 2 + 1.5), y: y - 4.5 };
}

interface Found {
  readonly label: Label;
  readonly box: Box;
  readonly line: readonly Point[];
  readonly cost: number;
}

/** The nearest place at which a text is clear. */
function nearest(room: Room, words: Words, text: string, tries: readonly Try[]): Found | undefined {
  for (const one of tries) {
    const label = labelOf(text, one, words);
    const box = boxOf(label, words.isFailed);
    const line = leaderOf(words, one);
    if (fitsAt(room, box, line, words.clear)) return { label, box, line, cost: one.cost };
  }
  return undefined;
}

/** Fewer words are taken where the fuller ones would stand this much farther off [px]. */
const WORTH = 90;

/** Places words and keeps their room; nothing where even the shortest find none. */
export function placeWords(room: Room, words: Words): PlacedWords | undefined {
  const tries = triesFor(words);
  const found = words.texts.flatMap((text, i) => {
    const one = nearest(room, words, text, tries);
    return one ? [{ ...one, cost: one.cost + WORTH * i }] : [];
  });
  const best = found.toSorted((a, b) => a.cost - b.cost)[0];
  if (!best) return undefined;
  const { label, box, line } = best;
  keep(room, box);
  room.figures?.push(box);
  keepLine(room, line);
  return {
    marks: { ...NO_MARKS, lines: through(line), labels: [label] },
    square: words.isFailed ? squareOf(label) : undefined,
  };
}

/** Words without a leader at the first of some places that is clear, and so much round it. */
export function placeLabel(room: Room, labels: readonly Label[], margin = MARGIN): Label | undefined {
  const found = labels.find(
    (label) => isFree(room, labelBox(label), margin) && room.words.isClear(grown(labelBox(label), margin)),
  );
  if (!found) return undefined;
  keep(room, labelBox(found));
  room.figures?.push(labelBox(found));
  return found;
}
