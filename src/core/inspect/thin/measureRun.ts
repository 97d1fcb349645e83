/** Sizes of one thin run in the plane of its section. */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import { along, cross, distance, dot, from, left } from '../../geometry/vector.ts';
import type { Boundary } from './boundary.ts';
import type { Chord } from './chords.ts';
import type { Run, RunEnd } from './regions.ts';
import { wallEnd, type WallEnd } from './wallEnd.ts';

/** Ways across no wider than this times the least are the thin middle of a run, from which its direction is read. */
const MIDDLE = 1.1;
/** … or this, where a run tapers so that the middle alone would be less than half of it. */
const TAPERED = 1.6;
/** Over so many widths the direction at an end is read. */
const READ_OVER = 2.5;
/** Ends of the two walls that are farther apart along the run than this many widths are not averaged. */
const SQUARE_ENDS = 1.5;
/** How far a wall is followed past the thin middle, in widths. */
const REACH = 60;
/** Stations at which the thickness is taken along a run. */
const STATIONS = 96;

export interface MeasuredRun {
  readonly run: Run;
  readonly least: Mm;
  readonly mean: Mm;
  readonly length: Mm;
  readonly bendingLength: Mm;
  readonly centreLine: readonly Point[];
  readonly walls: readonly [readonly Point[], readonly Point[]];
  readonly ends: readonly [MeasuredEnd, MeasuredEnd];
}

export interface MeasuredEnd {
  readonly joins: RunEnd;
  readonly fillet: Mm;
  /** Outwards. */
  readonly direction: Point;
}

/** The chords that make the thin middle: from the first to the last that is narrow. */
function middleOf({ chords, least }: Run): readonly Chord[] {
  const between = (factor: number) => {
    const isThin = ({ width }: Chord) => width <= factor * least;
    const first = chords.findIndex(isThin);
    const last = chords.findLastIndex(isThin);
    return chords.slice(first, last + 1);
  };
  const narrow = between(MIDDLE);
  return 2 * narrow.length >= chords.length || spanOf(narrow) > 0.5 * spanOf(chords) ? narrow : between(TAPERED);
}

function spanOf(chords: readonly Chord[]): Mm {
  return lengthOfLine(chords.map(({ middle }) => middle));
}

export function lengthOfLine(points: readonly Point[]): Mm {
  let length = 0;
  for (let i = 1; i < points.length; i += 1) length += distance(points[i - 1]!, points[i]!);
  return length;
}

const pointOf = ({ x, y }: Boundary, vertex: number): Point => ({ x: x[vertex]!, y: y[vertex]! });

/** Direction in which a run leaves its last chord, of length 1. */
function outwards(boundary: Boundary, chords: readonly Chord[], width: Mm): Point {
  const last = chords.at(-1)!;
  const first = chords.findLastIndex(({ middle }) => distance(middle, last.middle) >= READ_OVER * width);
  const read = chords.slice(Math.max(0, first)).map(({ middle }) => middle);
  // Middles zigzag from wall to wall: halves are averaged before they are compared.
  const half = Math.floor(read.length / 2);
  const home = meanOf(read.slice(0, half));
  const out = meanOf(read.slice(read.length - half));
  const span = half > 0 ? distance(home, out) : 0;
  if (span > 0.15 * width) return { x: (out.x - home.x) / span, y: (out.y - home.y) / span };
  // Too short to tell: square to the way across, which has the left wall at its start.
  const square = left(from(pointOf(boundary, last.left), pointOf(boundary, last.right)));
  const length = Math.hypot(square.x, square.y);
  return { x: square.x / length, y: square.y / length };
}

function meanOf(points: readonly Point[]): Point {
  const sum = points.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

/** The chords as met on the way back. */
export function reversed(chords: readonly Chord[]): readonly Chord[] {
  return chords.toReversed().map((chord) => ({ ...chord, left: chord.right, right: chord.left }));
}

interface End {
  /** On the centre line, in the coordinates of the section. */
  readonly at: Point;
  readonly direction: Point;
  readonly fillet: Mm;
  readonly left: readonly Point[];
  readonly right: readonly Point[];
}

/** Where the run ends past the last of its middle chords. */
function endOf(
  boundary: Boundary,
  middle: readonly Chord[],
  width: Mm,
  joins: RunEnd,
  meeting: Point | undefined,
): End {
  const last = middle.at(-1)!;
  const direction = outwards(boundary, middle, width);
  const angle = Math.atan2(direction.y, direction.x);
  const reach = { length: REACH * width, steps: 400, width };
  const l = wallEnd(boundary, last.left, 'left', angle, reach);
  const r = wallEnd(boundary, last.right, 'right', angle, reach);
  const station = (end: WallEnd) => dot(from(last.middle, end.at), direction);
  const ends = [l, r].filter((end) => end !== undefined);
  const fillet = ends.length === 0 ? 0 : Math.min(...ends.map((end) => end.fillet));
  const at = along(last.middle, direction, Math.max(0, reachOf(ends, station, width)));
  const bend =
    joins.kind === 'meeting' && meeting
      ? along(last.middle, direction, dot(from(last.middle, meeting), direction))
      : at;
  const isWithin = (point: Point) => dot(from(at, point), direction) <= SQUARE_ENDS * width;
  const upTo = (points: readonly Point[] | undefined, vertex: number) => {
    const past = points?.findIndex((point) => !isWithin(point)) ?? -1;
    return past < 0 ? (points ?? [pointOf(boundary, vertex)]) : points!.slice(0, Math.max(1, past + 1));
  };
  return { at: bend, direction, fillet, left: upTo(l?.points, last.left), right: upTo(r?.points, last.right) };
}

/** How far past the last chord the run goes: to the nearer end of its walls, to the middle where they end alike. */
function reachOf(ends: readonly WallEnd[], station: (end: WallEnd) => number, width: Mm): number {
  const [a, b] = ends;
  if (!a) return 0;
  if (!b) return station(a);
  const [s, t] = [station(a), station(b)];
  const isAlike = a.fillet > 0 === b.fillet > 0 && Math.abs(s - t) < SQUARE_ENDS * width;
  return isAlike ? (s + t) / 2 : Math.min(s, t);
}

/** Where a ray from a point first meets a line of pieces; undefined where it does not. */
function hitOf(origin: Point, direction: Point, line: readonly Point[]): number | undefined {
  let best: number | undefined;
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const piece = from(a, line[i]!);
    const det = cross(direction, piece);
    if (det === 0) continue;
    const off = from(origin, a);
    const t = cross(off, piece) / det;
    const u = cross(off, direction) / det;
    if (t > 0 && u >= -1e-9 && u <= 1 + 1e-9 && (best === undefined || t < best)) best = t;
  }
  return best;
}

/** The point at a share of the length of a line, and its direction there. */
export function stationOn(line: readonly Point[], share: number): { readonly at: Point; readonly direction: Point } {
  let rest = share * lengthOfLine(line);
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const b = line[i]!;
    const length = distance(a, b);
    if (rest <= length || i === line.length - 1) {
      const part = length > 0 ? rest / length : 0;
      const direction = length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 1, y: 0 };
      return { at: along(a, from(a, b), part), direction };
    }
    rest -= length;
  }
  throw new RangeError('a line needs two points');
}

/** Thickness at stations along the centre line, square to it; where it meets no wall on one side, that of its neighbour. */
function thicknesses(
  line: readonly Point[],
  leftWall: readonly Point[],
  rightWall: readonly Point[],
  least: Mm,
): readonly Mm[] {
  const found: Mm[] = [];
  for (let i = 0; i < STATIONS; i += 1) {
    const { at, direction } = stationOn(line, (i + 0.5) / STATIONS);
    const square = left(direction);
    const l = hitOf(at, square, leftWall);
    const r = hitOf(at, { x: -square.x, y: -square.y }, rightWall);
    found.push(l !== undefined && r !== undefined ? l + r : (found.at(-1) ?? least));
  }
  return found;
}

/** Distance of a point from a line of pieces. */
function awayFrom(point: Point, line: readonly Point[]): Mm {
  let least = Infinity;
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const piece = from(a, line[i]!);
    const square = dot(piece, piece);
    const share = square > 0 ? Math.min(1, Math.max(0, dot(from(a, point), piece) / square)) : 0;
    least = Math.min(least, distance(point, along(a, piece, share)));
  }
  return line.length === 1 ? distance(point, line[0]!) : least;
}

/** Least distance between two walls that do not cross: one of the two places is a corner. */
function between(a: readonly Point[], b: readonly Point[]): Mm {
  let least = Infinity;
  for (const point of a) least = Math.min(least, awayFrom(point, b));
  for (const point of b) least = Math.min(least, awayFrom(point, a));
  return least;
}

/** Points of a line, without those that repeat the one before. */
function distinct(points: readonly Point[]): readonly Point[] {
  return points.filter((point, i) => i === 0 || distance(point, points[i - 1]!) > 1e-6);
}

/**
 * Measures a thin run.
 *
 * @param boundary - outlines of the section [mm]
 * @param run - a run found in it
 * @param meetingAt - the middle of a place where runs meet [mm]
 * @returns its sizes, undefined where it is so short that it has no direction
 */
export function measureRun(
  boundary: Boundary,
  run: Run,
  meetingAt: (end: RunEnd) => Point | undefined,
): MeasuredRun | undefined {
  const middle = middleOf(run);
  if (middle.length < 1) return undefined;
  const back = reversed(middle);
  const last = endOf(boundary, middle, run.least, run.ends[1], meetingAt(run.ends[1]));
  const first = endOf(boundary, back, run.least, run.ends[0], meetingAt(run.ends[0]));
  const centreLine = distinct([first.at, ...inner(middle, first, last), last.at]);
  if (centreLine.length < 2) return undefined;
  const wall = (side: 'left' | 'right'): readonly Point[] => {
    const out = side === 'left' ? last.left : last.right;
    const home = side === 'left' ? first.right : first.left;
    return distinct([...home.toReversed(), ...middle.map((chord) => pointOf(boundary, chord[side])), ...out]);
  };
  const walls = [wall('left'), wall('right')] as const;
  const least = Math.min(run.least, between(walls[0], walls[1]));
  const length = lengthOfLine(centreLine);
  const across = thicknesses(centreLine, walls[0], walls[1], least);
  const step = length / STATIONS;
  return {
    run,
    least,
    mean: across.reduce((sum, t) => sum + t, 0) / STATIONS,
    length,
    bendingLength: across.reduce((sum, t) => sum + (least / Math.max(t, least)) ** 3 * step, 0),
    centreLine,
    walls,
    ends: [
      { joins: run.ends[0], fillet: first.fillet, direction: first.direction },
      { joins: run.ends[1], fillet: last.fillet, direction: last.direction },
    ],
  };
}

/** Middles of the chords between the two ends, evened over neighbours: they zigzag from wall to wall. */
function inner(middle: readonly Chord[], first: End, last: End): readonly Point[] {
  const points = middle.map((chord) => chord.middle);
  const even = points.map((point, i) => {
    const next = points[i + 1];
    return next ? { x: (point.x + next.x) / 2, y: (point.y + next.y) / 2 } : point;
  });
  const isInside = (point: Point) =>
    dot(from(first.at, point), first.direction) < 0 || dot(from(last.at, point), last.direction) < 0;
  return even.slice(0, -1).filter(isInside);
}

/** The run as read from left to right, from the bottom up where it stands: which end comes first is chance. */
export function forwards(measured: MeasuredRun): MeasuredRun {
  const { centreLine, walls, ends, run } = measured;
  const a = centreLine[0]!;
  const b = centreLine.at(-1)!;
  const isForward = Math.abs(b.x - a.x) > 1e-3 * measured.length ? b.x > a.x : b.y > a.y;
  if (isForward) return measured;
  return {
    ...measured,
    run: {
      ...run,
      chords: reversed(run.chords),
      triangles: run.triangles.toReversed(),
      ends: [run.ends[1], run.ends[0]],
    },
    centreLine: centreLine.toReversed(),
    walls: [walls[1].toReversed(), walls[0].toReversed()],
    ends: [ends[1], ends[0]],
  };
}
