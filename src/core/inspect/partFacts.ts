import { edgesOf } from '../geometry/mesh/edges.ts';
import { meshFigures } from '../geometry/mesh/meshFigures.ts';
import { shellFigures, shellsOf } from '../geometry/mesh/shells.ts';
import { triangleCount, type TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import type { PartFacts } from './checkedPart.ts';

/**
 * Figures of the whole part. Bodies are counted by their outsides: a closed surface that looks inward bounds a void.
 *
 * @param mesh - a mended part [mm]
 * @returns counts, box [mm], area [mm²] and volume [mm³]
 */
export function partFacts(mesh: TriangleMesh): PartFacts {
  const { box, area, volume } = meshFigures(mesh);
  return {
    triangles: triangleCount(mesh),
    vertices: mesh.points.length / 3,
    bodies: bodiesOf(mesh),
    box,
    area,
    volume,
  };
}

function bodiesOf(mesh: TriangleMesh): number {
  const edges = edgesOf(mesh);
  const shells = shellsOf(edges);
  const { volume, rim } = shellFigures(mesh, edges, shells);
  return volume.reduce((count, value, shell) => (rim[shell] === 0 && value < 0 ? count : count + 1), 0);
}
