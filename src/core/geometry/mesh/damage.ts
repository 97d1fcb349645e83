import type { Point3 } from './triangleMesh.ts';

/** What is commonly wrong with a surface that should enclose a body. */
export type DamageKind =
  /** Edges with one triangle only: round a hole. */
  | 'open-edges'
  /** Edges at which more than two triangles meet. */
  | 'crowded-edges'
  /** Triangles wound against their neighbours. */
  | 'flipped'
  /** A body that is inside out as a whole. */
  | 'inside-out'
  /** The same triangle more than once. */
  | 'duplicate'
  /** Triangles without an area. */
  | 'degenerate'
  /** Vertices that lie nearer together than the file can mean. */
  | 'unjoined';

/** One kind of damage as found, and what was done about it. */
export interface Damage {
  readonly kind: DamageKind;
  readonly count: number;
  /** The middle of the first place [mm]. */
  readonly at: Point3;
  /** How many of them were mended; only what cannot change the part is. */
  readonly mended: number;
}
