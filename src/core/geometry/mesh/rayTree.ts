/**
 * Which triangle a ray meets first. The triangles are sorted along a curve that fills their box, so that neighbours in the
 * list are neighbours in space; a tree of boxes splits the list where the curve crosses from one half of a cell to the
 * other, which needs no search for the best place.
 */
import { boxOf } from './meshFigures.ts';
import type { Point3, TriangleMesh } from './triangleMesh.ts';

/** So many triangles are tried one by one. */
const LEAF = 4;
/** Rays through an edge must not slip between its two triangles. */
const EDGE_SLACK = 1e-9;
/** Bits of the curve a coordinate. */
const BITS = 10;
const STEPS = 2 ** BITS - 1;

export interface RayHit {
  /** How far along the ray, in lengths of its direction. */
  readonly at: number;
  readonly triangle: number;
}

/** Puts two empty bits before each bit of a number below 1024. */
function spread(value: number): number {
  let v = value & 0x3ff;
  v = (v | (v << 16)) & 0x30000ff;
  v = (v | (v << 8)) & 0x300f00f;
  v = (v | (v << 4)) & 0x30c30c3;
  return (v | (v << 2)) & 0x9249249;
}

/** Steps of the curve in a third of a length: sums of three corners are counted. */
function stepsIn(low: number, high: number): number {
  return high > low ? STEPS / (3 * (high - low)) : 0;
}

/** Places of the middles of all triangles along the curve. */
function curvePlaces({ points, corners }: TriangleMesh): Uint32Array {
  const { min, max } = boxOf({ points, corners });
  const sx = stepsIn(min.x, max.x);
  const sy = stepsIn(min.y, max.y);
  const sz = stepsIn(min.z, max.z);
  const places = new Uint32Array(corners.length / 3);
  for (let i = 0, c = 0; i < places.length; i += 1, c += 3) {
    const a = 3 * corners[c]!;
    const b = 3 * corners[c + 1]!;
    const d = 3 * corners[c + 2]!;
    const x = (points[a]! + points[b]! + points[d]! - 3 * min.x) * sx;
    const y = (points[a + 1]! + points[b + 1]! + points[d + 1]! - 3 * min.y) * sy;
    const z = (points[a + 2]! + points[b + 2]! + points[d + 2]! - 3 * min.z) * sz;
    places[i] = (spread(x) | (spread(y) << 1) | (spread(z) << 2)) >>> 0;
  }
  return places;
}

/** Numbers 0 to n − 1 by rising key of 30 bits: two passes of 15 bits keep equal ones in order. */
function sortedBy(keys: Uint32Array): Uint32Array {
  const n = keys.length;
  let order = Uint32Array.from({ length: n }, (_, i) => i);
  let next = new Uint32Array(n);
  for (const shift of [0, 15]) {
    const starts = new Uint32Array(2 ** 15 + 1);
    for (let i = 0; i < n; i += 1) starts[((keys[i]! >>> shift) & 0x7fff) + 1]! += 1;
    for (let i = 1; i < starts.length; i += 1) starts[i]! += starts[i - 1]!;
    for (let i = 0; i < n; i += 1) {
      const item = order[i]!;
      const bin = (keys[item]! >>> shift) & 0x7fff;
      next[starts[bin]!] = item;
      starts[bin]! += 1;
    }
    [order, next] = [next, order];
  }
  return order;
}

/** Place in the order at which a stretch of it is split: where the highest bit that differs in it changes. */
function splitAt(places: Uint32Array, order: Uint32Array, first: number, last: number): number {
  const differs = places[order[first]!]! ^ places[order[last - 1]!]!;
  if (differs === 0) return (first + last) >> 1;
  const bit = 31 - Math.clz32(differs);
  let low = first;
  let high = last - 1;
  while (low + 1 < high) {
    const middle = (low + high) >> 1;
    if ((places[order[middle]!]! >>> bit) & 1) high = middle;
    else low = middle;
  }
  return high;
}

/** The tree over the order: nodes before what they hold. */
function splitNodes(places: Uint32Array, order: Uint32Array) {
  const most = Math.max(1, 2 * order.length);
  const second = new Uint32Array(most);
  const first = new Uint32Array(most);
  const last = new Uint32Array(most);
  const waiting = [{ from: 0, to: order.length, parent: -1 }];
  let count = 0;
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const node = count;
    count += 1;
    // What is taken out right after its parent is the first half, whatever waited longer the second.
    if (next.parent >= 0) second[next.parent] = node;
    first[node] = next.from;
    last[node] = next.to;
    if (next.to - next.from <= LEAF) continue;
    const split = splitAt(places, order, next.from, next.to);
    waiting.push({ from: split, to: next.to, parent: node }, { from: next.from, to: split, parent: -1 });
  }
  return { second: second.slice(0, count), first: first.slice(0, count), last: last.slice(0, count), count };
}

function sidesOf({ points, corners }: TriangleMesh, order: Uint32Array): Float64Array {
  const sides = new Float64Array(9 * order.length);
  for (let i = 0, at = 0; i < order.length; i += 1, at += 9) {
    const a = 3 * corners[3 * order[i]!]!;
    const b = 3 * corners[3 * order[i]! + 1]!;
    const c = 3 * corners[3 * order[i]! + 2]!;
    for (let k = 0; k < 3; k += 1) {
      sides[at + k] = points[a + k]!;
      sides[at + 3 + k] = points[b + k]! - points[a + k]!;
      sides[at + 6 + k] = points[c + k]! - points[a + k]!;
    }
  }
  return sides;
}

/** Finds what rays meet in one mesh. */
export class RayTree {
  readonly #order: Uint32Array;
  /**
   * Of each triangle in that order: its first corner, then both sides that leave it. Copied, since rays that hop about in
   * the mesh itself wait for its memory: 72 MB a million triangles for rays that are twice as fast.
   */
  readonly #sides: Float64Array;
  /** Least and greatest x, y, z of each node. Nodes come before what they hold: the first half of node i is i + 1. */
  readonly #boxes: Float32Array;
  /** The second half of each node, 0 where it holds triangles. */
  readonly #second: Uint32Array;
  /** First and one past the last triangle of each node that holds some. */
  readonly #first: Uint32Array;
  readonly #last: Uint32Array;
  readonly #stack = new Uint32Array(256);

  /** @param mesh - at least one triangle [mm] */
  constructor(mesh: TriangleMesh) {
    const places = curvePlaces(mesh);
    this.#order = sortedBy(places);
    this.#sides = sidesOf(mesh, this.#order);
    const nodes = splitNodes(places, this.#order);
    this.#second = nodes.second;
    this.#first = nodes.first;
    this.#last = nodes.last;
    this.#boxes = new Float32Array(6 * nodes.count);
    for (let node = nodes.count - 1; node >= 0; node -= 1) this.#fit(node);
  }

  #fit(node: number): void {
    const second = this.#second[node]!;
    if (second === 0) {
      this.#fitLeaf(node, 6 * node);
      return;
    }
    const boxes = this.#boxes;
    const at = 6 * node;
    for (let k = 0; k < 3; k += 1) {
      boxes[at + k] = Math.min(boxes[at + 6 + k]!, boxes[6 * second + k]!);
      boxes[at + 3 + k] = Math.max(boxes[at + 9 + k]!, boxes[6 * second + 3 + k]!);
    }
  }

  #fitLeaf(node: number, at: number): void {
    const boxes = this.#boxes;
    const sides = this.#sides;
    boxes.fill(Infinity, at, at + 3);
    boxes.fill(-Infinity, at + 3, at + 6);
    const end = 9 * this.#last[node]!;
    for (let i = 9 * this.#first[node]!; i < end; i += 9) {
      for (let k = 0; k < 3; k += 1) {
        const a = sides[i + k]!;
        const b = a + sides[i + 3 + k]!;
        const c = a + sides[i + 6 + k]!;
        const low = Math.min(a, b, c);
        const high = Math.max(a, b, c);
        // A box in single precision is made a hair larger, so that it never misses what it holds.
        const hair = Math.max(Math.abs(low), Math.abs(high)) * 1.2e-7;
        if (low - hair < boxes[at + k]!) boxes[at + k] = low - hair;
        if (high + hair > boxes[at + 3 + k]!) boxes[at + 3 + k] = high + hair;
      }
    }
  }

  /**
   * The first triangle that a ray meets, from either side.
   *
   * @param origin - where it starts [mm]
   * @param direction - where it goes [-], any length but 0
   * @param after - hits nearer than this are passed by, in lengths of the direction [-], ≥ 0
   * @param before - hits farther than this are passed by [-]
   * @returns where and which, undefined where there is none
   */
  first(origin: Point3, direction: Point3, after = 0, before = Infinity): RayHit | undefined {
    const stack = this.#stack;
    let top = 0;
    let at = before;
    let triangle = -1;
    const ix = 1 / direction.x;
    const iy = 1 / direction.y;
    const iz = 1 / direction.z;
    stack[top] = 0;
    top += 1;
    while (top > 0) {
      top -= 1;
      const node = stack[top]!;
      if (!this.#meetsBox(6 * node, origin, ix, iy, iz, after, at)) continue;
      const second = this.#second[node]!;
      if (second !== 0) {
        // The half that lies ahead is looked at first.
        const isFirst = this.#isFirstNearer(node, second, direction);
        stack[top] = isFirst ? second : node + 1;
        stack[top + 1] = isFirst ? node + 1 : second;
        top += 2;
        continue;
      }
      const last = this.#last[node]!;
      for (let i = this.#first[node]!; i < last; i += 1) {
        const hit = this.#meets(9 * i, origin, direction);
        if (hit > after && hit < at) {
          at = hit;
          triangle = this.#order[i]!;
        }
      }
    }
    return triangle < 0 ? undefined : { at, triangle };
  }

  #isFirstNearer(node: number, second: number, { x, y, z }: Point3): boolean {
    const boxes = this.#boxes;
    const a = 6 * (node + 1);
    const b = 6 * second;
    const ahead =
      x * (boxes[b]! + boxes[b + 3]! - boxes[a]! - boxes[a + 3]!) +
      y * (boxes[b + 1]! + boxes[b + 4]! - boxes[a + 1]! - boxes[a + 4]!) +
      z * (boxes[b + 2]! + boxes[b + 5]! - boxes[a + 2]! - boxes[a + 5]!);
    return !(ahead < 0);
  }

  #meetsBox(box: number, origin: Point3, ix: number, iy: number, iz: number, after: number, before: number): boolean {
    const boxes = this.#boxes;
    let enter = after;
    let leave = before;
    // 0 · ∞ where a ray runs in the very plane of a side is no number; the comparisons then leave the limits alone.
    const x1 = (boxes[box]! - origin.x) * ix;
    const x2 = (boxes[box + 3]! - origin.x) * ix;
    const y1 = (boxes[box + 1]! - origin.y) * iy;
    const y2 = (boxes[box + 4]! - origin.y) * iy;
    const z1 = (boxes[box + 2]! - origin.z) * iz;
    const z2 = (boxes[box + 5]! - origin.z) * iz;
    if (x1 < x2 ? x1 > enter : x2 > enter) enter = x1 < x2 ? x1 : x2;
    if (x1 < x2 ? x2 < leave : x1 < leave) leave = x1 < x2 ? x2 : x1;
    if (y1 < y2 ? y1 > enter : y2 > enter) enter = y1 < y2 ? y1 : y2;
    if (y1 < y2 ? y2 < leave : y1 < leave) leave = y1 < y2 ? y2 : y1;
    if (z1 < z2 ? z1 > enter : z2 > enter) enter = z1 < z2 ? z1 : z2;
    if (z1 < z2 ? z2 < leave : z1 < leave) leave = z1 < z2 ? z2 : z1;
    return enter <= leave * (1 + 1e-6);
  }

  /** How far along a ray it meets a triangle; below 0 where it does not. After Möller and Trumbore's arrangement. */
  #meets(at: number, origin: Point3, d: Point3): number {
    const sides = this.#sides;
    const ax = sides[at]!;
    const ay = sides[at + 1]!;
    const az = sides[at + 2]!;
    const ux = sides[at + 3]!;
    const uy = sides[at + 4]!;
    const uz = sides[at + 5]!;
    const vx = sides[at + 6]!;
    const vy = sides[at + 7]!;
    const vz = sides[at + 8]!;
    const px = d.y * vz - d.z * vy;
    const py = d.z * vx - d.x * vz;
    const pz = d.x * vy - d.y * vx;
    const det = ux * px + uy * py + uz * pz;
    if (det === 0) return -1;
    const sx = origin.x - ax;
    const sy = origin.y - ay;
    const sz = origin.z - az;
    const u = (sx * px + sy * py + sz * pz) / det;
    if (!(u >= -EDGE_SLACK && u <= 1 + EDGE_SLACK)) return -1;
    const qx = sy * uz - sz * uy;
    const qy = sz * ux - sx * uz;
    const qz = sx * uy - sy * ux;
    const v = (d.x * qx + d.y * qy + d.z * qz) / det;
    if (!(v >= -EDGE_SLACK && u + v <= 1 + EDGE_SLACK)) return -1;
    return (vx * qx + vy * qy + vz * qz) / det;
  }
}
