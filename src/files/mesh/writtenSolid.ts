import type { TriangleMesh } from '../../core/geometry/mesh/triangleMesh.ts';
import type { Point } from '../../core/geometry/outline.ts';

/** A solid with its name, and where on the plate its own origin goes [mm]. */
export interface WrittenSolid {
  readonly name: string;
  readonly mesh: TriangleMesh;
  readonly at: Point;
}
