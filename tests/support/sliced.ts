/** Toolpaths of known parts: cut into layers and laid as contours with a few lines inside, as simply as can be. */
import { offset } from '../../src/core/geometry/clipping.ts';
import { loopArea, type Loop } from '../../src/core/geometry/loop.ts';
import { boxOf } from '../../src/core/geometry/mesh/meshFigures.ts';
import { cutByPlane } from '../../src/core/geometry/mesh/planeSection.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { unite } from '../../src/core/geometry/clipping.ts';
import {
  FEED,
  FLAGS,
  JUMP,
  LAID,
  LENGTH,
  LINE,
  MOVE_SIZE,
  X,
  Y,
  Z,
  type MoveSink,
} from '../../src/core/inspect/toolpath/moves.ts';
import { beadArea } from '../../src/core/print/bead.ts';

export interface Slicing {
  readonly lineWidth: number;
  readonly layerHeight: number;
  readonly diameter: number;
  readonly contours: number;
}

/** Outlines of each layer, cut at its middle. */
export function sliceOutlines(mesh: TriangleMesh, height: number): readonly { z: number; outlines: readonly Loop[] }[] {
  const { min, max } = boxOf(mesh);
  const count = Math.round((max.z - min.z) / height);
  return Array.from({ length: count }, (_, i) => {
    const middle = min.z + (i + 0.5) * height;
    const plane = {
      origin: { x: 0, y: 0, z: middle },
      right: { x: 1, y: 0, z: 0 },
      up: { x: 0, y: 1, z: 0 },
      normal: { x: 0, y: 0, z: 1 },
    };
    return { z: (i + 1) * height, outlines: unite(cutByPlane(mesh, plane).loops) };
  });
}

/** Hands moves to a sink one by one. */
class Head {
  readonly #row = new Float64Array(MOVE_SIZE);
  readonly #sink: MoveSink;
  readonly #feed: number;
  #line = 1;
  #x = 0;
  #y = 0;

  constructor(sink: MoveSink, feed: number) {
    this.#sink = sink;
    this.#feed = feed;
    this.#send(0, 0, 0, 0, JUMP);
  }

  #send(x: number, y: number, z: number, feed: number, flags = 0): void {
    const row = this.#row;
    row[X] = x;
    row[Y] = y;
    row[Z] = z;
    row[LENGTH] = Math.hypot(x - this.#x, y - this.#y) || 1e-9;
    row[FEED] = feed * row[LENGTH];
    row[LAID] = row[FEED];
    row[FLAGS] = flags;
    row[LINE] = this.#line;
    this.#line += 1;
    this.#x = x;
    this.#y = y;
    this.#sink.take(row, 1);
  }

  path(points: Loop, z: number): void {
    for (const [i, { x, y }] of points.entries()) this.#send(x, y, z, i === 0 ? 0 : this.#feed);
  }
}

/** Short lines all over the inside, far apart: enough to tell a body from a hole. */
function sparse(inside: readonly Loop[]): readonly Loop[] {
  return inside
    .filter((loop) => loopArea(loop) > 0)
    .flatMap((loop) => loop.filter((_, i) => i % 3 === 0))
    .map(({ x, y }) => [
      { x, y },
      { x: x + 0.02, y: y + 0.02 },
    ]);
}

/** Lays a part: contours inside its outlines, those round holes the other way, then what little is inside. */
export function lay(mesh: TriangleMesh, slicing: Slicing, sink: MoveSink): void {
  const { lineWidth: w, layerHeight: h, diameter, contours } = slicing;
  const head = new Head(sink, beadArea(w, h) / ((Math.PI * diameter ** 2) / 4));
  for (const { z, outlines } of sliceOutlines(mesh, h)) {
    for (let i = 0; i < contours; i += 1) {
      for (const loop of offset(outlines, -(0.5 + i) * w, 0.002)) head.path([...loop, loop[0]!], z);
    }
    for (const line of sparse(offset(outlines, -(contours + 0.5) * w, 0.01))) head.path(line, z);
  }
}
