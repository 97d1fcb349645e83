import { familyOf } from '../flexures/known.ts';
import { lineWidthFor } from '../print/wholeLines.ts';
import type { Assessment } from './assessment.ts';
import type { Joint } from './joint.ts';
import { sectionOf } from './sectionOf.ts';

/**
 * The joint with every length of the part times s; the print profile and the movement stay.
 *
 * @param joint - any joint [-]
 * @param s - scale factor [-], > 0
 * @returns a new joint; a measured thickness scales with the rest
 */
export function scaleJoint(joint: Joint, s: number): Joint {
  const family = familyOf(joint);
  const sizes = Object.fromEntries(
    Object.entries(joint.sizes).map(([name, value]) => [
      name,
      family.parameters[name]?.kind === 'length' ? drawable(value * s) : value,
    ]),
  );
  return joint.measuredThickness === undefined
    ? { ...joint, sizes }
    : { ...joint, sizes, measuredThickness: drawable(joint.measuredThickness * s) };
}

/** To a nanometre, so that 6 mm × 1.4 reads 8.4 and not 8.399999999999999. */
function drawable(value: number): number {
  return Number(value.toFixed(6));
}

/** What scaling a part by s does at the same angle, as ratios. */
export interface ScalingLaw {
  readonly strain: number;
  readonly torque: number;
  readonly force: number;
  readonly linearStiffness: number;
  readonly lines: number;
  readonly energy: number;
}

/**
 * Ratios when every length of a part is multiplied by s, same filament and same angle.
 *
 * Strain is t·θ/(2L): both t and L grow, so it stays as it was. Torque and energy grow as s³.
 *
 * @param s - scale factor [-], > 0
 * @returns ratios new/old [-]
 *
 * Source: plane-bending.
 * @example scalingLaw(1.5) // → { strain: 1, torque: 3.375, force: 2.25, linearStiffness: 1.5, lines: 1.5, energy: 3.375 }
 */
export function scalingLaw(s: number): ScalingLaw {
  return { strain: 1, torque: s ** 3, force: s ** 2, linearStiffness: s, lines: s, energy: s ** 3 };
}

/** One way to make a measured section whole by scaling the part. */
export interface WholeByScale {
  readonly count: number;
  readonly scale: number;
  /** At the same angle or travel. */
  readonly effortRatio: number;
  readonly strainRatio: number;
  /** Line width that would make the section whole at its present size [mm]; absent when the nozzle cannot lay it. */
  readonly lineWidthInstead?: number;
}

/**
 * For each whole count near a section, the scale that reaches it and the line width that would do so without scaling.
 *
 * @param a - the joint as assessed; a measured thickness makes it useful [-]
 * @param most - how many counts to give [-], ≥ 1
 * @returns rows by rising count, from the count below the section to `most` rows
 *
 * Source: plane-bending, bead-section.
 */
export function scaleToWhole(a: Assessment, most = 3): readonly WholeByScale[] {
  const family = familyOf(a.joint);
  const first = Math.max(1, Math.floor(a.fit.exact));
  return Array.from({ length: most }, (_, i) => first + i).map((count) => {
    const wanted = sectionOf(
      family,
      { ...a.joint.sizes, [family.roles.count]: count },
      a.joint.profile,
      a.filament,
    ).thickness;
    const scale = wanted / a.section.thickness;
    const law = scalingLaw(scale);
    // A part that grows while its travel stays is moved by a smaller share of itself.
    const [effortRatio, strainRatio] =
      a.drive.measure === 'turn' ? [law.torque, law.strain] : [law.linearStiffness, 1 / scale];
    const row = { count, scale, effortRatio, strainRatio };
    const width =
      family.countOf === 'lines'
        ? lineWidthFor(a.section.thickness, count, a.joint.profile, a.joint.profile.nozzle)
        : undefined;
    return width?.ok ? { ...row, lineWidthInstead: width.value } : row;
  });
}
