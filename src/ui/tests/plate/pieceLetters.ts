/** Numbers of strips and radii of corners beside them, as they are lettered in a drawing of a piece. */
import type { Piece, Strip } from '../../../core/coupons/piece.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { along, distance, from } from '../../../core/geometry/vector.ts';
import { letteringWidth, type Box } from '../../drawing/lettering.ts';
import { radiusText } from '../../text/pieceText.ts';

export interface PieceLetter {
  readonly text: string;
  /** Middle of its baseline [px]. */
  readonly x: number;
  readonly y: number;
}

/** From the piece [mm, y up] to the paper [px, y down]. */
export interface Paper {
  readonly pxPerMm: number;
  /** Where the least corner of the piece lies on the paper [px]. */
  readonly at: Point;
}

export function onPaper({ pxPerMm, at }: Paper, { x, y }: Point): Point {
  return { x: at.x + x * pxPerMm, y: at.y - y * pxPerMm };
}

const SIZE = 12;
/** Closer together than this their numbers would run into one another [px]. */
const CLOSEST = 15;
/** Between what is lettered and its number [px]. */
const GAP = 4;

const halfWay = (a: Point, b: Point) => along(a, from(a, b), 0.5);

/** How far a strip reaches to either side of its middle line, seen from above [mm]. */
function reach({ countOf, depth, thickness }: Strip): number {
  return (countOf === 'layers' ? depth : thickness) / 2;
}

function stripLetter(strip: Strip, paper: Paper): PieceLetter {
  const [root, to] = [onPaper(paper, strip.from), onPaper(paper, strip.to)];
  const middle = halfWay(root, to);
  const off = reach(strip) * paper.pxPerMm + GAP;
  const text = String(strip.number);
  const isUpright = Math.abs(to.y - root.y) > Math.abs(to.x - root.x);
  return isUpright
    ? { text, x: middle.x + off + letteringWidth(text, SIZE) / 2, y: middle.y + SIZE * 0.36 }
    : { text, x: middle.x, y: middle.y - off };
}

function areApart(strips: readonly Strip[], { pxPerMm }: Paper): boolean {
  const middles = strips.map((strip) => halfWay(strip.from, strip.to));
  return middles.every((a, i) => middles.slice(i + 1).every((b) => distance(a, b) * pxPerMm >= CLOSEST));
}

/** Inside the round, on the way to the middle of the piece. */
function cornerLetters({ corners, size }: Piece, paper: Paper): PieceLetter[] {
  const middle = onPaper(paper, { x: size.x / 2, y: size.y / 2 });
  return corners.map(({ radius, centre }) => {
    const round = onPaper(paper, centre);
    // A small round has its centre too near the edge for letters.
    const far = Math.max(distance(round, middle), 1);
    const { x, y } = along(
      round,
      from(round, middle),
      Math.min(1, Math.max(0, 26 - radius * paper.pxPerMm * 0.3) / far),
    );
    return { text: radiusText(radius), x, y: y + SIZE * 0.36 };
  });
}

export function pieceLetters(piece: Piece, paper: Paper): readonly PieceLetter[] {
  const strips = areApart(piece.strips, paper) ? piece.strips.map((strip) => stripLetter(strip, paper)) : [];
  return [...strips, ...cornerLetters(piece, paper)];
}

/** The room that one takes up [px]. */
export function letterBox({ text, x, y }: PieceLetter): Box {
  const width = letteringWidth(text, SIZE);
  return { x: x - width / 2, y: y - SIZE * 0.8, width, height: SIZE };
}
