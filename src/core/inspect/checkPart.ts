/** Everything that is told of a part file, from the mesh in it: the page's worker and the terminal do it alike. */
import { boxOf } from '../geometry/mesh/meshFigures.ts';
import { mendMesh, type Mended } from '../geometry/mesh/mend.ts';
import { scaleMesh } from '../geometry/mesh/scaleMesh.ts';
import type { TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import type { Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { CheckedPart, UnitRead } from './checkedPart.ts';
import { findFlexures, type Found } from './findFlexures.ts';
import type { Alive } from './thin/thinSpots.ts';
import { MM_IN, type LengthUnit } from './lengthUnit.ts';
import { partFacts } from './partFacts.ts';
import { unitOf } from './unitOf.ts';

/** A part as read from a file, in the unit of the file. */
export interface PartSource {
  readonly format: string;
  readonly solids: readonly string[];
  /** Where the file states one. */
  readonly unit?: LengthUnit;
  readonly mesh: TriangleMesh;
  readonly notes: readonly Problem[];
}

/** A part in millimetres, mended as far as is safe. */
export interface MendedPart extends Mended {
  readonly source: Omit<PartSource, 'mesh'>;
  readonly unit: UnitRead;
}

/**
 * The part in millimetres, mended.
 *
 * @param source - as read [unit of the file]
 * @param told - unit that the user tells [-]
 * @param alive - called between one step and the next [-]; may throw to give up
 * @returns mesh [mm] with what was wrong with it and the unit it was read in
 */
export function mendPart({ mesh, ...source }: PartSource, told?: LengthUnit, alive?: () => void): MendedPart {
  const { min, max } = boxOf(mesh);
  const longest = Math.max(max.x - min.x, max.y - min.y, max.z - min.z);
  const unit = unitOf(longest, source.unit, told);
  return { ...mendMesh(scaleMesh(mesh, MM_IN[unit.unit]), alive), source, unit };
}

/**
 * Checks a mended part. The build direction is that of the file, +z.
 *
 * @param part - mended [mm]
 * @param thickest - the thickest that counts as thin [mm], > 0
 * @param alive - called every few milliseconds with the share that is done [-]; may throw to give up
 * @param found - hears how many thin sections there are [-] whenever there are more
 * @returns facts, damage and findings [mm]
 */
export function checkPart(
  { mesh, damage, source, unit }: MendedPart,
  thickest: Mm,
  alive?: Alive,
  found?: Found,
): CheckedPart {
  const { format, solids, notes } = source;
  const findings = findFlexures(mesh, { thickest, build: { x: 0, y: 0, z: 1 } }, alive, found);
  return { format, solids, unit, facts: partFacts(mesh), damage, findings, thickest, notes };
}
