/** A thin section as the printer meets it: how it lies, what is laid across it, and how thick it is there. */
import { dot3 } from '../geometry/mesh/vector3.ts';
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import type { Lying, PrintProfile } from '../print/profile.ts';
import type { Mm, Rad } from '../units.ts';
import { heightAbovePlate, upDirection } from './buildDirection.ts';
import type { Flexure } from './flexure.ts';
import type { PrintedAs } from './judged.ts';
import { lyingOf } from './lyingOf.ts';

export interface AsLaid {
  readonly lying: Lying;
  readonly aslant: Rad;
  readonly countOf: 'lines' | 'layers';
  /** What lines or layers have to fill, at the scale of the print. */
  readonly thickness: Mm;
  /** With the lying of this section; its first layer is like the others where it does not lie on the plate. */
  readonly profile: PrintProfile;
  readonly isOnPlate: boolean;
}

/**
 * A thin section as it is laid.
 *
 * Lines lie in the plate plane and layers on top of one another, so that a section that is aslant has more of them than its
 * thickness says:
 *
 *     lines: t/√(1 − (a·z)²),   layers: t/|a·z|,   a across the section, z up
 *
 * Of a curved one a changes along it; there the thickness itself is taken.
 *
 * @param flexure - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale, which way is up, print profile [mm]
 * @returns lying, what is counted, and thickness as printed [mm]
 */
export function asLaid(flexure: Flexure, box: Box3, as: PrintedAs): AsLaid {
  const { lying, aslant } = lyingOf(flexure, as.up);
  const countOf = lying === 'crease' ? 'layers' : 'lines';
  const thickness = as.scale * flexure.thickness.least * growth(flexure, as, countOf);
  const isOnPlate = heightAbovePlate(flexure.centre, box, as) - thickness / 2 < as.profile.firstLayerHeight / 2;
  const isAllAlike = countOf === 'layers' && !isOnPlate;
  const firstLayerHeight = isAllAlike ? as.profile.layerHeight : as.profile.firstLayerHeight;
  return { lying, aslant, countOf, thickness, isOnPlate, profile: { ...as.profile, lying, firstLayerHeight } };
}

function growth({ isCurved, across }: Flexure, { up }: PrintedAs, countOf: AsLaid['countOf']): number {
  if (isCurved) return 1;
  const upward = Math.min(1, Math.abs(dot3(across, upDirection(up))));
  return 1 / (countOf === 'layers' ? upward : Math.sqrt(1 - upward * upward));
}
