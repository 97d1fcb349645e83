import type { Damage } from './damage.ts';
import type { MeshEdges } from './edges.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** A mesh while it is mended, without triangles of repeated vertices. */
export interface Mending {
  readonly mesh: TriangleMesh;
  readonly edges: MeshEdges;
  readonly damage: readonly Damage[];
}
