import type { Mm } from '../units.ts';

/** A root as a picture of its strain needs it. */
export interface RootShape {
  /** Thickness of the leaf t [mm]. */
  readonly thickness: Mm;
  /** Root fillet r [mm]. */
  readonly fillet: Mm;
  /** What the strain at the root is multiplied by, k [-]. */
  readonly factor: number;
}

/**
 * Strain near a root as a share of the strain of the leaf's skin, for a picture of where it strains.
 *
 *     share = u·(t/h)² + (k − 1)·e^(−2d/r)
 *
 * The first part is plane bending of the local section, h high, u = |y|/(h/2); the second is the peak beside the
 * fillet, which fades over about half a fillet radius (the relative gradient 2/r at a notch; from memory). It equals
 * k where the fillet meets the leaf and 1 at the skin far from it. A picture only: no verdict rests on it.
 *
 * @param root - leaf thickness t [mm], fillet r [mm] and factor k [-], ≥ 1
 * @param outward - distance from where the fillet begins, into the pad [mm]; below 0 in the leaf
 * @param height - local height of the section h [mm], ≥ t
 * @param fromMiddle - distance from its middle |y| [mm], 0 to h/2
 * @returns share of the nominal skin strain [-], ≥ 0
 *
 * Source: plane-bending.
 * @example rootStrainShare({ thickness: 0.84, fillet: 0.8, factor: 1.1 }, 0, 0.84, 0.42) // → 1.1
 * @example rootStrainShare({ thickness: 0.84, fillet: 0.8, factor: 1.1 }, 0.4, 1.0544, 0) // → 0.01912
 */
export function rootStrainShare(root: RootShape, outward: Mm, height: Mm, fromMiddle: Mm): number {
  const bending = (fromMiddle / (height / 2)) * (root.thickness / height) ** 2;
  // A sharp root has no radius to fade over; a twentieth of the leaf stands in for the radius a nozzle leaves.
  const fade = Math.max(root.fillet, root.thickness / 20) / 2;
  const apart = Math.hypot(outward, height / 2 - fromMiddle);
  return bending + (root.factor - 1) * Math.exp(-apart / fade);
}
