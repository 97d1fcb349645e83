import type { Assessment } from '../../core/design/assessment.ts';
import { findFamily } from '../../core/flexures/known.ts';
import type { Path } from '../../core/geometry/outline.ts';

/** Closed outlines of the undeformed joint [mm]: its plan where it has one, else with the thickness that bends. */
export function outlineOf({ joint, sizes, section }: Assessment): readonly Path[] {
  const family = findFamily(joint.family);
  return family?.plan?.(sizes) ?? family?.outline?.(sizes, section.thickness) ?? [];
}
