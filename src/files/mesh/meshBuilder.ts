/** Puts a mesh together from corners as they come, and joins those that are exactly alike. */
import type { TriangleMesh } from '../../core/geometry/mesh/triangleMesh.ts';
import { GrowingFloats, GrowingIndices } from './growing.ts';
import { MAX_TRIANGLES, MAX_VERTICES } from './meshLimits.ts';
import { count, refuse } from './refusal.ts';

const FIRST_SLOTS = 1024;
const EMPTY = -1;

export class MeshBuilder {
  private readonly points: GrowingFloats;
  private readonly corners: GrowingIndices;
  /** Open addressing: the number of a vertex in each slot, at most half of them taken. */
  private slots: Int32Array;
  private readonly asFloats = new Float64Array(3);
  private readonly asBits = new Uint32Array(this.asFloats.buffer);

  /** @param triangles - about how many are coming; a closed surface has half as many vertices */
  constructor(triangles: number) {
    this.points = new GrowingFloats(1.5 * triangles);
    this.corners = new GrowingIndices(3 * triangles);
    this.slots = new Int32Array(2 ** Math.ceil(Math.log2(triangles + FIRST_SLOTS))).fill(EMPTY);
  }

  get triangles(): number {
    return this.corners.length / 3;
  }

  /** The number of the vertex at this place, a new one where there is none yet. Coordinates are finite. */
  vertex(x: number, y: number, z: number): number {
    const { asFloats } = this;
    // Adding nothing makes 0 of −0, which is the same place.
    asFloats[0] = x + 0;
    asFloats[1] = y + 0;
    asFloats[2] = z + 0;
    const mask = this.slots.length - 1;
    for (let slot = this.hash() & mask; ; slot = (slot + 1) & mask) {
      const held = this.slots[slot]!;
      if (held === EMPTY) return this.added(slot);
      const all = this.points.all;
      if (all[3 * held] === x && all[3 * held + 1] === y && all[3 * held + 2] === z) return held;
    }
  }

  /** A triangle of three vertices that are already there. */
  triangle(a: number, b: number, c: number): void {
    if (this.triangles >= MAX_TRIANGLES) refuseTriangles();
    this.corners.push3(a, b, c);
  }

  finish(): TriangleMesh {
    return { points: this.points.toArray(), corners: this.corners.toArray() };
  }

  private added(slot: number): number {
    const { points, asFloats } = this;
    const number = points.length / 3;
    points.push3(asFloats[0]!, asFloats[1]!, asFloats[2]!);
    this.slots[slot] = number;
    if (2 * (number + 1) > this.slots.length) this.widen();
    return number;
  }

  private widen(): void {
    this.slots = new Int32Array(2 * this.slots.length).fill(EMPTY);
    const mask = this.slots.length - 1;
    const { asFloats } = this;
    for (let vertex = 0; 3 * vertex < this.points.length; vertex += 1) {
      for (let axis = 0; axis < 3; axis += 1) asFloats[axis] = this.points.all[3 * vertex + axis]!;
      let slot = this.hash() & mask;
      while (this.slots[slot] !== EMPTY) slot = (slot + 1) & mask;
      this.slots[slot] = vertex;
    }
  }

  /** All bits of the three coordinates stirred together, so that grids and mirrored parts spread as well as any. */
  private hash(): number {
    let hash = 0;
    for (let i = 0; i < 6; i += 1) {
      hash = Math.imul(hash ^ this.asBits[i]!, 0x9e3779b1);
      hash ^= hash >>> 15;
    }
    hash = Math.imul(hash, 0x85ebca6b);
    return hash ^ (hash >>> 13);
  }
}

export function refuseTriangles(known?: number): never {
  const many = known === undefined ? `more than ${count(MAX_TRIANGLES)}` : count(known);
  return refuse(
    'too-large',
    `The file holds ${many} triangles, and ${count(MAX_TRIANGLES)} are read at most; export the part more coarsely`,
    { limit: MAX_TRIANGLES, ...(known === undefined ? {} : { value: known }) },
  );
}

export function refuseVertices(): never {
  const message = `The file holds more than ${count(MAX_VERTICES)} vertices, three for each triangle that is read at most; export the part more coarsely`;
  return refuse('too-large', message, { limit: MAX_VERTICES });
}
