/** Numbers of strips and radii of corners, each in the first clear place beside what it tells of. */
import type { Piece, RoundCorner, Strip } from '../../../core/coupons/piece.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { along, distance, from } from '../../../core/geometry/vector.ts';
import { grown, letteringWidth, overlap, type Box } from '../../drawing/lettering.ts';
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
/** Letters keep so far from lines [px]. */
const CLEAR = 2;
/** Two of them keep so far apart that they do not read as one number [px]. */
const APART = 5;
/** Outlines are looked at every so many px. */
const STEP = 3;
/** Farther inside a block a radius would seem to belong to another corner [mm]. */
const DEEPEST = 19;

/** The room that one takes up [px]. */
export function letterBox({ text, x, y }: PieceLetter): Box {
  const width = letteringWidth(text, SIZE);
  return { x: x - width / 2, y: y - SIZE * 0.8, width, height: SIZE };
}

/** Points of all outlines, close enough together that no letter slips between two of them. */
function linePoints({ bodies }: Piece, paper: Paper): readonly Point[] {
  const loops = bodies.flatMap((body) => body.flatMap(({ region }) => region));
  return loops.flatMap((loop) => {
    const corners = loop.map((point) => onPaper(paper, point));
    return corners.flatMap((to, at) => {
      const start = corners.at(at - 1) ?? to;
      const parts = Math.max(1, Math.ceil(distance(start, to) / STEP));
      return Array.from({ length: parts }, (_, i) => along(start, from(start, to), i / parts));
    });
  });
}

const holds = ({ x, y, width, height }: Box, point: Point) =>
  point.x > x - CLEAR && point.x < x + width + CLEAR && point.y > y - CLEAR && point.y < y + height + CLEAR;

/** Beside the strip on either side, then past its ends. */
function stripSpots({ number, ...strip }: Strip, paper: Paper): readonly PieceLetter[] {
  const [a, b] = [onPaper(paper, strip.from), onPaper(paper, strip.to)];
  const half = ((strip.countOf === 'layers' ? strip.depth : strip.thickness) / 2) * paper.pxPerMm;
  const text = String(number);
  const long = distance(a, b);
  const way = long > 0 ? along({ x: 0, y: 0 }, from(a, b), 1 / long) : { x: 1, y: 0 };
  const side = { x: Math.abs(way.y), y: -Math.abs(way.x) };
  const beside = [7, 10].flatMap((off) =>
    [0.5, 0.3, 0.7].flatMap((share) =>
      [1, -1].map((sign) => along(along(a, from(a, b), share), side, sign * (half + off))),
    ),
  );
  const past = [12, 16, 20, 26, 32].flatMap((off) => [along(b, way, off), along(a, way, -off)]);
  return [...beside, ...past].map(({ x, y }) => ({ text, x, y: y + SIZE * 0.36 }));
}

/** On the line through the middle of the round: inwards as far as need be, then outwards. */
function cornerSpots({ radius, centre }: RoundCorner, lines: readonly Point[], paper: Paper): readonly PieceLetter[] {
  const round = onPaper(paper, centre);
  const reach = radius * paper.pxPerMm;
  const rim = lines.filter((point) => Math.abs(distance(point, round) - reach) < 0.4);
  const sum = rim.reduce((total, point) => along(total, from(round, point), 1), { x: 0, y: 0 });
  const long = Math.hypot(sum.x, sum.y);
  if (long < 1) return [];
  const middle = along(round, sum, reach / long);
  const text = radiusText(radius);
  const inwards = Array.from({ length: Math.floor((DEEPEST * paper.pxPerMm - 14) / 4) }, (_, i) => -14 - 4 * i);
  const across = letteringWidth(text, SIZE) / 2 + 6;
  const sideways = [
    { x: middle.x + Math.sign(sum.x) * across, y: middle.y },
    { x: middle.x, y: middle.y + Math.sign(sum.y) * 14 },
  ];
  const straight = [...inwards, 10, 14, 18, 22, 26].map((off) => along(middle, sum, off / long));
  return [...straight, ...sideways].map(({ x, y }) => ({ text, x, y: y + SIZE * 0.36 }));
}

/** What is lettered in a drawing of a piece; a number that finds no clear place is left out. */
export function pieceLetters(piece: Piece, paper: Paper): readonly PieceLetter[] {
  const lines = linePoints(piece, paper);
  // A single strip needs no number.
  const strips = piece.strips.length > 1 ? piece.strips : [];
  const wanted = [
    ...strips.map((strip) => stripSpots(strip, paper)),
    ...piece.corners.map((corner) => cornerSpots(corner, lines, paper)),
  ];
  const taken: Box[] = [];
  return wanted.flatMap((spots) => {
    const found = spots.find((spot) => {
      const box = letterBox(spot);
      return !taken.some((other) => overlap(grown(box, APART), other)) && !lines.some((point) => holds(box, point));
    });
    if (found) taken.push(letterBox(found));
    return found ?? [];
  });
}
