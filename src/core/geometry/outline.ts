import type { Mm } from '../units.ts';

/** A point in the plane of bending [mm]: x along the undeformed leaf, y up. */
export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/**
 * A piece of an outline that runs from the end of the piece before it to `to`.
 * An arc carries its centre and sense, so that a file can hold a true arc and a drawing can flatten it.
 */
export type Piece =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'arc'; readonly to: Point; readonly centre: Point; readonly counterClockwise: boolean };

/** A path of lines and arcs; closed outlines end where they start and run counter-clockwise round the material. */
export interface Path {
  readonly start: Point;
  readonly pieces: readonly Piece[];
}
