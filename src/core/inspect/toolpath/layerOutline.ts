/**
 * What stands in a layer, seen from above: what its closed contours go round, with all else that lies outside them.
 *
 * Contours go round bodies and round holes alike, and inside a body there is often next to nothing, so that what is covered
 * does not tell one from the other. What is laid inside does: a hole has nothing in it. Where the inside of a body has nothing
 * either, because it is printed hollow or is narrower than a line, the way round tells: holes are gone round the other way.
 */
import { offset, simplified, stroked, unite } from '../../geometry/clipping.ts';
import { isInside, loopArea, type Loop } from '../../geometry/loop.ts';
import { fromSegment } from '../../geometry/segment.ts';
import { distance } from '../../geometry/vector.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import { InsideLoops } from './insideLoops.ts';

/** A path as its layer sees it. */
export interface FlatPath {
  readonly points: Loop;
  /** Width of each piece [mm], one less than there are points. */
  readonly widths: Float64Array;
  readonly isClosed: boolean;
}

/** Chords of the arcs round corners of a bead stay within this [mm]; finer than a printer places. */
const FINE: Mm = 0.01;
/** Corners that do not matter to what is drawn [mm]. */
const ROUGH: Mm = 0.008;
/** The inside of a contour that is covered by this share of beads at least is the inside of a body: the least that is set is some 5 %. */
const FILLED = 0.025;
/** Pieces whose widths differ by less are drawn by one brush. */
const ALIKE = 1.08;
/** A contour is drawn by one brush where no piece of it is wider or narrower than its first by more: cuts leave bumps. */
const EVEN = 1.25;
/** Gaps of this share of a line between beads of one body are closed: they leave no two bodies. */
const CLOSED_GAP = 0.3;

/** A stretch of a path that is about equally wide. */
interface Stroke {
  readonly points: Loop;
  readonly width: Mm;
  readonly isClosed: boolean;
}

const bandOf = (width: Mm) => Math.round(Math.log(width) / Math.log(ALIKE));

/** Width of a line: mean over its length [mm], which comes along. */
function meanOf(points: Loop, widths: ArrayLike<number>): readonly [width: Mm, length: Mm] {
  let [length, area] = [0, 0];
  for (let i = 0; i < widths.length; i += 1) {
    const piece = distance(points[i]!, points[i + 1]!);
    length += piece;
    area += piece * widths[i]!;
  }
  return [length > 0 ? area / length : 0, length];
}

/** The same of many: by how long each is. */
function meanWidth(paths: readonly FlatPath[]): Mm {
  let [length, area] = [0, 0];
  for (const { points, widths } of paths) {
    const [width, long] = meanOf(points, widths);
    length += long;
    area += long * width;
  }
  return length > 0 ? area / length : 0;
}

/** Cuts a path where its width leaves the band that it is in, unless it is about equally wide all along. */
function strokesOf({ points, widths, isClosed }: FlatPath): readonly Stroke[] {
  const strokes: Stroke[] = [];
  if (isClosed && widths.every((width) => width < EVEN * widths[0]! && widths[0]! < EVEN * width)) {
    return [{ points: points.slice(0, -1), width: meanOf(points, widths)[0], isClosed }];
  }
  let from = 0;
  for (let i = 1; i <= widths.length; i += 1) {
    if (i < widths.length && bandOf(widths[i]!) === bandOf(widths[from]!)) continue;
    const closes = isClosed && from === 0 && i === widths.length;
    const [width] = meanOf(points.slice(from, i + 1), widths.subarray(from, i));
    strokes.push({ points: closes ? points.slice(0, -1) : points.slice(from, i + 1), width, isClosed: closes });
    from = i;
  }
  return strokes;
}

/** What all strokes cover: those of about one width by one brush. */
function coverOf(paths: readonly FlatPath[]): readonly Loop[] {
  const byBrush = new Map<string, Stroke[]>();
  for (const stroke of paths.flatMap(strokesOf)) {
    const key = `${bandOf(stroke.width)} ${stroke.isClosed}`;
    const known = byBrush.get(key);
    if (known) known.push(stroke);
    else byBrush.set(key, [stroke]);
  }
  const covers = [...byBrush.values()].flatMap((strokes) => {
    const width = strokes.reduce((sum, stroke) => sum + stroke.width, 0) / strokes.length;
    const lines = strokes.map(({ points }) => points);
    return stroked(lines, width, strokes[0]!.isClosed, FINE);
  });
  return unite(covers);
}

/** How much of each hole of the contours is covered by what is laid in it [mm²]; of loops that are no holes 0. */
function coveredHoles(inside: InsideLoops, others: readonly FlatPath[]): Float64Array {
  const covered = new Float64Array(inside.loops.length);
  for (const { points, widths } of others) {
    for (const [i, width] of widths.entries()) {
      const [a, b] = [points[i]!, points[i + 1]!];
      const loop = inside.smallest((a.x + b.x) / 2, (a.y + b.y) / 2);
      if (loop >= 0 && inside.areas[loop]! < 0) covered[loop]! += width * Math.hypot(b.x - a.x, b.y - a.y);
    }
  }
  return covered;
}

/** The hole that each outer loop stands in, −1 where it stands free; of holes −1 too. */
function parentsOf(inside: InsideLoops): readonly number[] {
  return inside.loops.map((loop, i) => (inside.areas[i]! > 0 ? smallestRound(inside, loop, i) : -1));
}

/** Area of each hole less that of what stands in it [mm²]. */
function openAreas({ areas }: InsideLoops, parents: readonly number[]): Float64Array {
  const open = Float64Array.from(areas, Math.abs);
  for (const [i, parent] of parents.entries()) if (parent >= 0) open[parent]! -= areas[i]!;
  return open;
}

/** The hole that an outer loop stands in; −1 where it stands free. Loops of one union do not cross, so any corner tells. */
function smallestRound(inside: InsideLoops, loop: Loop, own: number): number {
  let best = -1;
  const { x, y } = loop[0]!;
  for (const [i, other] of inside.loops.entries()) {
    if (i === own || inside.areas[i]! >= 0) continue;
    const area = -inside.areas[i]!;
    if (area <= inside.areas[own]! || (best >= 0 && area >= -inside.areas[best]!)) continue;
    if (isInside([other], { x, y })) best = i;
  }
  return best;
}

/** Which way round the contour runs that lies nearest to a place: its area, positive counter-clockwise. */
function nearestTurn(rings: readonly FlatPath[], place: Point): number {
  let best = Infinity;
  let turn = 0;
  for (const { points } of rings) {
    for (let i = 0; i + 1 < points.length; i += 1) {
      const [a, b] = [points[i]!, points[i + 1]!];
      const away = fromSegment(place, a, b);
      if (away < best) {
        best = away;
        turn = loopArea(points);
      }
    }
  }
  return turn;
}

/** Which way round the largest contour runs that goes round a place. */
function outerTurn(rings: readonly FlatPath[], place: Point): number {
  let most = 0;
  for (const { points } of rings) {
    const area = loopArea(points);
    if (Math.abs(area) > Math.abs(most) && isInside([points], place)) most = area;
  }
  return most;
}

/** The contours with the insides of bodies filled. */
function bodiesOf(rings: readonly FlatPath[], others: readonly FlatPath[]): readonly Loop[] {
  const cover = coverOf(rings);
  if (!cover.some((loop) => loopArea(loop) < 0)) return cover;
  const inside = new InsideLoops(cover);
  const covered = coveredHoles(inside, others);
  const parents = parentsOf(inside);
  const open = openAreas(inside, parents);
  // Programs lead contours round holes the other way than round the body that they are in.
  const isBody = (hole: Loop, i: number) => {
    if (covered[i]! >= FILLED * open[i]!) return true;
    return Math.sign(nearestTurn(rings, hole[0]!)) === Math.sign(outerTurn(rings, hole[0]!));
  };
  const filled = cover.map((hole, i) => inside.areas[i]! < 0 && isBody(hole, i));
  // What stands in a hole that is filled is part of the body already.
  return cover.filter((_, i) => !filled[i] && !filled[parents[i]!]);
}

/**
 * What stands in a layer.
 *
 * @param paths - all that is laid in it [mm]
 * @returns outer outlines counter-clockwise, holes clockwise [mm]
 */
export function layerOutline(paths: readonly FlatPath[]): readonly Loop[] {
  if (paths.length === 0) return [];
  const rings = paths.filter(({ isClosed }) => isClosed);
  const others = paths.filter(({ isClosed }) => !isClosed);
  const line = meanWidth(rings.length > 0 ? rings : paths);
  const bodies = rings.length > 0 ? bodiesOf(rings, others) : [];
  const inside = new InsideLoops(bodies);
  const isOut = (x: number, y: number) => {
    const loop = bodies.length > 0 ? inside.smallest(x, y) : -1;
    return loop < 0 || inside.areas[loop]! < 0;
  };
  const outside = others.filter(({ points }) =>
    points.some((b, i) => {
      const a = points[i - 1];
      return a !== undefined && isOut((a.x + b.x) / 2, (a.y + b.y) / 2);
    }),
  );
  const all = outside.length > 0 ? unite([...bodies, ...coverOf(outside)]) : bodies;
  const gap = (CLOSED_GAP * line) / 2;
  return simplified(offset(offset(all, gap, FINE), -gap, FINE), ROUGH).filter((loop) => loop.length > 2);
}
