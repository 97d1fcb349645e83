/** The pieces that can be printed to test: what each is asked for, and what it is made of. x, y on the plate, z up; mm. */
import type { Loop } from '../geometry/loop.ts';
import type { Point } from '../geometry/outline.ts';
import type { Filament } from '../material/types.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Mm, Rad } from '../units.ts';

/**
 * **ladder** rungs of 1 to 8 lines (layers, where it lies as a crease) for a caliper; **comb** strips alike in thickness, of
 * lengths in steps, to flex to one angle; **radii** a block of round corners and strips alike to bend over them; **bar** to sag
 * under a weight; **hold** a strip and a bent slot to leave it in; **creases** folds of 1 to 6 layers.
 */
export const PIECE_IDS = ['ladder', 'comb', 'radii', 'bar', 'hold', 'creases'] as const;
export type PieceId = (typeof PIECE_IDS)[number];

/** What the pieces are made to. */
export interface PiecesAsked {
  /** Lies as the pieces are to lie. */
  readonly profile: PrintProfile;
  readonly filament: Filament;
  /** Lines across the strips; layers through them where they lie as a crease. */
  readonly count: number;
  /** Width of the strips out of the bending plane. */
  readonly depth: Mm;
  /** To which the strips of the comb are flexed. */
  readonly turn: Rad;
  /** Peak strain about which strips and radii are stepped, as a fraction: that of the joint in mind. */
  readonly strain: number;
  /** Radius of the slot of the hold piece. */
  readonly holdRadius: Mm;
  /** On which a piece is to fit, made smaller where it must; absent for pieces of full size. */
  readonly plate?: PlateSize;
}

/** A thin part that is tested. */
export interface Strip {
  /** As notched beside it, from 1. */
  readonly number: number;
  readonly count: number;
  readonly countOf: 'lines' | 'layers';
  readonly thickness: Mm;
  /** Free, between what holds its ends. */
  readonly length: Mm;
  readonly depth: Mm;
  /** In plan: middle of either end, from the origin of the piece. Both the same where it stands up. */
  readonly from: Point;
  readonly to: Point;
  /** Peak strain when it is flexed as the piece is meant to, as a fraction; absent where it is not flexed. */
  readonly strain?: number;
}

/** A round corner of the block of radii. */
export interface RoundCorner {
  readonly radius: Mm;
  /** Middle of the round, in plan. */
  readonly centre: Point;
  /** Surface strain of the strips of the piece over it, as a fraction. */
  readonly strain: number;
  /** As notched beside it. */
  readonly number: number;
}

/** Material between two heights: loops counter-clockwise, holes clockwise. */
export interface Slab {
  readonly from: Mm;
  readonly to: Mm;
  readonly region: readonly Loop[];
}

/** One test piece, its least corner at the origin, standing on the plate as it is printed. */
export interface Piece {
  readonly id: PieceId;
  readonly size: { readonly x: Mm; readonly y: Mm; readonly z: Mm };
  /** From the plate up, no gaps: one solid for each body that is printed apart. */
  readonly bodies: readonly (readonly Slab[])[];
  readonly strips: readonly Strip[];
  readonly corners: readonly RoundCorner[];
  /** Of the hold piece: how far its slot turns. */
  readonly slotTurn?: Rad;
  /** Of the hold piece: radius of the middle of its slot, which may be bounded by what fits. */
  readonly slotRadius?: Mm;
  /** Of the bar: from the clamp to the eye. */
  readonly arm?: Mm;
  /** Of the bar: the mass [g] under which it sags well and comes back, rounded to what kitchens have. */
  readonly grams?: number;
  /** mm³ of material, when laid full. */
  readonly volume: number;
}

/** A piece somewhere on a plate. */
export interface PlacedPiece {
  readonly piece: Piece;
  readonly at: Point;
}

export interface PlateSize {
  readonly x: Mm;
  readonly y: Mm;
}

export type Plate = readonly PlacedPiece[];
