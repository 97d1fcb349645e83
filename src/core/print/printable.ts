/** What can be laid at all: how tall a thin wall stands while it is printed, and how far a line reaches over air. */
import type { Mm } from '../units.ts';
import type { Lying } from './profile.ts';

/**
 * Height over thickness up to which a thin wall stands while it is printed, by how it lies [-]. Common practice, no source;
 * generous, because to refuse what would have printed is worse than to let through what prints badly.
 *
 * - flat: the wall grows along its depth. Pads hold both its ends on every layer, so that only its middle gives way to the
 *   nozzle: 40, which is 34 mm of depth on two lines of 0.42 mm.
 * - upright: it grows along its length, alone until the pad above it is laid, and sways under the nozzle: 20, which is 17 mm
 *   of length on two lines of 0.42 mm.
 * - crease: it lies on the plate.
 */
export const MOST_TALL: Readonly<Record<Lying, number>> = { flat: 40, upright: 20, crease: Infinity };

/** What is laid over air: from one hold to another, and standing out from one [mm]. */
export interface OverAir {
  readonly bridge: Mm;
  readonly ledge: Mm;
}

/**
 * How far can be laid over air without supports [mm]. Common practice, no source; generous for the same reason.
 *
 * - bridge: a line pulled from one hold to another sags with its length; past 20 mm it hangs as a loop that what lies below
 *   meets, and is no leaf of even thickness any more.
 * - ledge: what stands out all at once is laid along an edge that nothing holds; some four lines of it hang on those inside
 *   them and droop, and past 2 mm the outermost falls away.
 */
export const MOST_OVER_AIR: OverAir = { bridge: 20, ledge: 2 };

/** A thin section as it stands in the print. */
export interface Wall {
  readonly thickness: Mm;
  /** What bends, between its pads. */
  readonly length: Mm;
  /** Out of the plane of bending. */
  readonly depth: Mm;
}

/**
 * How tall a thin wall is against its thickness while it is printed.
 *
 * @param wall - thickness, flexing length and depth of the thin section [mm], > 0
 * @param lying - how it lies in the print [-]
 * @returns height over thickness [-], 0 for what lies on the plate; compare with `MOST_TALL`
 *
 * Source: common-practice.
 * @example tallness({ thickness: 0.8, length: 12, depth: 6 }, 'flat') // → 7.5
 */
export function tallness({ thickness, length, depth }: Wall, lying: Lying): number {
  const height = { flat: depth, upright: length, crease: 0 }[lying];
  return height / thickness;
}

/**
 * What of two reaches over air comes nearer to its limit, or is further past it.
 *
 * @param over - what is laid over air [mm], ≥ 0
 * @returns its length and the most of it [mm]
 *
 * Source: common-practice.
 * @example farthestOverAir({ bridge: 16, ledge: 0.5 }) // → { value: 16, limit: 20 }
 */
export function farthestOverAir({ bridge, ledge }: OverAir): { readonly value: Mm; readonly limit: Mm } {
  const most = MOST_OVER_AIR;
  return bridge / most.bridge >= ledge / most.ledge
    ? { value: bridge, limit: most.bridge }
    : { value: ledge, limit: most.ledge };
}
