/**
 * A section cut into triangles whose sides cross it from wall to wall. Edges of the outline are split until all of them are
 * sides of the Delaunay triangulation of their ends, and until none is long against the thickness behind it: what the
 * triangulation says of the way from wall to wall is then right to a few per cent, which is enough to tell what is thin.
 */
import Delaunator from 'delaunator';
import type { Mm } from '../../units.ts';
import type { Boundary } from './boundary.ts';

/** An edge may be as long as this times the thickness behind it. */
const LONGEST = 0.75;
/** Edges that are no sides yet may be split further than the others, to this share of their least length. */
const SHORTEST = 0.02;
/** Each round halves what is too long: 16 rounds split an edge of a metre down to 0.015 mm. */
const ROUNDS = 16;
const MOST_VERTICES = 120_000;

/** Triangles inside the material. Side k of triangle t runs from corner 3t + k to the next, the triangle at its left. */
export interface Triangles {
  readonly boundary: Boundary;
  /** Three vertices a triangle, counter-clockwise. */
  readonly corners: Uint32Array;
  /** The triangle across each side, −1 where the side is an edge of the outline. */
  readonly across: Int32Array;
  /** Edges of the outline that could not be made sides: the section is then not to be trusted there. */
  readonly missing: number;
}

/** A triangulation of all vertices with which triangle is inside. */
interface Whole {
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
  readonly isInside: Uint8Array;
  /** Edge of the outline on each side that has it at its left, −1 where none. */
  readonly edgeOn: Int32Array;
  /** 1 for both sides of an edge of the outline. */
  readonly isOutline: Uint8Array;
  readonly missing: readonly number[];
}

/** A side after the last two corners of its triangle have changed places: so have its first and its last side. */
function turnedSide(side: number): number {
  if (side < 0 || side % 3 === 1) return side;
  return side % 3 === 0 ? side + 2 : side - 2;
}

/** The library turns triangles one way; ours turn counter-clockwise. */
function counterClockwise({ triangles, halfedges }: Delaunator<Float64Array>, boundary: Boundary) {
  const { x, y } = boundary;
  const [a = 0, b = 0, c = 0] = triangles;
  const area = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);
  if (area >= 0) return { triangles, halfedges };
  const turned = triangles.slice();
  const sides = halfedges.slice();
  for (let t = 0; t < triangles.length; t += 3) {
    turned[t + 1] = triangles[t + 2]!;
    turned[t + 2] = triangles[t + 1]!;
    for (let k = 0; k < 3; k += 1) sides[t + k] = turnedSide(halfedges[turnedSide(t + k)]!);
  }
  return { triangles: turned, halfedges: sides };
}

const nextSide = (side: number) => (side % 3 === 2 ? side - 2 : side + 1);

function triangulate(boundary: Boundary): Whole {
  const { x, y, from, to } = boundary;
  const count = x.length;
  const coordinates = new Float64Array(2 * count);
  for (let i = 0; i < count; i += 1) {
    coordinates[2 * i] = x[i]!;
    coordinates[2 * i + 1] = y[i]!;
  }
  const { triangles, halfedges } = counterClockwise(new Delaunator(coordinates), boundary);
  const edges = new Map<number, number>();
  for (let e = 0; e < from.length; e += 1) edges.set(from[e]! * count + to[e]!, e);
  const edgeOn = new Int32Array(triangles.length).fill(-1);
  const isFound = new Uint8Array(from.length);
  const isInside = new Uint8Array(triangles.length / 3);
  const queue: number[] = [];
  const isOutline = new Uint8Array(triangles.length);
  for (let side = 0; side < triangles.length; side += 1) {
    const a = triangles[side]!;
    const b = triangles[nextSide(side)]!;
    const edge = edges.get(a * count + b);
    if (edge !== undefined) {
      edgeOn[side] = edge;
      isFound[edge] = 1;
      isOutline[side] = 1;
      const t = Math.floor(side / 3);
      if (isInside[t] === 0) queue.push(t);
      isInside[t] = 1;
    }
    const reverse = edges.get(b * count + a);
    if (reverse !== undefined) {
      isOutline[side] = 1;
      isFound[reverse] = 1;
    }
  }
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    for (let side = 3 * t; side < 3 * t + 3; side += 1) {
      const beyond = halfedges[side]!;
      if (beyond < 0 || isOutline[side] === 1) continue;
      const neighbour = Math.floor(beyond / 3);
      if (isInside[neighbour] === 1) continue;
      isInside[neighbour] = 1;
      queue.push(neighbour);
    }
  }
  const missing = [...isFound.keys()].filter((edge) => isFound[edge] === 0);
  return { triangles, halfedges, isInside, edgeOn, isOutline, missing };
}

/** Shares of edges at which they are to be split so that none is long against the thickness behind it. */
function tooLong({ triangles, isInside, edgeOn }: Whole, boundary: Boundary, thickest: Mm, least: Mm) {
  const { x, y } = boundary;
  const splits = new Map<number, number>();
  for (let side = 0; side < triangles.length; side += 1) {
    const edge = edgeOn[side]!;
    if (edge < 0 || isInside[Math.floor(side / 3)] === 0) continue;
    const length = boundary.lengthOf(edge);
    if (length < 2 * least) continue;
    const apex = triangles[nextSide(nextSide(side))]!;
    if (apex === boundary.from[boundary.previous[edge]!] || apex === boundary.to[boundary.next[edge]!]) continue;
    const a = boundary.from[edge]!;
    const b = boundary.to[edge]!;
    const dx = (x[b]! - x[a]!) / length;
    const dy = (y[b]! - y[a]!) / length;
    const s = ((x[apex]! - x[a]!) * dx + (y[apex]! - y[a]!) * dy) / length;
    const foot = Math.min(1, Math.max(0, s));
    const behind = Math.hypot(x[a]! + foot * length * dx - x[apex]!, y[a]! + foot * length * dy - y[apex]!);
    if (behind < 2 * thickest && length > LONGEST * behind) splits.set(edge, s > 0.25 && s < 0.75 ? s : 0.5);
  }
  return splits;
}

/**
 * Cuts a section into triangles.
 *
 * @param boundary - the outlines, split in place [mm]
 * @param thickest - what is thicker needs no fine edges [mm], > 0
 * @param least - no edge is made shorter than this [mm], > 0
 * @returns the triangles inside
 */
export function trianglesOf(boundary: Boundary, thickest: Mm, least: Mm): Triangles {
  let whole = triangulate(boundary);
  for (let round = 0; round < ROUNDS && boundary.x.length < MOST_VERTICES; round += 1) {
    const splits = tooLong(whole, boundary, thickest, least);
    for (const edge of whole.missing) if (boundary.lengthOf(edge) > SHORTEST * least) splits.set(edge, 0.5);
    if (splits.size === 0) break;
    for (const [edge, share] of splits) boundary.split(edge, share);
    whole = triangulate(boundary);
  }
  return insideOf(whole, boundary);
}

function insideOf({ triangles, halfedges, isInside, isOutline, missing }: Whole, boundary: Boundary): Triangles {
  const numbers = new Int32Array(isInside.length).fill(-1);
  let count = 0;
  for (let t = 0; t < isInside.length; t += 1) {
    if (isInside[t] === 0) continue;
    numbers[t] = count;
    count += 1;
  }
  const corners = new Uint32Array(3 * count);
  const across = new Int32Array(3 * count).fill(-1);
  for (let t = 0; t < isInside.length; t += 1) {
    const number = numbers[t]!;
    if (number < 0) continue;
    for (let k = 0; k < 3; k += 1) {
      corners[3 * number + k] = triangles[3 * t + k]!;
      const beyond = halfedges[3 * t + k]!;
      if (beyond >= 0 && isOutline[3 * t + k] === 0) across[3 * number + k] = numbers[Math.floor(beyond / 3)]!;
    }
  }
  return { boundary, corners, across, missing: missing.length };
}
