/** The second half of the contract for a flexure family: how its sizes become a network for the solver. */
import type { BarsAcross } from '../beam/acrossStiffness.ts';
import type { BeamModel } from '../beam/model.ts';
import type { Path } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';

/** A rigid body as drawn: its closed outlines where it lies as printed. */
export interface Body {
  /** Pad of the model that carries it. */
  readonly pad: string;
  readonly outlines: readonly Path[];
  /** Bodies and members in different planes pass each other; 0 when left out. */
  readonly plane?: number;
}

/** A size as a drawing carries it. */
export type Dimension =
  /** Between two points, the line set off to the left of the way from one to the other by `off` [mm]. */
  | {
      readonly kind: 'distance';
      readonly parameter: string;
      readonly from: Point;
      readonly to: Point;
      readonly off: Mm;
    }
  | {
      readonly kind: 'diameter' | 'radius';
      readonly parameter: string;
      readonly centre: Point;
      readonly radius: Mm;
      readonly angle: number;
    }
  /** Between the directions `from` and `to` [rad] seen from a centre. */
  | {
      readonly kind: 'angle';
      readonly parameter: string;
      readonly centre: Point;
      readonly radius: Mm;
      readonly from: number;
      readonly to: number;
    }
  /** The thickness of a member, pointed at from a place along it (share of its length). */
  | { readonly kind: 'thickness'; readonly parameter: string; readonly member: string; readonly share: number };

type Point = { readonly x: Mm; readonly y: Mm };

/** A flexure as the solver and the drawing see it. */
export interface FlexureNetwork {
  /** With motions at the full amount asked for. */
  readonly model: Omit<BeamModel, 'modulus' | 'poisson'>;
  /** Where the effort is read: the pad that is driven and in which direction. */
  readonly driven: { readonly at: string; readonly direction: 'x' | 'y' | 'turn' };
  /** The pad whose six stiffnesses are told. */
  readonly moving: string;
  /** Effort times this: how many such networks push together, side by side or one behind the other in depth. */
  readonly alike: number;
  readonly bodies: readonly Body[];
  readonly dimensions: readonly Dimension[];
}

export interface NetworkAsked {
  /** Id of one of the family's drives. */
  readonly drive: string;
  /** Full movement [rad] or [mm]. */
  readonly amount: number;
  /** Factor on the bending stiffness for wide strips, 1 to 1/(1 − ν²). */
  readonly widthRatio: number;
}

/** What a family gives the solver. */
export interface Mechanics<P extends Record<keyof P, number> = Record<string, number>> {
  network(sizes: P, thickness: Mm, asked: NetworkAsked): FlexureNetwork;
  /**
   * How far the movement can sensibly go [rad] or [mm]: the far rest of an arch, where pads would meet. Curves of
   * effort are followed up to there or a little past what is asked, whichever is further.
   */
  reach(sizes: P, thickness: Mm, drive: string): number;
  /**
   * How far it can go at all [rad] or [mm]: past it pads would have met, or a flexure would have to be longer than it
   * is. Infinity where nothing is known to stop it; left out where that is so of every drive.
   */
  limit?(sizes: P, thickness: Mm, drive: string): number;
  /**
   * Bars that lie across the plane, where the network only stands for them by springs: the six stiffnesses of the pad
   * that moves are then theirs. Their twist about z must be that of the springs.
   */
  across?(sizes: P, thickness: Mm): BarsAcross;
}
