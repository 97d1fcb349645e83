/** The outlines of a section as edges that can be split: every edge has the material at its left. */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';

/** Corners nearer than this are one [mm]; a hundredth of what any printer resolves. */
const SAME: Mm = 1e-4;
/** Corners that lie nearer to the straight line of their neighbours than this say nothing [mm]. */
const STRAIGHT: Mm = 2e-5;

/** Corners of a loop that turn it. */
export function turningCorners(loop: readonly Point[]): readonly Point[] {
  const apart = loop.filter((point, i) => {
    const before = loop.at(i - 1)!;
    return Math.hypot(point.x - before.x, point.y - before.y) > SAME;
  });
  const kept: Point[] = [];
  for (const [i, point] of apart.entries()) {
    const before = kept.at(-1) ?? apart.at(-1)!;
    const after = apart[(i + 1) % apart.length]!;
    const length = Math.hypot(after.x - before.x, after.y - before.y);
    const area = (after.x - before.x) * (point.y - before.y) - (after.y - before.y) * (point.x - before.x);
    const goesOn = (point.x - before.x) * (after.x - point.x) + (point.y - before.y) * (after.y - point.y) > 0;
    if (!goesOn || Math.abs(area) > STRAIGHT * length) kept.push(point);
  }
  return kept;
}

/** Vertices and edges in arrays that grow; numbers never change. */
export class Boundary {
  readonly x: number[] = [];
  readonly y: number[] = [];
  /** 1 for corners of the part, 0 for places added in between. */
  readonly isCorner: number[] = [];
  readonly from: number[] = [];
  readonly to: number[] = [];
  readonly next: number[] = [];
  readonly previous: number[] = [];
  /** An edge that begins at each vertex, and one that ends there. */
  readonly outOf: number[] = [];
  readonly into: number[] = [];

  constructor(loops: readonly (readonly Point[])[]) {
    const numbers = new Map<string, number>();
    for (const loop of loops) {
      const corners = turningCorners(loop);
      if (corners.length >= 3) this.#addLoop(corners, numbers);
    }
  }

  #addLoop(corners: readonly Point[], numbers: Map<string, number>): void {
    const vertices = corners.map((point) => this.#vertexAt(point, numbers));
    const first = this.from.length;
    for (const [i, vertex] of vertices.entries()) {
      this.from.push(vertex);
      this.to.push(vertices[(i + 1) % vertices.length]!);
      this.next.push(first + ((i + 1) % vertices.length));
      this.previous.push(first + ((i + vertices.length - 1) % vertices.length));
      this.outOf[vertex] = first + i;
      this.into[vertices[(i + 1) % vertices.length]!] = first + i;
    }
  }

  #vertexAt({ x, y }: Point, numbers: Map<string, number>): number {
    const key = `${Math.round(x / SAME)} ${Math.round(y / SAME)}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, this.x.length);
    return this.addVertex(x, y, 1);
  }

  addVertex(x: number, y: number, isCorner: 0 | 1): number {
    this.x.push(x);
    this.y.push(y);
    this.isCorner.push(isCorner);
    return this.x.length - 1;
  }

  lengthOf(edge: number): Mm {
    const a = this.from[edge]!;
    const b = this.to[edge]!;
    return Math.hypot(this.x[b]! - this.x[a]!, this.y[b]! - this.y[a]!);
  }

  /** Puts a vertex on an edge, at this share of its length. */
  split(edge: number, share: number): void {
    const a = this.from[edge]!;
    const b = this.to[edge]!;
    const x = this.x[a]! + share * (this.x[b]! - this.x[a]!);
    const y = this.y[a]! + share * (this.y[b]! - this.y[a]!);
    const middle = this.addVertex(x, y, 0);
    const after = this.next[edge]!;
    const added = this.from.length;
    this.from.push(middle);
    this.to.push(b);
    this.next.push(after);
    this.previous.push(edge);
    this.to[edge] = middle;
    this.next[edge] = added;
    this.previous[after] = added;
    this.outOf[middle] = added;
    this.into[middle] = edge;
    if (this.into[b] === edge) this.into[b] = added;
  }
}
