/**
 * Where a wall of a thin run ends and what it joins begins.
 *
 * The rule: a fillet counts to the flexure up to where it meets the pad, a bevel belongs to the pad. Going along the wall,
 * it ends at the first corner that turns away sharply; else where it has come to stand nearly across the run, which is the
 * end of a fillet; else where it has stopped turning well off the direction of the run, which is a bevel behind a fillet.
 */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Boundary } from './boundary.ts';

/** A single corner that turns by more is sharp: the facets of a fillet turn by less, three of them a quarter turn. */
const SHARP = (32 * Math.PI) / 180;
/** So far off the run a wall counts as standing across it: what a fillet still gains along the run is then under 3 %. */
const ACROSS = (75 * Math.PI) / 180;
/** A straight piece so far off the run that it is no part of the run, only of a bevel. */
const BEVEL = (25 * Math.PI) / 180;
/** A piece this many times as long as the one before it, past that, has stopped turning. */
const STOPPED = 3;
/** Walls turn by less through the facets of a curved leaf or through the noise of a file. */
const TURNING = (4 * Math.PI) / 180;

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
    this.#edge = (isForward ? boundary.from : boundary.to).indexOf(vertex);
  }

  /** The next two vertices of the way. */
  next(): readonly [number, number] {
    const { from, to, next, previous } = this.#boundary;
    const edge = this.#edge;
    this.#edge = this.#isForward ? next[edge]! : previous[edge]!;
    return this.#isForward ? [from[edge]!, to[edge]!] : [to[edge]!, from[edge]!];
  }
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

/** How far a march goes, in all and in steps. */
export interface Reach {
  readonly length: Mm;
  readonly steps: number;
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
  // The material lies at the left of an outline: the right wall runs with it, the left one against it.
  const steps = new Steps(boundary, vertex, side === 'right');
  const away = side === 'left' ? 1 : -1;
  const at = (v: number): Point => ({ x: boundary.x[v]!, y: boundary.y[v]! });
  const points = [at(vertex)];
  /** Corners of what turns smoothly. */
  let arc: Point[] = [];
  let before: Step | undefined;
  let gone = 0;
  for (let count = 0; count < reach.steps && gone < reach.length; count += 1) {
    const step = joined(boundary, steps, away, direction);
    if (before) {
      const turn = turnFrom(before.off, step.off);
      if (turn > SHARP) return { at: at(step.from), fillet: radiusOf(arc), points };
      const hasStopped = step.off > BEVEL && turn < TURNING && step.length > STOPPED * before.length;
      if (step.off > ACROSS || hasStopped)
        return { at: at(step.from), fillet: radiusOf([...arc, at(step.from)]), points };
      if (turn > TURNING / 2) arc.push(at(step.from));
      else if (arc.length > 0 && turn < 0) arc = [];
    } else if (step.off > SHARP) {
      return { at: at(step.from), fillet: 0, points };
    }
    gone += step.length;
    points.push(at(step.to));
    before = step;
  }
  return undefined;
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
