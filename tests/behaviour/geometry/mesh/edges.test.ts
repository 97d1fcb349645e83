import { describe, expect, it } from 'vitest';
import { CROWDED, edgesOf, nextHalf, OPEN } from '../../../../src/core/geometry/mesh/edges.ts';
import { shellFigures, shellsOf, windingsRound } from '../../../../src/core/geometry/mesh/shells.ts';
import type { TriangleMesh } from '../../../../src/core/geometry/mesh/triangleMesh.ts';
import { turnedOver } from '../../../../src/core/geometry/mesh/winding.ts';
import { expectClose } from '../../../support/close.ts';
import { boxMesh } from '../../../support/meshes.ts';
import { together } from '../../../support/solids.ts';

const without = ({ points, corners }: TriangleMesh, ...gone: readonly number[]): TriangleMesh => ({
  points,
  corners: corners.filter((_, i) => !gone.includes(Math.floor(i / 3))),
});
const all = (count: number) => Uint32Array.from({ length: count }, (_, i) => i);

/** A box on another's upper edge, as a file has it that joins equal vertices: four triangles meet at that edge. */
function edgeToEdge(): TriangleMesh {
  const corners = [...boxMesh(2, 3, 1).corners];
  // Corners 6 and 7 of the lower box are corners 1 and 0 of the upper one, which lies beyond them.
  const upper = corners.map((corner) => ({ 0: 7, 1: 6 })[corner] ?? corner + 8);
  const points = [...boxMesh(2, 3, 1).points, ...boxMesh(2, 3, 1).points].map((value, i) =>
    i < 24 ? value : value + [0, 3, 1][i % 3]!,
  );
  return { points: Float64Array.from(points), corners: Uint32Array.from([...corners, ...upper]) };
}

describe('edges', () => {
  it('of a box are eighteen, each of two triangles that run along it in opposite ways', () => {
    const mesh = boxMesh(1, 2, 3);
    const edges = edgesOf(mesh);
    expect([edges.starts.length - 1, edges.open, edges.crowded, edges.clashing]).toEqual([18, 0, 0, 0]);
    edges.partner.forEach((other, half) => {
      expect(edges.partner[other]).toBe(half);
      expect(mesh.corners[other]).toBe(mesh.corners[nextHalf(half)]);
    });
  });

  it('round what is missing are open', () => {
    const edges = edgesOf(without(boxMesh(1, 2, 3), 0));
    expect([edges.open, edges.partner.filter((other) => other === OPEN).length]).toEqual([3, 3]);
  });

  it('of four triangles are crowded', () => {
    const edges = edgesOf(edgeToEdge());
    expect([edges.open, edges.crowded]).toEqual([0, 1]);
    expect(edges.partner.filter((other) => other === CROWDED)).toHaveLength(4);
  });

  it('of a flipped triangle clash', () => {
    const flipped = turnedOver(
      boxMesh(1, 2, 3),
      Uint8Array.from({ length: 12 }, (_, i) => (i === 5 ? 1 : 0)),
    );
    expect(edgesOf(flipped).clashing).toBe(3);
  });
});

describe('shells', () => {
  it('hang together over any edge, or over edges of two triangles only', () => {
    const edges = edgesOf(edgeToEdge());
    expect(shellsOf(edges).count).toBe(1);
    const apart = shellsOf(edges, (meeting) => meeting === 2);
    expect(apart.count).toBe(2);
    expect([...apart.shellOf]).toEqual([...Array(12).fill(0), ...Array(12).fill(1)]);
  });

  it('have an area and a volume each', () => {
    const mesh = together(boxMesh(1, 2, 3), boxMesh(2, 2, 2));
    const edges = edgesOf(mesh);
    const { triangles, rim, area, volume } = shellFigures(mesh, edges, shellsOf(edges));
    expect([[...triangles], [...rim]]).toEqual([
      [12, 12],
      [0, 0],
    ]);
    const exact = { rel: 1e-12, because: 'round-off' } as const;
    [22, 24].forEach((value, shell) => expectClose(area[shell]!, value, exact));
    [6, 8].forEach((value, shell) => expectClose(volume[shell]!, value, exact));
  });

  it('with a hole enclose what they would with the hole closed', () => {
    const open = without(boxMesh(2, 2, 2), 2, 3);
    const edges = edgesOf(open);
    const { rim, volume } = shellFigures(open, edges, shellsOf(edges));
    expect(rim[0]).toBe(4);
    expectClose(volume[0]!, 8, { rel: 1e-12, because: 'round-off; the rim is flat' });
  });

  it('wind once round what is inside, not at all round what is outside, and half round a place in an open face', () => {
    const mesh = boxMesh(2, 2, 2);
    const exact = { abs: 1e-12, because: 'round-off of twelve angles' } as const;
    expectClose(windingsRound(mesh, all(12), { x: 0.3, y: 1.7, z: 0.4 }), 1, exact);
    expectClose(windingsRound(mesh, all(12), { x: 2.3, y: 1.7, z: 0.4 }), 0, exact);
    expectClose(windingsRound(without(mesh, 2, 3), all(10), { x: 0.9, y: 0.8, z: 2 }), 0.5, exact);
  });
});
