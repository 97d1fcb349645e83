/** What reading a part file gives, before anyone asks what is in it. */
import type { TriangleMesh } from '../../core/geometry/mesh/triangleMesh.ts';
import type { LengthUnit } from '../../core/inspect/lengthUnit.ts';
import type { Problem } from '../../core/problems.ts';

export type MeshFormat = 'STL, text' | 'STL, binary' | 'OBJ' | '3MF';

export interface MeshFile {
  readonly format: MeshFormat;
  /** Names of the solids or objects that the file tells, in its order; '' where one has none. */
  readonly solids: readonly string[];
  /** Stated by the file itself; only 3MF does. Lengths of the mesh are in it, else in whatever was meant. */
  readonly unit?: LengthUnit;
  /** All of it in one mesh, placed as it is to be printed; vertices that are exactly alike are one. */
  readonly mesh: TriangleMesh;
  /** What was left out or read with a caution. */
  readonly notes: readonly Problem[];
}

/** Called every few thousand steps with the share that is done, 0 to 1; may throw to give up. */
export type ReadProgress = (share: number) => void;
