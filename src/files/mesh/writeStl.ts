import { cross3, from3, unit3 } from '../../core/geometry/mesh/vector3.ts';
import { pointOf, triangleCount, type Point3 } from '../../core/geometry/mesh/triangleMesh.ts';
import type { WrittenSolid } from './writtenSolid.ts';

const HEAD_BYTES = 80;
const TRIANGLE_BYTES = 50;
/** Must not begin with “solid”, by which files of text are known. */
const HEAD = 'Test pieces by Bendbook, lengths in mm';

/**
 * Solids as one binary STL file, in mm, always the same bytes for the same solids.
 *
 * @param solids - solids and where each stands [mm]
 * @returns the file
 *
 * Source: part-files.
 */
export function writeStl(solids: readonly WrittenSolid[]): Uint8Array {
  const count = solids.reduce((sum, { mesh }) => sum + triangleCount(mesh), 0);
  const bytes = new Uint8Array(HEAD_BYTES + 4 + TRIANGLE_BYTES * count);
  const view = new DataView(bytes.buffer);
  bytes.fill(0x20, 0, HEAD_BYTES);
  bytes.set(new TextEncoder().encode(HEAD));
  view.setUint32(HEAD_BYTES, count, true);
  let offset = HEAD_BYTES + 4;
  for (const { mesh, at } of solids) {
    for (let corner = 0; corner < mesh.corners.length; corner += 3) {
      const places = [0, 1, 2].map((k) => {
        const { x, y, z } = pointOf(mesh, mesh.corners[corner + k]!);
        return { x: x + at.x, y: y + at.y, z };
      }) as [Point3, Point3, Point3];
      writeTriangle(view, offset, places);
      offset += TRIANGLE_BYTES;
    }
  }
  return bytes;
}

function writeTriangle(view: DataView, offset: number, [a, b, c]: readonly [Point3, Point3, Point3]): void {
  const normal = unit3(cross3(from3(a, b), from3(a, c))) ?? { x: 0, y: 0, z: 0 };
  for (const [i, { x, y, z }] of [normal, a, b, c].entries()) {
    view.setFloat32(offset + 12 * i, x, true);
    view.setFloat32(offset + 12 * i + 4, y, true);
    view.setFloat32(offset + 12 * i + 8, z, true);
  }
}
