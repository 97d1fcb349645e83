/** Laws of the finder: any leaf in any position is found once, as large as it was drawn; no mesh at all upsets it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mendMesh } from '../../src/core/geometry/mesh/mend.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { findFlexures } from '../../src/core/inspect/findFlexures.ts';
import { expectClose } from '../support/close.ts';
import { leafOutline, placed, placedMesh, pulledUp, type LeafSizes, type Placing } from '../support/solids.ts';
import { lineAngle } from '../support/thinTruth.ts';

const UP = { x: 0, y: 0, z: 1 };
const WANTED = 'what is asked of the finder';

const placings: fc.Arbitrary<Placing> = fc.record({
  axis: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })),
  angle: fc.double({ min: 0, max: 6.28, noNaN: true }),
  shift: fc.tuple(fc.integer({ min: -200, max: 200 }), fc.integer({ min: -200, max: 200 }), fc.constant(0)),
});

const leaves: fc.Arbitrary<LeafSizes & { readonly depth: number }> = fc
  .record({
    thickness: fc.integer({ min: 30, max: 200 }),
    slenderness: fc.integer({ min: 40, max: 250 }),
    rounding: fc.constantFrom(0, 0.3, 0.6, 1),
    pad: fc.integer({ min: 4, max: 14 }),
    taller: fc.integer({ min: 4, max: 9 }),
    depth: fc.integer({ min: 3, max: 14 }),
    facets: fc.integer({ min: 5, max: 14 }),
  })
  .map(({ thickness, slenderness, rounding, pad, taller, depth, facets }) => {
    const t = thickness / 100;
    const length = (t * slenderness) / 10;
    const fillet = Math.min(rounding * t, 0.3 * length);
    return { thickness: t, length, fillet, pad: Math.max(pad, 3 * t), height: taller * t + 2 * fillet, depth, facets };
  });

function find(mesh: TriangleMesh) {
  return findFlexures(mesh, { thickest: 3.4, build: UP }).flexures;
}

describe('a leaf between two pads', () => {
  it('is found once, as large as it was drawn, in any position', () => {
    fc.assert(
      fc.property(leaves, placings, (sizes, placing) => {
        const { thickness, length, depth, fillet } = sizes;
        const flexures = find(placedMesh(pulledUp(leafOutline(sizes), 0, depth), placing));
        expect(flexures.length).toBe(1);
        const [leaf] = flexures;
        expectClose(leaf!.thickness.least, thickness, { rel: 0.02, because: WANTED });
        expectClose(leaf!.length, length, { rel: 0.1, because: WANTED });
        expectClose(leaf!.depth, depth, { rel: 0.02, because: WANTED });
        const [x, y, z] = placed([0, 0, depth / 2], placing);
        const { centre } = leaf!;
        expectClose(Math.hypot(centre.x - x, centre.y - y, centre.z - z), 0, { abs: 0.02 * length, because: WANTED });
        const bent = placed([1, 0, 0], placing, true);
        expectClose(lineAngle(leaf!.along, bent), 0, { abs: Math.PI / 90, because: WANTED });
        for (const root of leaf!.roots) {
          expectClose(root.fillet, fillet, {
            abs: 0.06 * fillet + 1e-3,
            because: 'facets of a fillet are chords of it',
          });
        }
        // Even of thickness but for the fillets: it bends like its straight part and a little of them.
        expect(leaf!.bendingLength).toBeLessThanOrEqual(leaf!.length * 1.001);
        expect(leaf!.bendingLength).toBeGreaterThan(0.97 * (length - 2 * fillet));
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its figures when the file lists triangles and vertices in another order', () => {
    fc.assert(
      fc.property(leaves, fc.integer({ min: 1, max: 1e6 }), (sizes, seed) => {
        const mesh = pulledUp(leafOutline(sizes), 0, sizes.depth);
        const [a] = find(mesh);
        const [b] = find(shuffled(mesh, seed));
        for (const of of ['length', 'depth', 'bendingLength'] as const) {
          expectClose(b![of], a![of], { rel: 0.01, because: 'ties in the triangulation fall otherwise' });
        }
        expectClose(b!.thickness.least, a!.thickness.least, { rel: 1e-6, because: 'the same walls' });
      }),
      { numRuns: 20 },
    );
  });
});

/** The same surface, its triangles and vertices in another order and its corners turned round. */
function shuffled({ points, corners }: TriangleMesh, seed: number): TriangleMesh {
  const place = (i: number, n: number) => (i * (2 * ((seed % 97) + 1) + 1) + seed) % n;
  const count = points.length / 3;
  const steps = Array.from({ length: count }, (_, i) => i).toSorted((a, b) => place(a, 10_007) - place(b, 10_007));
  const moved = new Float64Array(points.length);
  const now = new Uint32Array(count);
  for (const [to, from] of steps.entries()) {
    now[from] = to;
    moved.set(points.subarray(3 * from, 3 * from + 3), 3 * to);
  }
  const triangles = Array.from({ length: corners.length / 3 }, (_, i) => [...corners.subarray(3 * i, 3 * i + 3)]);
  const sorted = triangles
    .map((triangle, i) => ({ triangle, at: place(i, 9973) }))
    .toSorted((a, b) => a.at - b.at)
    .map(({ triangle: [a = 0, b = 0, c = 0], at }) =>
      at % 3 === 0 ? [a, b, c] : at % 3 === 1 ? [b, c, a] : [c, a, b],
    );
  return { points: moved, corners: Uint32Array.from(sorted.flat(), (corner) => now[corner]!) };
}

const rubbish: fc.Arbitrary<TriangleMesh> = fc
  .tuple(
    fc.array(fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -50, max: 50, noNaN: true })), {
      minLength: 9,
      maxLength: 90,
    }),
    fc.array(fc.nat(), { minLength: 3, maxLength: 120 }),
  )
  .map(([places, numbers]) => {
    const count = Math.floor(places.length / 3);
    const whole = numbers.slice(0, 3 * Math.floor(numbers.length / 3));
    return {
      points: Float64Array.from(places.slice(0, 3 * count)),
      corners: Uint32Array.from(whole, (number) => number % count),
    };
  });

describe('any mesh', () => {
  it('gives findings that are numbers, never an exception', () => {
    fc.assert(
      fc.property(rubbish, (mesh) => {
        for (const each of [mesh, mendMesh(mesh).mesh]) {
          for (const { thickness, length, depth, bendingLength, centre } of find(each)) {
            for (const value of [thickness.least, thickness.mean, length, depth, bendingLength, centre.x, centre.y]) {
              expect(Number.isFinite(value)).toBe(true);
            }
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a known leaf with triangles taken out or turned is found as it is, or not at all', () => {
    const sizes = { thickness: 0.84, length: 6, fillet: 1, pad: 12, height: 12, facets: 8 };
    const whole = pulledUp(leafOutline(sizes), 0, 8);
    fc.assert(
      fc.property(
        fc.array(fc.nat({ max: whole.corners.length / 3 - 1 }), { minLength: 1, maxLength: 6 }),
        fc.boolean(),
        (which, turn) => {
          const triangles = Array.from({ length: whole.corners.length / 3 }, (_, i) => [
            ...whole.corners.subarray(3 * i, 3 * i + 3),
          ]);
          const hurt = triangles.flatMap(([a = 0, b = 0, c = 0], i) =>
            which.includes(i) ? (turn ? [[a, c, b]] : []) : [[a, b, c]],
          );
          const { mesh, damage } = mendMesh({ points: whole.points, corners: Uint32Array.from(hurt.flat()) });
          expect(damage.length).toBeGreaterThan(0);
          for (const { thickness, length, depth } of find(mesh)) {
            expectClose(thickness.least, 0.84, { rel: 0.02, because: WANTED });
            expectClose(length, 6, { rel: 0.1, because: WANTED });
            expectClose(depth, 8, { rel: 0.02, because: WANTED });
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
