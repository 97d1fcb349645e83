import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgesOf } from '../../src/core/geometry/mesh/edges.ts';
import { mendMesh } from '../../src/core/geometry/mesh/mend.ts';
import { diagonalOf, meshFigures } from '../../src/core/geometry/mesh/meshFigures.ts';
import { shellFigures, shellsOf } from '../../src/core/geometry/mesh/shells.ts';
import { pointOf, type TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { turnedOver } from '../../src/core/geometry/mesh/winding.ts';
import { PLATE_UPS } from '../../src/core/inspect/judged.ts';
import { drawPart } from '../../src/core/inspect/picture/drawPart.ts';
import { toPicture, valueOf } from '../../src/core/inspect/picture/placing.ts';
import { turnPoint } from '../../src/core/inspect/turnPart.ts';
import { expectClose } from '../support/close.ts';
import { boxMesh } from '../support/meshes.ts';
import { arc, leafOutline, placedMesh, pulledUp, rectangle, type Placing } from '../support/solids.ts';

const PARTS = [
  boxMesh(40, 20, 10),
  pulledUp(leafOutline({ thickness: 0.84, length: 6, fillet: 1, pad: 12, height: 10, facets: 6 }), 0, 8),
  pulledUp(arc(0, 0, 12, 0, 6, 20), 0, 5),
  pulledUp(rectangle(0, 0, 30, 20), 0, 4, [rectangle(5, 5, 12, 9).toReversed()]),
] as const;
const part = fc.constantFrom(...PARTS);

const tenth = (most: number) => fc.integer({ min: -10 * most, max: 10 * most }).map((n) => n / 10);
const placing: fc.Arbitrary<Placing> = fc
  .record({
    axis: fc.tuple(tenth(1), tenth(1), tenth(1)),
    angleDeg: tenth(180),
    shift: fc.tuple(tenth(200), tenth(200), tenth(200)),
  })
  .filter(({ axis }) => Math.hypot(...axis) > 0.1)
  .map(({ axis, angleDeg, shift }) => ({ axis, angle: (angleDeg * Math.PI) / 180, shift }));

/** Any triangles on a few places of a small grid: they meet, double, collapse, cross and clash in every way. */
const tangle: fc.Arbitrary<TriangleMesh> = fc
  .record({
    places: fc.uniqueArray(fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 0, max: 3 }))), {
      minLength: 1,
      maxLength: 12,
      selector: (place) => place.join(),
    }),
    picks: fc.array(fc.nat(), { maxLength: 120 }),
  })
  .map(({ places, picks }) => ({
    points: Float64Array.from(places.flat()),
    corners: Uint32Array.from(picks.slice(0, picks.length - (picks.length % 3)), (pick) => pick % places.length),
  }));

const hasArea = (mesh: TriangleMesh) => meshFigures(mesh).area > 0;

describe('figures of a mesh', () => {
  it('do not change where it is moved and turned', () => {
    fc.assert(
      fc.property(part, placing, (mesh, moved) => {
        const [before, after] = [meshFigures(mesh), meshFigures(placedMesh(mesh, moved))];
        const same = { rel: 1e-10, because: 'coordinates up to 240 are turned and rounded to 10⁻¹⁴' } as const;
        expectClose(after.volume, before.volume, same);
        expectClose(after.area, before.area, same);
      }),
    );
  });
});

describe('edges of any triangles', () => {
  const usable = tangle.map(({ points, corners }) => ({
    points,
    corners: corners.filter((_, i) => {
      const own = corners.subarray(i - (i % 3), i - (i % 3) + 3);
      return new Set(own).size === 3;
    }),
  }));

  it('are those that a list by name finds', () => {
    fc.assert(
      fc.property(usable, (mesh) => {
        const byName = new Map<string, string[]>();
        mesh.corners.forEach((from, half) => {
          const to = mesh.corners[half % 3 === 2 ? half - 2 : half + 1]!;
          const name = [Math.min(from, to), Math.max(from, to)].join();
          byName.set(name, [...(byName.get(name) ?? []), `${from}`]);
        });
        const all = [...byName.values()];
        const { starts, open, crowded, clashing } = edgesOf(mesh);
        expect([starts.length - 1, open, crowded, clashing]).toEqual([
          all.length,
          all.filter((one) => one.length === 1).length,
          all.filter((one) => one.length > 2).length,
          all.filter((one) => one.length === 2 && one[0] === one[1]).length,
        ]);
      }),
    );
  });

  it('part the area and the triangles among shells', () => {
    fc.assert(
      fc.property(usable, (mesh) => {
        const edges = edgesOf(mesh);
        const { area, triangles } = shellFigures(mesh, edges, shellsOf(edges));
        expect(triangles.reduce((sum, count) => sum + count, 0)).toBe(mesh.corners.length / 3);
        const whole = meshFigures(mesh).area;
        expectClose(
          area.reduce((sum, one) => sum + one, 0),
          whole,
          { abs: 1e-12 * (1 + whole), because: 'round-off' },
        );
      }),
    );
  });
});

describe('mending', () => {
  it('ends for any triangles, and tells no more mended than found', () => {
    fc.assert(
      fc.property(tangle, (mesh) => {
        const { mesh: mended, damage } = mendMesh(mesh);
        for (const { kind, count, at, mended: done } of damage) {
          expect([kind, Number.isInteger(count), count > 0, done >= 0 && done <= count]).toEqual([
            kind,
            true,
            true,
            true,
          ]);
          expect([at.x, at.y, at.z].every((value) => value >= 0 && value <= 3)).toBe(true);
        }
        expect(new Set(damage.map(({ kind }) => kind)).size).toBe(damage.length);
        expect(mended.corners.every((corner) => corner < mended.points.length / 3)).toBe(true);
        const left = (kind: string) =>
          damage.filter((one) => one.kind === kind).reduce((n, d) => n + d.count - d.mended, 0);
        const edges = edgesOf(mended);
        expect([edges.open, edges.crowded, edges.clashing]).toEqual([
          left('open-edges'),
          left('crowded-edges'),
          left('flipped'),
        ]);
      }),
      { numRuns: 1000 },
    );
  });

  it('leaves what it told to be sound as it is', () => {
    fc.assert(
      fc.property(tangle, (mesh) => {
        const { mesh: mended, damage } = mendMesh(mesh);
        if (damage.some(({ count, mended: done }) => done < count)) return;
        expect(mendMesh(mended)).toEqual({ mesh: mended, damage: [] });
      }),
      { numRuns: 500 },
    );
  });

  it('gives back a part that was turned over in places, doubled in others and torn into loose triangles', () => {
    fc.assert(
      fc.property(
        part,
        placing,
        fc.array(fc.nat(), { maxLength: 6 }),
        fc.array(fc.nat(), { maxLength: 6 }),
        (mesh, moved, flips, doubles) => {
          const whole = placedMesh(mesh, moved);
          const count = whole.corners.length / 3;
          const isTurned = new Uint8Array(count);
          for (const flip of flips) isTurned[flip % count] = 1;
          const corners = [...turnedOver(whole, isTurned).corners];
          for (const double of doubles)
            corners.push(...whole.corners.subarray(3 * (double % count), 3 * (double % count) + 3));
          const hurt = { points: whole.points, corners: Uint32Array.from(corners) };
          const facts = meshFigures(mendMesh(hurt).mesh);
          expectClose(facts.volume, meshFigures(mesh).volume, {
            rel: 1e-10,
            because: 'coordinates are turned and rounded',
          });
          const torn = Float64Array.from(
            [...corners].flatMap((corner) => [...whole.points.subarray(3 * corner, 3 * corner + 3)]),
          );
          const moving = diagonalOf(meshFigures(whole).box) * 1e-7;
          const loose = {
            points: torn.map((value, i) => value + moving * (((i * 31) % 7) / 7 - 0.5)),
            corners: Uint32Array.from(corners, (_, i) => i),
          };
          expectClose(meshFigures(mendMesh(loose).mesh).volume, meshFigures(mesh).volume, {
            rel: 1e-5,
            because: 'vertices were moved by half of 10⁻⁷ of the diagonal, which is 10⁻⁵ of the thinnest leaf',
          });
        },
      ),
      { numRuns: 40 },
    );
  });
});

const draw = (mesh: TriangleMesh, up: (typeof PLATE_UPS)[number]) =>
  drawPart(mesh, up, { room: { width: 90, height: 60 }, pixelsPerMm: 5 }, () => undefined);

describe('the picture', () => {
  const up = fc.constantFrom(...PLATE_UPS);

  it('of any part however turned lies within its frame, and fits its room', () => {
    fc.assert(
      fc.property(part, placing, up, (mesh, moved, direction) => {
        const { placing: at, lines, isCut } = draw(placedMesh(mesh, moved), direction);
        expect([at.width <= 90.001, at.height <= 60.001, isCut]).toEqual([true, true, false]);
        expect(lines.length).toBeGreaterThan(0);
        for (const { x, y } of lines.flatMap(({ points }) => points)) {
          expect(x > -1e-6 && y > -1e-6 && x < at.width + 1e-6 && y < at.height + 1e-6).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of a box shows nine edges wherever three faces are well seen', () => {
    fc.assert(
      fc.property(placing, up, (moved, direction) => {
        const box = placedMesh(boxMesh(20, 20, 20), moved);
        const { placing: at, lines } = draw(box, direction);
        const seen = [1, 3, 4].map((vertex) => {
          const [a, b] = [pointOf(box, 0), pointOf(box, vertex)];
          return Math.abs(valueOf(at.nearer, b) - valueOf(at.nearer, a)) / 20;
        });
        fc.pre(Math.min(...seen) > 0.15);
        expect(lines.reduce((sum, { points }) => sum + points.length - 1, 0)).toBe(9);
        const corners = Array.from({ length: 8 }, (_, i) => toPicture(at, pointOf(box, i)));
        for (const { x, y } of lines.flatMap(({ points }) => points)) {
          expect(Math.min(...corners.map((corner) => Math.hypot(corner.x - x, corner.y - y)))).toBeLessThan(0.05);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of any triangles ends', () => {
    fc.assert(
      fc.property(tangle.filter(hasArea), up, (mesh, direction) => {
        const { lines, tones } = draw(mesh, direction);
        expect(
          lines.flatMap(({ points }) => points).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)),
        ).toBe(true);
        expect(tones.pixels.length).toBe(tones.width * tones.height);
      }),
      { numRuns: 60 },
    );
  });

  it('has up upwards: a point above another stands plumb over it', () => {
    fc.assert(
      fc.property(up, tenth(50), (direction, height) => {
        const { placing: at } = draw(boxMesh(30, 20, 10), direction);
        const over = PLATE_UPS.map((one) => ({ one, point: turnPoint(unit(one, height), direction) })).find(
          ({ point }) => point.x === 0 && point.y === 0 && point.z === height,
        )!;
        const [foot, top] = [toPicture(at, { x: 0, y: 0, z: 0 }), toPicture(at, unit(over.one, height))];
        expect(over.one).toBe(height === 0 ? over.one : direction);
        expectClose(top.x, foot.x, { abs: 1e-12, because: 'round-off' });
        expectClose(foot.y - top.y, height * at.scale, { abs: 1e-9, because: 'round-off' });
      }),
    );
  });
});

function unit(direction: (typeof PLATE_UPS)[number], length: number) {
  const signed = direction.startsWith('-') ? 0 - length : length;
  const on = (axis: string) => (direction.endsWith(axis) ? signed : 0);
  return { x: on('x'), y: on('y'), z: on('z') };
}
