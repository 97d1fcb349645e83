import { describe, expect, it } from 'vitest';
import { edgesOf } from '../../../../src/core/geometry/mesh/edges.ts';
import { mendMesh } from '../../../../src/core/geometry/mesh/mend.ts';
import { meshFigures } from '../../../../src/core/geometry/mesh/meshFigures.ts';
import type { TriangleMesh } from '../../../../src/core/geometry/mesh/triangleMesh.ts';
import { turnedOver } from '../../../../src/core/geometry/mesh/winding.ts';
import { expectClose } from '../../../support/close.ts';
import { boxMesh, looseMesh } from '../../../support/meshes.ts';
import { arc, placedMesh, pulledUp, rectangle, together } from '../../../support/solids.ts';

const EXACT = { rel: 1e-9, because: 'round-off of some hundred triangles' } as const;
const volumeOf = (mesh: TriangleMesh) => meshFigures(mesh).volume;
const changed = (
  { points, corners }: TriangleMesh,
  change: (corners: number[]) => readonly number[],
): TriangleMesh => ({
  points,
  corners: Uint32Array.from(change([...corners])),
});
const shifted = (mesh: TriangleMesh, x: number, y: number, z: number) =>
  placedMesh(mesh, { axis: [0, 0, 1], angle: 0, shift: [x, y, z] });
const turned = (mesh: TriangleMesh, ...triangles: readonly number[]) =>
  turnedOver(
    mesh,
    Uint8Array.from({ length: mesh.corners.length / 3 }, (_, i) => (triangles.includes(i) ? 1 : 0)),
  );
const inverted = (mesh: TriangleMesh) => turned(mesh, ...Array.from({ length: mesh.corners.length / 3 }, (_, i) => i));
const told = (mesh: TriangleMesh) =>
  mendMesh(mesh).damage.map(({ kind, count, mended }) => `${kind} ${count}, ${mended} mended`);
/** Each triangle with vertices of its own, moved by up to so much. */
const loosened = ({ points, corners }: TriangleMesh, by: number): TriangleMesh => ({
  points: Float64Array.from(
    [...corners].flatMap((corner, i) =>
      [0, 1, 2].map((axis) => points[3 * corner + axis]! + by * (((i * 7 + axis * 3) % 5) / 4 - 0.5)),
    ),
  ),
  corners: corners.map((_, i) => i),
});
/** Equal vertices made one, as readers do. */
function joinedEqual({ points, corners }: TriangleMesh): TriangleMesh {
  const key = (i: number) => points.slice(3 * i, 3 * i + 3).join();
  const keys = [...new Set(Array.from({ length: points.length / 3 }, (_, i) => key(i)))];
  return {
    points: Float64Array.from(keys.flatMap((one) => one.split(',').map(Number))),
    corners: corners.map((corner) => keys.indexOf(key(corner))),
  };
}
/** Without the triangles that lie at a height. */
const withoutLevel = ({ points, corners }: TriangleMesh, z: number): TriangleMesh => ({
  points,
  corners: corners.filter((_, i) => [0, 1, 2].some((k) => points[3 * corners[i - (i % 3) + k]! + 2] !== z)),
});
const stop = () => {
  throw new Error('enough');
};
const round = (sides: number) => pulledUp(arc(0, 0, 10, 0, 2 * Math.PI, sides).slice(0, sides), 0, 100);

describe('mending', () => {
  it('leaves a sound part as it is, and no part as none', () => {
    const box = boxMesh(1, 2, 3);
    expect(mendMesh(box)).toEqual({ mesh: box, damage: [] });
    expect(mendMesh(box).mesh).toBe(box);
    const none = { points: new Float64Array(), corners: new Uint32Array() };
    expect(mendMesh(none)).toEqual({ mesh: none, damage: [] });
  });

  it('drops triangles of repeated vertices and keeps those without an area that hold the surface together', () => {
    expect(told(changed(boxMesh(1, 2, 3), (corners) => [...corners, 3, 3, 5, 1, 2, 1]))).toEqual([
      'degenerate 2, 2 mended',
    ]);
    // A vertex in the middle of an edge that only one of the two triangles there knows, and a flat one that joins it.
    const box = boxMesh(2, 2, 2);
    const split = {
      points: Float64Array.from([...box.points, 1, 0, 0]),
      corners: Uint32Array.from(
        [...box.corners].flatMap((c, i) => (i === 12 ? [0, 8, 5, 8, 1, 5, 0, 1, 8] : i < 15 && i > 12 ? [] : [c])),
      ),
    };
    const { mesh, damage } = mendMesh(split);
    expect(damage).toEqual([{ kind: 'degenerate', count: 1, mended: 0, at: { x: 1, y: 0, z: 0 } }]);
    expect(mesh.corners.length).toBe(3 * 14);
  });

  it('drops what is there twice, wound either way', () => {
    const double = changed(boxMesh(1, 2, 3), (corners) => [...corners, ...corners.slice(0, 6), 5, 4, 6]);
    // Five edges of the two on the bottom and three of the one on top.
    expect(told(double)).toEqual(['crowded-edges 8, 8 mended', 'duplicate 3, 3 mended']);
    expect(volumeOf(mendMesh(double).mesh)).toBe(volumeOf(boxMesh(1, 2, 3)));
  });

  it('drops a sheet without thickness where nothing is left open without it', () => {
    const fin = changed(
      { points: Float64Array.from([...boxMesh(1, 2, 3).points, 4, 4, 4]), corners: boxMesh(1, 2, 3).corners },
      (corners) => [...corners, 1, 2, 8, 2, 1, 8],
    );
    const { mesh } = mendMesh(fin);
    expect(told(fin)).toEqual(['crowded-edges 1, 1 mended', 'duplicate 1, 1 mended']);
    expect([mesh.corners.length, mesh.points.length]).toEqual([36, 24]);
  });

  it('joins vertices that single precision cannot tell apart, and says where the first lies', () => {
    const box = boxMesh(10, 20, 30);
    const { mesh, damage } = mendMesh(loosened(box, 1e-5));
    expect(damage.map(({ kind, count, mended }) => [kind, count, mended])).toEqual([
      ['open-edges', 36, 36],
      ['unjoined', 28, 28],
    ]);
    expect([mesh.points.length, mesh.corners.length]).toEqual([24, 36]);
    expectClose(volumeOf(mesh), 6000, { rel: 1e-5, because: 'vertices were moved by 5·10⁻⁶ of 10' });
    // 2·10⁻⁶ of the diagonal apart: joined by the wider of the two tolerances.
    expect(told(loosened(box, 2e-4)).at(-1)).toBe('unjoined 28, 28 mended');
    // A hair's breadth is not round-off.
    expect(told(loosened(box, 0.02))).toEqual(['open-edges 36, 0 mended']);
  });

  it('lets vertices into edges on which they lie', () => {
    // Two blocks on one another; the seam of the lower one has a vertex more on two of its sides.
    const outline = [
      ...rectangle(0, 0, 4, 2).slice(0, 1),
      { x: 1, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 1 },
      ...rectangle(0, 0, 4, 2).slice(2),
    ];
    const lower = withoutLevel(pulledUp(outline, 0, 1), 1);
    const seam = joinedEqual(together(lower, withoutLevel(pulledUp(rectangle(0, 0, 4, 2), 1, 2), 1)));
    const { mesh } = mendMesh(seam);
    expect(told(seam)).toEqual(['open-edges 6, 6 mended', 'unjoined 2, 2 mended']);
    expect([edgesOf(mesh).open, edgesOf(mesh).crowded, edgesOf(mesh).clashing]).toEqual([0, 0, 0]);
    expectClose(volumeOf(mesh), 16, EXACT);
    expectClose(meshFigures(mesh).area, 2 * (8 + 8 + 4), EXACT);
  });

  it('joins no vertices where no edge is open', () => {
    const near = together(boxMesh(10, 20, 30), shifted(boxMesh(10, 20, 30), 10 + 1e-6, 0, 0));
    expect(mendMesh(near).damage).toEqual([]);
  });

  it('turns the fewer where triangles are wound against each other', () => {
    const box = boxMesh(1, 2, 3);
    expect(told(turned(box, 0, 7))).toEqual(['flipped 2, 2 mended']);
    expectClose(volumeOf(mendMesh(turned(box, 0, 7)).mesh), 6, EXACT);
    // Most of it looks inward: all but two are turned, as the outside of a body is never doubtful.
    expect(told(turned(inverted(box), 0, 7))).toEqual(['flipped 10, 10 mended']);
  });

  it('turns a body that is inside out, and leaves a void', () => {
    const box = boxMesh(4, 4, 4);
    const inside = shifted(boxMesh(1, 1, 1), 1, 1, 1);
    expect(told(inverted(box))).toEqual(['inside-out 1, 1 mended']);
    expectClose(volumeOf(mendMesh(inverted(box)).mesh), 64, EXACT);
    expect(mendMesh(together(box, inverted(inside))).damage).toEqual([]);
    // The void stays as the file has it, whichever way the body round it was wound.
    expect(told(together(inverted(box), inverted(inside)))).toEqual(['inside-out 1, 1 mended']);
    expectClose(volumeOf(mendMesh(together(inverted(box), inverted(inside))).mesh), 63, EXACT);
    // Beside it, in a box of its own that is inside out, is no void.
    expect(told(together(box, inverted(shifted(inside, 9, 0, 0))))).toEqual(['inside-out 1, 1 mended']);
  });

  it('says where a surface has one side only, and leaves it', () => {
    // A band of five triangles with half a twist.
    const points = Array.from({ length: 5 }, (_, i) => [Math.cos(i * 1.2566), Math.sin(i * 1.2566), i % 2]).flat();
    const band = {
      points: Float64Array.from(points),
      corners: Uint32Array.from([0, 1, 2, 1, 3, 2, 2, 3, 4, 3, 0, 4, 4, 0, 1]),
    };
    const flipped = mendMesh(band).damage.find(({ kind }) => kind === 'flipped');
    expect(flipped?.count).toBeGreaterThan(flipped!.mended);
  });

  describe('fills', () => {
    it('missing triangles, flat ones of few sides, and ends that are small against the part', () => {
      const rod = boxMesh(2, 2, 40);
      const open = changed(rod, (corners) => corners.slice(6));
      expect(told(open)).toEqual(['open-edges 4, 4 mended']);
      expectClose(volumeOf(mendMesh(open).mesh), 160, EXACT);
      const cube = changed(boxMesh(2, 2, 2), (corners) => corners.slice(3));
      expect(told(cube)).toEqual(['open-edges 3, 3 mended']);
    });

    it('no face that is a good part of the surface: a tray stays a tray', () => {
      const tray = changed(boxMesh(20, 20, 3), (corners) => [...corners.slice(0, 6), ...corners.slice(12)]);
      expect(told(tray)).toEqual(['open-edges 4, 0 mended']);
      expect(mendMesh(tray).mesh).toBe(tray);
    });

    it('no end of many sides that is not small: a tube stays open', () => {
      expect(told(withoutLevel(round(8), 100))).toEqual(['open-edges 8, 8 mended']);
      expect(told(withoutLevel(round(12), 100))).toEqual(['open-edges 12, 0 mended']);
    });

    it('no triangle that stands alone', () => {
      const soup = looseMesh([0, 0, 0, 1, 0, 0, 0, 1, 0], [5, 5, 5, 6, 5, 5, 5, 6, 7]);
      expect(told(soup)).toEqual(['open-edges 6, 0 mended']);
    });
  });

  it('gives signs of life, and gives up where told to', () => {
    let signs = 0;
    mendMesh(boxMesh(1, 1, 1), () => (signs += 1));
    expect(signs).toBeGreaterThan(2);
    expect(() => mendMesh(boxMesh(1, 1, 1), stop)).toThrow('enough');
  });
});
