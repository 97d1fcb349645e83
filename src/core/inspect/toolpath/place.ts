/** A thin section in a toolpath: where to look at what is laid. */
import type { Point } from '../../geometry/outline.ts';
import type { Lying } from '../../print/profile.ts';
import type { Mm } from '../../units.ts';
import type { Flexure } from '../flexure.ts';

/** `found` in the toolpath's own layers, `carried` over from a part that was checked, `drawn` by the user as a box. */
export type PlaceFrom = 'found' | 'carried' | 'drawn';

/**
 * A thin section as its layers see it.
 *
 * `run` is its middle in the plane of the plate, from end to end: of a flat or crease one from root to root, fillets included; of an
 * upright one, which stands, along the axis about which it bends. At every place of the run its thin way is square to it in
 * the plate's plane; of a crease the thin way is up, and square to the run is its axis.
 */
export interface Place {
  /** As numbered on the drawing, from 1. */
  readonly number: number;
  readonly from: PlaceFrom;
  readonly lying: Lying;
  /** Two or more points [mm]. */
  readonly run: readonly Point[];
  /** As it was drawn, or stands in the layers: from wall to wall, least anywhere [mm]. */
  readonly thickness: Mm;
  /** How far it reaches square to the run, in the plane of the plate [mm]: the thickness, but of a crease its depth. */
  readonly reach: Mm;
  /** From where to where it stands [mm]. */
  readonly bottom: Mm;
  readonly top: Mm;
  /** What was found, or carried over; absent for a box that was drawn. */
  readonly flexure?: Flexure;
}

/** How far round a place its paths are kept and drawn [mm]. */
export const AROUND: Mm = 3.2;
