/**
 * Where a wall of a thin run ends and what it joins begins.
 *
 * The rule: a fillet counts to the flexure up to where it meets the pad, a bevel belongs to the pad. Going along the wall,
 * it ends at the first corner that turns away sharply; else where it has come to stand nearly across the run, which is the
 * end of a fillet; else where a straight piece leads well away from the run, which is a bevel. Two grooves that nearly meet
 * have no length by this rule: theirs goes to where the run is twice as thick.
 */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Boundary } from './boundary.ts';

/** A single corner that turns by more is sharp: the facets of a fillet turn by less, three of them a quarter turn. */
const SHARP = (32 * Math.PI) / 180;
/** So far off the run a wall counts as standing across it: what a fillet still gains along the run is then under 3 %. */
const ACROSS = (75 * Math.PI) / 180;
/** A straight piece this far off the run leads away from it, … */
const BEVEL = (12 * Math.PI) / 180;
/** … and is a bevel where it alone gains so many widths, unless it is one of a row of like pieces, which are an arc. */
const GAINS = 0.35;
const LIKE = 0.4;
/** A wall that has come away by so many widths in all, however slowly, is no longer part of the run. */
const AWAY = 1;
/** Walls turn by less through the facets of a curved leaf or through the noise of a file. */
const TURNING = (4 * Math.PI) / 180;

/** … and so many times as long as a facet is no facet. */
const STRAIGHT_PIECE = 2;
/** So far back an arc is looked for, in corners and places between them. */
const MOST_BACK = 200;

export interface WallEnd {
  readonly at: Point;
  /** Radius of the fillet before it; 0 where it is a sharp corner. */
  readonly fillet: Mm;
  /** Corners of the wall from where the march began to its end. */
  readonly points: readonly Point[];
}

/** A step along a wall: its direction relative to the run, positive away from it. */
interface Step {
  readonly from: number;
  readonly to: number;
  readonly length: Mm;
  readonly off: number;
}

/** Walks the corners of a wall, from a vertex on, in one sense round the outline. */
class Steps {
  readonly #boundary: Boundary;
  readonly #isForward: boolean;
  #edge: number;

  constructor(boundary: Boundary, vertex: number, isForward: boolean) {
    this.#boundary = boundary;
    this.#isForward = isForward;
    this.#edge = (isForward ? boundary.outOf : boundary.into)[vertex]!;
  }

  /** The next two vertices of the way. */
  next(): readonly [number, number] {
    const { from, to, next, previous } = this.#boundary;
    const edge = this.#edge;
    this.#edge = this.#isForward ? next[edge]! : previous[edge]!;
    return this.#isForward ? [from[edge]!, to[edge]!] : [to[edge]!, from[edge]!];
  }
}

/** Which way a wall turns when it turns away from the run. */
const AWAY_FROM = { left: 1, right: -1 } as const;

function placeOf({ x, y }: Boundary, vertex: number): Point {
  return { x: x[vertex]!, y: y[vertex]! };
}

/** Angle of b seen from a as zero, −π to π. */
function turnFrom(a: number, b: number): number {
  return Math.atan2(Math.sin(b - a), Math.cos(b - a));
}

/** Radius of the circle through three points; 0 where they lie on a line. */
function radiusThrough(a: Point, b: Point, c: Point): Mm {
  const area = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2;
  const sides = Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y) * Math.hypot(a.x - c.x, a.y - c.y);
  return area > 0 ? sides / (4 * area) : 0;
}

/** The corner at or after a vertex. */
function cornerFrom(boundary: Boundary, vertex: number, isForward: boolean): number {
  const steps = new Steps(boundary, vertex, isForward);
  let at = vertex;
  for (let guard = 0; boundary.isCorner[at] === 0 && guard < MOST_BACK; guard += 1) [, at] = steps.next();
  return at;
}

/** Corners of an arc that runs into a place from behind, as one who goes on along the wall has passed them. */
function arcBefore(boundary: Boundary, vertex: number, side: 'left' | 'right'): readonly Point[] {
  const start = cornerFrom(boundary, vertex, side === 'right');
  const steps = new Steps(boundary, start, side === 'left');
  const passed = [start];
  const arc: Point[] = [];
  for (let guard = 0; guard < MOST_BACK; guard += 1) {
    const [, to] = steps.next();
    if (boundary.isCorner[to] === 0) continue;
    passed.push(to);
    const [a, b, c] = passed.slice(-3).map((corner) => placeOf(boundary, corner));
    if (!a || !b || !c) continue;
    const turn = AWAY_FROM[side] * turnFrom(Math.atan2(b.y - c.y, b.x - c.x), Math.atan2(a.y - b.y, a.x - b.x));
    const [before, after] = [Math.hypot(b.x - c.x, b.y - c.y), Math.hypot(a.x - b.x, a.y - b.y)];
    // What is longer than the facets next to it is the straight part of the run: an arc ends at it, and none begins on it.
    const isArc = turn > TURNING / 2 && turn < SHARP && after < STRAIGHT_PIECE * before;
    if (!isArc) break;
    arc.unshift(b);
    if (before > STRAIGHT_PIECE * after) break;
  }
  return arc;
}

/** How far a march goes, in all and in steps, and how wide the run is. */
export interface Reach {
  readonly length: Mm;
  readonly steps: number;
  readonly width: Mm;
}

/** Whether a step is one of a row of facets. */
function isOfArc(arc: readonly Point[], before: Step, step: Step): boolean {
  return arc.length >= 2 && Math.abs(step.length - before.length) < LIKE * Math.max(step.length, before.length);
}

/** The straight pieces of a wall from a vertex on, as far as the reach. */
function* marched(
  boundary: Boundary,
  vertex: number,
  side: 'left' | 'right',
  direction: number,
  reach: Reach,
): Generator<Step> {
  // The material lies at the left of an outline: the right wall runs with it, the left one against it.
  const steps = new Steps(boundary, vertex, side === 'right');
  let gone = 0;
  for (let count = 0; count < reach.steps && gone < reach.length; count += 1) {
    const step = joined(boundary, steps, AWAY_FROM[side], direction);
    gone += step.length;
    yield step;
  }
}

/**
 * Marches along a wall away from the middle of a run.
 *
 * @param boundary - outlines of the section [mm]
 * @param vertex - where the march begins, in the thin part [-]
 * @param side - which wall, as seen by one who goes out along the run [-]
 * @param direction - of the run where the march begins, as an angle [rad]
 * @param reach - where to give up [mm]
 * @returns the end of the wall, undefined where it goes on past the reach
 */
export function wallEnd(
  boundary: Boundary,
  vertex: number,
  side: 'left' | 'right',
  direction: number,
  reach: Reach,
): WallEnd | undefined {
  const points = [placeOf(boundary, vertex)];
  /** Corners of what turns smoothly; the march may begin in the middle of it. */
  let arc = arcBefore(boundary, vertex, side);
  let before: Step | undefined;
  /** How far the wall has come away, and where it began to. */
  let off = 0;
  let left: { readonly at: Point; readonly arc: readonly Point[] } | undefined;
  for (const step of marched(boundary, vertex, side, direction, reach)) {
    const here = placeOf(boundary, step.from);
    const turn = before ? turnFrom(before.off, step.off) : turnAt(boundary, vertex, step, side, direction);
    const gain = step.length * Math.sin(step.off);
    if (turn > SHARP) return { at: here, fillet: radiusOf(arc), points };
    if (step.off > ACROSS) return { at: here, fillet: radiusOf([...arc, here]), points };
    const isRow = before !== undefined && isOfArc(arc, before, step);
    if (step.off > BEVEL && gain > GAINS * reach.width && !isRow) {
      return { at: here, fillet: radiusOf([...arc, here]), points };
    }
    if (step.off < TURNING) left = undefined;
    else left ??= { at: here, arc };
    off = Math.max(0, off + gain);
    if (off > AWAY * reach.width && left && !isRow) return { at: left.at, fillet: radiusOf(left.arc), points };
    if (turn > TURNING / 2) arc = [...arc, here];
    else if (turn < 0) arc = [];
    points.push(placeOf(boundary, step.to));
    before = step;
  }
  return undefined;
}

/**
 * Where a wall that leaves a run at once, as the side of a groove does, has come away by half the width of the run: with
 * the other wall doing likewise, the run is there twice as thick as at its thinnest.
 *
 * @param boundary - outlines of the section [mm]
 * @param vertex - where the march begins, at the bottom of the groove [-]
 * @param side - which wall, as seen by one who goes out along the run [-]
 * @param direction - of the run where the march begins, as an angle [rad]
 * @param reach - where to give up [mm]
 * @returns the place, undefined where the wall does not come away within the reach
 */
export function grooveEnd(
  boundary: Boundary,
  vertex: number,
  side: 'left' | 'right',
  direction: number,
  reach: Reach,
): WallEnd | undefined {
  const points = [placeOf(boundary, vertex)];
  let off = 0;
  for (const step of marched(boundary, vertex, side, direction, reach)) {
    const gain = step.length * Math.sin(step.off);
    const share = gain > 0 ? (reach.width / 2 - off) / gain : Infinity;
    const end = placeOf(boundary, step.to);
    if (share <= 1) {
      const start = placeOf(boundary, step.from);
      const at = { x: start.x + share * (end.x - start.x), y: start.y + share * (end.y - start.y) };
      return { at, fillet: 0, points: [...points, at] };
    }
    off += gain;
    points.push(end);
  }
  return undefined;
}

/** By how much the wall turns where the march begins: nothing at a place between corners. */
function turnAt(boundary: Boundary, vertex: number, step: Step, side: 'left' | 'right', direction: number): number {
  if (boundary.isCorner[vertex] === 0) return 0;
  const [to, from] = new Steps(boundary, vertex, side === 'left').next();
  const angle = Math.atan2(boundary.y[to]! - boundary.y[from]!, boundary.x[to]! - boundary.x[from]!);
  return turnFrom(AWAY_FROM[side] * turnFrom(direction, angle), step.off);
}

/** One straight piece of the wall, over places that were added in between. */
function joined(boundary: Boundary, steps: Steps, away: 1 | -1, direction: number): Step {
  const [from, first] = steps.next();
  let to = first;
  for (let guard = 0; boundary.isCorner[to] === 0 && guard < 1e5; guard += 1) [, to] = steps.next();
  const dx = boundary.x[to]! - boundary.x[from]!;
  const dy = boundary.y[to]! - boundary.y[from]!;
  return { from, to, length: Math.hypot(dx, dy), off: away * turnFrom(direction, Math.atan2(dy, dx)) };
}

/** Radius of an arc by its ends and its middle; 0 for what does not turn smoothly. */
function radiusOf(arc: readonly Point[]): Mm {
  if (arc.length < 3) return 0;
  return radiusThrough(arc[0]!, arc[Math.floor(arc.length / 2)]!, arc.at(-1)!);
}
