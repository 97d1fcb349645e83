/**
 * A planar network of flexing members between rigid pads: what the solver is asked. x right, y up, rotation
 * counter-clockwise; mm, N, MPa, rad. Everything lies unstressed as printed.
 */
import type { Point } from '../geometry/outline.ts';
import type { Mm, MPa } from '../units.ts';

/** A place where members end. One that belongs to no pad joins its members stiffly and is free to move. */
export interface BeamNode extends Point {
  readonly id: string;
}

/**
 * The middle line of a member as printed, from its first node to its second.
 *
 * - straight: along the chord.
 * - arc: turning by so much on the way [rad], left positive.
 * - wave: one full cosine wave off the chord, rising to its left by `rise` [mm] in the middle, level at both ends.
 * - rise: half a cosine wave, level at both ends: both end tangents point along `heading` [rad, from the x axis]. With
 *   a the way from the first node to the second along the heading, > 0, and r the way to the left of it, either sign,
 *   the line is at  u·a  along and  r·(1 − cos π·u)/2  to the left, u from 0 to 1.
 * - spiral: about a centre, the radius growing evenly with the angle, through so many turns (left positive); the
 *   angle between the two nodes seen from the centre must agree with the turns.
 */
export type Shape =
  | { readonly kind: 'straight' }
  | { readonly kind: 'arc'; readonly turn: number }
  | { readonly kind: 'wave'; readonly rise: Mm }
  | { readonly kind: 'rise'; readonly heading: number }
  | { readonly kind: 'spiral'; readonly centre: Point; readonly turns: number };

/**
 * Thickness in the plane along a member.
 *
 * - a number: the same all along [mm].
 * - taper: evenly from one end to the other.
 * - notch: an ellipse cut from both sides of a straight member, least in the middle; as deep as `deep` on each side
 *   at both ends. `opening` and `closing` are its second and first half: a fillet that grows out of, or into, a pad.
 */
export type Profile =
  | Mm
  | { readonly kind: 'taper'; readonly from: Mm; readonly to: Mm }
  | { readonly kind: 'notch'; readonly least: Mm; readonly deep: Mm; readonly part: 'whole' | 'opening' | 'closing' };

export interface Member {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly shape: Shape;
  readonly thickness: Profile;
  /** Out of the plane, b [mm]. */
  readonly width: Mm;
  /** Ends that turn freely on their node. */
  readonly hinged?: 'from' | 'to' | 'both';
  /** Members in different planes pass each other without touching; 0 when left out. */
  readonly plane?: number;
  /** Factor on the bending stiffness, 1 for a narrow strip to 1/(1 − ν²) for a wide one; 1 when left out. */
  readonly widthRatio?: number;
}

/** A rigid body that carries nodes. */
export interface Pad {
  readonly id: string;
  readonly nodes: readonly string[];
  /** Where its supports, motions, loads and springs act and its position is told; its first node when left out. */
  readonly at?: Point;
}

/** Holds a pad, or a node of no pad, in the directions named. */
export interface Support {
  readonly at: string;
  readonly x?: boolean;
  readonly y?: boolean;
  readonly turn?: boolean;
}

/** Moves a pad or free node by so much at the end of the path [mm, mm, rad]; directions left out stay free. */
export interface Motion {
  readonly at: string;
  readonly x?: Mm;
  readonly y?: Mm;
  readonly turn?: number;
}

/** Loads a pad or free node by so much at the end of the path [N, N, N·mm]. */
export interface Load {
  readonly at: string;
  readonly x?: number;
  readonly y?: number;
  readonly moment?: number;
  /** True when the force turns with what it acts on; otherwise it keeps its direction. */
  readonly follower?: boolean;
}

/** Springs from a pad or free node to the ground or to another, slack as printed [N/mm, N/mm, N·mm/rad]. */
export interface Spring {
  readonly at: string;
  /** The pad or free node at its other end: it resists the movement of `at` less that of `to`, along x, y and in turn. */
  readonly to?: string;
  readonly x?: number;
  readonly y?: number;
  readonly turn?: number;
  /** More stiffness in turn per MPa of the shear modulus G = E/(2·(1 + ν)) [mm³/rad]: bars that twist about z out of sight. */
  readonly twist?: number;
}

/** Ties the movement of one pad or free node to that of another: each named direction moves by factor × the other's. */
export interface Tie {
  readonly at: string;
  readonly like: string;
  readonly x?: number;
  readonly y?: number;
  readonly turn?: number;
}

export interface BeamModel {
  /** Young's modulus E [MPa]. */
  readonly modulus: MPa;
  /** Poisson's ratio ν, for shear and torsion. */
  readonly poisson: number;
  readonly nodes: readonly BeamNode[];
  readonly members: readonly Member[];
  readonly pads: readonly Pad[];
  readonly supports: readonly Support[];
  readonly motions: readonly Motion[];
  readonly loads: readonly Load[];
  readonly springs: readonly Spring[];
  readonly ties: readonly Tie[];
}
