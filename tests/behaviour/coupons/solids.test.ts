/** Every piece as a solid: sound by our own report of damage and by a solid library, and of the size and volume that it tells. */
import Module, { type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Piece, Strip } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { isInside, type Loop } from '../../../src/core/geometry/loop.ts';
import { boxOf } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { mendMesh } from '../../../src/core/geometry/mesh/mend.ts';
import { cutByPlane } from '../../../src/core/geometry/mesh/planeSection.ts';
import type { Point3, TriangleMesh } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { unit } from '../../../src/core/geometry/vector.ts';
import { planeAt } from '../../../src/core/inspect/thin/sectionAt.ts';
import { thicknessOfLayers } from '../../../src/core/print/wholeLayers.ts';
import { thicknessOfLines } from '../../../src/core/print/wholeLines.ts';
import { expectClose } from '../../support/close.ts';
import { CASES, made } from '../../support/coupons.ts';
import { together } from '../../support/solids.ts';

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await Module();
  wasm.setup();
});

/** Both sides of a wall, or of a box, are rounded by up to half of it. */
const ON_GRID = { abs: 1e-3 + 1e-9, because: 'places lie on a grid of 1 µm' };

function sizeOf(loop: Loop): { readonly x: number; readonly y: number } {
  const [xs, ys] = [loop.map(({ x }) => x), loop.map(({ y }) => y)];
  return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
}

const isUpright = ({ from, to }: Strip) => from.x === to.x && from.y === to.y;

/** What is cut square to a strip half-way along it: all loops, and the place of the strip in the plane. */
function cutAcross(
  mesh: TriangleMesh,
  strip: Strip,
  foot: number,
): { readonly loops: readonly Loop[]; readonly own: Loop } {
  const { from, to } = strip;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const place: Point3 = { ...middle, z: isUpright(strip) ? foot + strip.length / 2 : 0 };
  const axis = isUpright(strip) ? { x: 0, y: 0, z: 1 } : { ...unit({ x: to.x - from.x, y: to.y - from.y }), z: 0 };
  const { loops, open } = cutByPlane(mesh, planeAt(place, axis));
  expect(open).toEqual([]);
  // A little above the plate, on which the middle of one that lies is.
  const own = loops.find((loop) => isInside([loop], { x: 0, y: isUpright(strip) ? 0 : 0.01 }));
  if (own === undefined) throw new Error(`strip ${strip.number} is not there`);
  return { loops, own };
}

const meshOf = ({ bodies }: Piece) => together(...bodies.map(solidOf));

describe.each(CASES)('%s lying %s: %s', (id, _lying, _name, asked) => {
  const piece = made(id, asked);

  it('is sound: nothing to mend, one body each, taken by a solid library with the volume that it tells', () => {
    let volume = 0;
    for (const body of piece.bodies) {
      const { points, corners } = solidOf(body);
      expect(mendMesh({ points, corners }).damage).toEqual([]);
      const mesh = new wasm.Mesh({ numProp: 3, vertProperties: Float32Array.from(points), triVerts: corners });
      const solid = new wasm.Manifold(mesh);
      expect(solid.status()).toBe('NoError');
      const parts = solid.decompose();
      expect(parts.length).toBe(1);
      volume += solid.volume();
      for (const part of [solid, ...parts]) part.delete();
    }
    // The library keeps single precision; edges that pass within half a micrometre of corners of other slabs are led through them.
    expectClose(volume, piece.volume, { rel: 1e-5, because: 'single precision and the grid of 1 µm' });
  });

  it('stands with its least corner at the origin and is as large as it says', () => {
    const { min, max } = boxOf(meshOf(piece));
    for (const side of ['x', 'y', 'z'] as const) {
      expect(min[side]).toBeCloseTo(0, 12);
      expectClose(max[side], piece.size[side], { abs: 1e-9, because: 'both are on the same grid' });
    }
  });

  it('has every strip where it says, as thick and as deep', () => {
    const mesh = meshOf(piece);
    for (const strip of piece.strips) {
      const foot = piece.bodies.at(-1)![0]!.to;
      const size = sizeOf(cutAcross(mesh, strip, foot).own);
      const [thick, deep] = [Math.min(size.x, size.y), Math.max(size.x, size.y)];
      const sides = [strip.thickness, strip.depth].toSorted((a, b) => a - b);
      expectClose(thick, sides[0]!, ON_GRID);
      expectClose(deep, sides[1]!, ON_GRID);
      const { profile } = asked;
      const set =
        strip.countOf === 'layers' ? thicknessOfLayers(strip.count, profile) : thicknessOfLines(strip.count, profile);
      expect(strip.thickness).toBe(set);
    }
  });
});

/** Strips that begin at the same line and run alike are all cut by a plane through the shortest. */
const ROWS = CASES.filter(([id]) => id === 'comb' || id === 'ladder' || id === 'radii');

describe.each(ROWS)('how many thin walls a plane cuts in %s lying %s: %s', (id, _lying, _name, asked) => {
  it('is how many strips there are', () => {
    const piece = made(id, asked);
    const shortest = piece.strips.toSorted((a, b) => a.length - b.length)[0]!;
    // The first two of the radii are the blocks.
    const bodies = id === 'radii' ? piece.bodies.slice(2) : piece.bodies;
    const { loops } = cutAcross(together(...bodies.map(solidOf)), shortest, piece.bodies.at(-1)![0]!.to);
    const walls = piece.strips.map(({ thickness, depth }) => [thickness, depth].toSorted((a, b) => a - b));
    const isWall = (loop: Loop) => {
      const size = sizeOf(loop);
      const sides = [Math.min(size.x, size.y), Math.max(size.x, size.y)];
      return walls.some((wall) => wall.every((side, i) => Math.abs(side - sides[i]!) < 2e-3));
    };
    expect(loops.filter(isWall).length).toBe(piece.strips.length);
  });
});

describe('the crease ladder', () => {
  it('has a pad more than folds', () => {
    const piece = made('creases');
    const [body] = piece.bodies;
    // The uppermost slab is the raised mark.
    const pads = body!.at(-2)!;
    expect(pads.region.length).toBe(piece.strips.length + 1);
  });
});
