/** Sizes of one thin run in the plane of its section. */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import { along, distance, dot, from, left } from '../../geometry/vector.ts';
import type { Boundary } from './boundary.ts';
import { between, distinct, lengthOfLine, thicknesses } from './lines.ts';
import type { Chord } from './chords.ts';
import type { Run, RunEnd } from './regions.ts';
import { grooveEnd, wallEnd, type WallEnd } from './wallEnd.ts';

/** Ways across no wider than this times the least are the thin middle of a run, from which its direction is read. */
const MIDDLE = 1.1;
/** … or this, where a run tapers so that the middle alone would be less than half of it. */
const TAPERED = 1.6;
/** Over so many widths the direction at an end is read. */
const READ_OVER = 2.5;
/** Half of what is read must be so long, in its width, to tell a direction. */
const READABLE = 0.3;
/** Ends of the two walls that are farther apart along the run than this many widths are not averaged. */
const SQUARE_ENDS = 1.5;
/** How far a wall is followed past the thin middle, in widths. */
const REACH = 60;
/** What is shorter than this, in its thickness, is a groove: its length is told by where it is twice as thick. */
const NO_LENGTH = 0.8;

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
  const upTo = (factor: number) => {
    const isThin = ({ width }: Chord) => width <= factor * least;
    const first = chords.findIndex(isThin);
    const last = chords.findLastIndex(isThin);
    return chords.slice(first, last + 1);
  };
  const narrow = upTo(MIDDLE);
  return 2 * narrow.length >= chords.length || spanOf(narrow) > 0.5 * spanOf(chords) ? narrow : upTo(TAPERED);
}

function spanOf(chords: readonly Chord[]): Mm {
  return lengthOfLine(chords.map(({ middle }) => middle));
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
  if (span > READABLE * width) return { x: (out.x - home.x) / span, y: (out.y - home.y) / span };
  // Too short to tell: square to the narrowest way across, which has the left wall at its start.
  const narrowest = narrowestOf(chords);
  const square = left(from(pointOf(boundary, narrowest.left), pointOf(boundary, narrowest.right)));
  const length = Math.hypot(square.x, square.y);
  return { x: square.x / length, y: square.y / length };
}

function narrowestOf(chords: readonly Chord[]): Chord {
  return chords.reduce((best, chord) => (chord.width < best.width ? chord : best));
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

/** Where the run ends past the last of its middle chords, by the rule that finds the ends of its walls. */
function endOf(
  boundary: Boundary,
  middle: readonly Chord[],
  width: Mm,
  joins: RunEnd,
  meeting: Point | undefined,
  ruleOf: typeof wallEnd,
): End {
  const last = middle.at(-1)!;
  const direction = outwards(boundary, middle, width);
  const angle = Math.atan2(direction.y, direction.x);
  const reach = { length: REACH * width, steps: 400, width };
  const l = ruleOf(boundary, last.left, 'left', angle, reach);
  const r = ruleOf(boundary, last.right, 'right', angle, reach);
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

/**
 * Measures a thin run.
 *
 * @param boundary - outlines of the section [mm]
 * @param run - a run found in it [mm]
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
  const whole = measuredBy(boundary, run, middle, meetingAt, wallEnd);
  return whole && whole.length > NO_LENGTH * run.least
    ? whole
    : measuredBy(boundary, run, [narrowestOf(middle)], meetingAt, grooveEnd);
}

function measuredBy(
  boundary: Boundary,
  run: Run,
  middle: readonly Chord[],
  meetingAt: (end: RunEnd) => Point | undefined,
  ruleOf: typeof wallEnd,
): MeasuredRun | undefined {
  const [home, out] = run.ends;
  const last = endOf(boundary, middle, run.least, out, meetingAt(out), ruleOf);
  const first = endOf(boundary, reversed(middle), run.least, home, meetingAt(home), ruleOf);
  const centreLine = distinct([first.at, ...inner(middle, first, last), last.at]);
  if (centreLine.length < 2) return undefined;
  const wall = (side: 'left' | 'right'): readonly Point[] => {
    const on = side === 'left' ? last.left : last.right;
    const back = side === 'left' ? first.right : first.left;
    const passed = wallAlong(boundary, middle, side, run.least);
    return distinct([...back.toReversed(), ...passed.map((vertex) => pointOf(boundary, vertex)), ...on]);
  };
  const walls = [wall('left'), wall('right')] as const;
  const least = Math.min(run.least, between(walls[0], walls[1]));
  const length = lengthOfLine(centreLine);
  const across = thicknesses(centreLine, walls[0], walls[1], least);
  const step = length / across.length;
  return {
    run,
    least,
    mean: across.reduce((sum, t) => sum + t, 0) / across.length,
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

/**
 * Vertices of a wall along the middle of a run. Corners that no chord meets, such as the outer ones of a bend, are put in
 * between; what stands off the wall, such as a rib, is passed over.
 */
function wallAlong(boundary: Boundary, chords: readonly Chord[], side: 'left' | 'right', width: Mm): readonly number[] {
  const wall: number[] = [];
  for (const chord of chords) {
    const before = wall.at(-1);
    const vertex = chord[side];
    if (before === vertex) continue;
    if (before !== undefined) wall.push(...cornersBetween(boundary, before, vertex, side === 'right', 3 * width));
    wall.push(vertex);
  }
  return wall;
}

/** Vertices of the outline between two of it, none where the way is longer than that. */
function cornersBetween(
  boundary: Boundary,
  start: number,
  end: number,
  isForward: boolean,
  longest: Mm,
): readonly number[] {
  const passed: number[] = [];
  let edge = (isForward ? boundary.outOf : boundary.into)[start]!;
  let gone = 0;
  while (gone < longest) {
    gone += boundary.lengthOf(edge);
    const vertex = isForward ? boundary.to[edge]! : boundary.from[edge]!;
    if (vertex === end) return passed;
    passed.push(vertex);
    edge = isForward ? boundary.next[edge]! : boundary.previous[edge]!;
  }
  return [];
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
