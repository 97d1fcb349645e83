/**
 * Union, cut and offset of closed outlines, by the polygon library. Only files that are loaded when first needed may
 * reach this one. The library works in whole numbers: places are kept to 10⁻⁵ mm, which leaves room for parts of metres.
 */
import { Clipper64, ClipperOffset, ClipType, EndType, FillRule, JoinType, ramerDouglasPeucker } from 'clipper2-ts';
import type { Mm } from '../units.ts';
import type { Loop } from './loop.ts';

/** Whole numbers in one millimetre. */
const UNITS = 1e5;

type Whole = { x: number; y: number }[];

const inUnits = (loop: Loop): Whole => loop.map(({ x, y }) => ({ x: Math.round(x * UNITS), y: Math.round(y * UNITS) }));
const wholeOf = (loops: readonly Loop[]): Whole[] => loops.map((loop) => withoutLevelRuns(inUnits(loop)));

/**
 * An outline without what lies between the ends of a level run of it, which bounds no area. Version 2.0.1 of the library
 * never ends where two level edges in a row go back and forth.
 */
function withoutLevelRuns(loop: Whole): Whole {
  const kept: Whole = [];
  for (const point of loop) {
    if (kept.at(-1)?.y === point.y && kept.at(-2)?.y === point.y) kept.pop();
    kept.push(point);
  }
  while (kept.length > 2 && kept[0]!.y === kept.at(-1)!.y) {
    if (kept.at(-2)!.y === kept[0]!.y) kept.pop();
    else if (kept[1]!.y === kept[0]!.y) kept.shift();
    else break;
  }
  return kept;
}
const loopsOf = (wholes: readonly Whole[]): readonly Loop[] =>
  wholes.map((whole) => whole.map(({ x, y }) => ({ x: x / UNITS, y: y / UNITS })));

function combine(kind: ClipType, subject: readonly Loop[], clip: readonly Loop[]): readonly Loop[] {
  const clipper = new Clipper64();
  clipper.addSubject(wholeOf(subject));
  if (clip.length > 0) clipper.addClip(wholeOf(clip));
  const found: Whole[] = [];
  clipper.execute(kind, FillRule.NonZero, found);
  return loopsOf(found);
}

/** All that lies in any of the outlines: outer ones counter-clockwise, holes clockwise. */
export function unite(loops: readonly Loop[]): readonly Loop[] {
  return combine(ClipType.Union, loops, []);
}

/** What lies in both. */
export function common(a: readonly Loop[], b: readonly Loop[]): readonly Loop[] {
  return combine(ClipType.Intersection, a, b);
}

/** What lies in the first and not in the second. */
export function without(a: readonly Loop[], b: readonly Loop[]): readonly Loop[] {
  return combine(ClipType.Difference, a, b);
}

/** Outlines moved outwards, inwards when below 0, round about corners; chords within the tolerance of their arcs. */
export function offset(loops: readonly Loop[], distance: Mm, tolerance: Mm): readonly Loop[] {
  const clipper = new ClipperOffset(2, tolerance * UNITS);
  clipper.addPaths(wholeOf(loops), JoinType.Round, EndType.Polygon);
  const found: Whole[] = [];
  clipper.execute(distance * UNITS, found);
  return loopsOf(found);
}

/**
 * What a round brush covers that is drawn along lines: with round ends, or round and round along closed ones.
 *
 * @param lines - corners of each [mm], two or more
 * @param width - of the brush [mm], > 0
 * @param isClosed - whether each goes on from its last corner to its first [-]
 * @param tolerance - chords within this of the arcs round corners [mm]
 */
export function stroked(lines: readonly Loop[], width: Mm, isClosed: boolean, tolerance: Mm): readonly Loop[] {
  const clipper = new ClipperOffset(2, tolerance * UNITS);
  clipper.addPaths(lines.map(inUnits), JoinType.Round, isClosed ? EndType.Joined : EndType.Round);
  const found: Whole[] = [];
  clipper.execute((width / 2) * UNITS, found);
  return loopsOf(found);
}

/** Fewer corners, none of those left out further than the tolerance from the outline that remains. */
export function simplified(loops: readonly Loop[], tolerance: Mm): readonly Loop[] {
  return loopsOf(wholeOf(loops).map((whole) => ramerDouglasPeucker(whole, tolerance * UNITS)));
}
