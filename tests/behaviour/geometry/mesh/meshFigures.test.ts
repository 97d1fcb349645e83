import { describe, expect, it } from 'vitest';
import { boxOf, diagonalOf, meshFigures, middleOf } from '../../../../src/core/geometry/mesh/meshFigures.ts';
import { scaleMesh } from '../../../../src/core/geometry/mesh/scaleMesh.ts';
import { expectClose } from '../../../support/close.ts';
import { boxMesh, looseMesh } from '../../../support/meshes.ts';
import { arc, placedMesh, pulledUp, rectangle } from '../../../support/solids.ts';

const EXACT = { rel: 1e-12, because: 'round-off of a few dozen operations' } as const;

describe('figures of a mesh', () => {
  it('of a box are its sides, its faces and their product', () => {
    const { box, area, volume } = meshFigures(boxMesh(2, 3, 6));
    expect(box).toEqual({ min: { x: 0, y: 0, z: 0 }, max: { x: 2, y: 3, z: 6 } });
    expect([diagonalOf(box), middleOf(box)]).toEqual([7, { x: 1, y: 1.5, z: 3 }]);
    expectClose(area, 2 * (6 + 12 + 18), EXACT);
    expectClose(volume, 36, EXACT);
  });

  it('of a many-sided prism are its outline times its height', () => {
    // Radius 5, n sides: ½ n r² sin(2π/n) the face, 2 n r sin(π/n) the way round.
    const n = 12;
    const { area, volume } = meshFigures(pulledUp(arc(3, -2, 5, 0, 2 * Math.PI, n).slice(0, n), 1, 9));
    const face = (n / 2) * 25 * Math.sin((2 * Math.PI) / n);
    expectClose(volume, 8 * face, EXACT);
    expectClose(area, 2 * face + 8 * n * 10 * Math.sin(Math.PI / n), EXACT);
  });

  it('leave out a hole', () => {
    const plate = pulledUp(rectangle(0, 0, 10, 8), 0, 2, [rectangle(2, 2, 3, 4).toReversed()]);
    const { area, volume } = meshFigures(plate);
    expectClose(volume, 2 * (80 - 12), EXACT);
    expectClose(area, 2 * (80 - 12) + 2 * (36 + 14), EXACT);
  });

  it('keep their digits far from the origin', () => {
    const far = placedMesh(boxMesh(2, 3, 6), { axis: [0, 0, 1], angle: 0, shift: [1e6, -1e6, 1e6] });
    // Coordinates of a million keep ten decimals; volumes under triangles from the origin would keep two of the product.
    expectClose(meshFigures(far).volume, 36, { abs: 1e-7, because: 'coordinates are rounded to 10⁻¹⁰ at 10⁶' });
  });

  it('of nothing are nothing; vertices that no triangle uses count for nothing', () => {
    const none = { points: Float64Array.from([9, 9, 9]), corners: new Uint32Array() };
    expect(meshFigures(none)).toEqual({
      box: { min: { x: 9, y: 9, z: 9 }, max: { x: 9, y: 9, z: 9 } },
      area: 0,
      volume: 0,
    });
    const loose = looseMesh([0, 0, 0, 1, 0, 0, 0, 1, 0]);
    const spare = { points: Float64Array.from([...loose.points, 50, 50, 50]), corners: loose.corners };
    expect(boxOf(spare).max).toEqual({ x: 1, y: 1, z: 0 });
  });

  it('scale by the power of their kind, and by nothing else than a size', () => {
    const inches = boxMesh(2, 3, 6);
    const { area, volume } = meshFigures(scaleMesh(inches, 25.4));
    expectClose(area, 72 * 25.4 ** 2, EXACT);
    expectClose(volume, 36 * 25.4 ** 3, EXACT);
    expect(scaleMesh(inches, 1)).toBe(inches);
    for (const by of [0, -1, Number.NaN]) expect(() => scaleMesh(inches, by)).toThrow(RangeError);
  });
});
