import { familyOf } from '../flexures/known.ts';
import { mechanicsOf } from '../flexures/networks.ts';
import { bandOutline } from '../geometry/band.ts';
import type { Path } from '../geometry/outline.ts';
import type { Assessment } from './assessment.ts';
import { printedLines } from './printedLines.ts';

/**
 * What a joint looks like as printed, all planes on one another: as the family draws it, from above where it has a plan, else
 * its pads and members. Paths may overlap, all counter-clockwise but for holes, so that they are filled as one.
 *
 * @param a - the joint as assessed: its kind, sizes in force [mm] and section [mm]
 * @returns closed paths [mm]
 */
export function silhouetteOf({
  joint,
  sizes,
  section,
}: Pick<Assessment, 'joint' | 'sizes' | 'section'>): readonly Path[] {
  const family = familyOf(joint);
  const drawn = family.plan?.(sizes) ?? family.outline?.(sizes, section.thickness);
  if (drawn) return drawn;
  const { drive, amount } = joint.movement;
  const network = mechanicsOf(family.id).network(sizes, section.thickness, { drive, amount, widthRatio: 1 });
  const pads = network.bodies.flatMap(({ outlines }) => outlines);
  return [...pads, ...printedLines(network).map(({ line }) => bandOutline(line))];
}
