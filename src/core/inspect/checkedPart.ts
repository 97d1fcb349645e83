/** What is told of a part file: what it holds, in what state, and its thin sections. */
import type { Damage } from '../geometry/mesh/damage.ts';
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import type { Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { PartFindings } from './flexure.ts';
import type { LengthUnit } from './lengthUnit.ts';

/** In what unit a part was read, and why. */
export interface UnitRead {
  readonly unit: LengthUnit;
  /** `stated` by the file, `told` by the user, `sized`: the one in which the part is of a size that printers print. */
  readonly by: 'stated' | 'told' | 'sized';
  /** Other units in which the size is likely as well, the likelier first; the user is asked where there are any. */
  readonly orElse: readonly LengthUnit[];
}

/** Figures of the whole part [mm, mm², mm³], after mending. */
export interface PartFacts {
  readonly triangles: number;
  readonly vertices: number;
  readonly bodies: number;
  readonly box: Box3;
  readonly area: number;
  readonly volume: number;
}

export interface CheckedPart {
  readonly format: string;
  readonly solids: readonly string[];
  readonly unit: UnitRead;
  readonly facts: PartFacts;
  readonly damage: readonly Damage[];
  readonly findings: PartFindings;
  /** The thickest that was looked for [mm]. */
  readonly thickest: Mm;
  readonly notes: readonly Problem[];
}
