import Module, { type ManifoldToplevel } from 'manifold-3d';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Slab } from '../../src/core/coupons/piece.ts';
import { solidOf } from '../../src/core/coupons/solidOf.ts';
import { unite } from '../../src/core/geometry/clipping.ts';
import { loopArea, type Loop } from '../../src/core/geometry/loop.ts';
import { meshFigures } from '../../src/core/geometry/mesh/meshFigures.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { expectClose } from '../support/close.ts';
import { arc, rectangle } from '../support/solids.ts';
import '../support/seed.ts';

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await Module();
  wasm.setup();
});

/** Every side of a triangle that has no triangle on its other side to match it. */
function unmatched({ corners }: TriangleMesh): readonly string[] {
  const sides = new Map<string, number>();
  for (let i = 0; i < corners.length; i += 3) {
    for (const [k, next] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      // prettier-ignore
      const [a, b] = [corners[i + k]!, corners[i + next]!];
      const [key, sign] = a < b ? [`${a} ${b}`, 1] : [`${b} ${a}`, -1];
      sides.set(key, (sides.get(key) ?? 0) + sign);
    }
  }
  return [...sides].filter(([, sum]) => sum !== 0).map(([key]) => key);
}

const volumeOf = (body: readonly Slab[]) =>
  body.reduce((sum, { from, to, region }) => sum + (to - from) * unite(region).reduce((a, l) => a + loopArea(l), 0), 0);

/** Steps of 1 mm make edges that touch and lie on one another; the odd micrometre makes slivers. */
const place = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.constantFrom(0, 0, 0, 0.001, -0.001, 0.4)).map(([a, b]) => a + b); // prettier-ignore
const size = fc.integer({ min: 1, max: 8 });
const box = fc.tuple(place, place, size, size).map(([x, y, w, h]): Loop => rectangle(x, y, w, h));
const disc = fc.tuple(place, place, size).map(([x, y, r]): Loop => arc(x, y, r / 2, 0, 2 * Math.PI, 24).slice(0, -1));
const wedge = fc
  .tuple(place, place, size, fc.integer({ min: 1, max: 11 }))
  .map(([x, y, r, twelfths]): Loop => [{ x, y }, ...arc(x, y, r, 0.2, 0.2 + (twelfths * Math.PI) / 6, 17)]);
const region = fc.array(fc.oneof(box, disc, wedge), { minLength: 1, maxLength: 6 });
const stack = fc.array(fc.tuple(region, size, fc.boolean()), { minLength: 1, maxLength: 4 }).map((slabs) => {
  let from = 0;
  return slabs.map(([loops, height, isUnited]): Slab => {
    const slab = { from, to: from + height / 4, region: isUnited ? unite(loops) : loops };
    from = slab.to;
    return slab;
  });
});

describe('the solid of any stack of slabs', () => {
  it('is closed and wound alike everywhere, and encloses what the slabs hold', () => {
    fc.assert(
      fc.property(stack, (body) => {
        const mesh = solidOf(body);
        expect(unmatched(mesh)).toEqual([]);
        const { volume } = meshFigures(mesh);
        // 6 regions of 50 mm of outline, moved by up to 0.7 µm over 2 mm of height, in each of 4 slabs.
        expectClose(volume, volumeOf(body), { abs: 6 * 50 * 0.7e-3 * 2 * 4, because: 'corners lie on a grid of 1 µm' });
      }),
      { numRuns: 300 },
    );
  });

  it('is taken by a solid library as it is', () => {
    fc.assert(
      fc.property(stack, (body) => {
        const { points, corners } = solidOf(body);
        const mesh = new wasm.Mesh({ numProp: 3, vertProperties: Float32Array.from(points), triVerts: corners });
        const solid = new wasm.Manifold(mesh);
        expect(solid.status()).toBe('NoError');
        const because = 'the library keeps coordinates in single precision';
        expectClose(solid.volume(), meshFigures({ points, corners }).volume, { rel: 1e-5, because });
        solid.delete();
      }),
      { numRuns: 60 },
    );
  });

  it('refuses slabs with a gap between them, which nobody builds', () => {
    const square = rectangle(0, 0, 1, 1);
    const body = [
      { from: 0, to: 1, region: [square] },
      { from: 1.5, to: 2, region: [square] },
    ];
    expect(() => solidOf(body)).toThrow(RangeError);
  });
});
