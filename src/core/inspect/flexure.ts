/** What checking a part finds: its thin sections with where they are, how they run and how large they are. */
import type { Point3 } from '../geometry/mesh/triangleMesh.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm, Rad } from '../units.ts';

/**
 * `neck` short, `leaf` longer, `crease` thin in the build direction of the file, `arch` a curved leaf that leaves both ends
 * along one line, `spiral run` one that winds by more than a third of a turn.
 */
export type FlexureKind = 'leaf' | 'neck' | 'crease' | 'arch' | 'spiral run';

/** One end of a thin section. */
export interface FlexureRoot {
  /** Radius with which it grows out of what it joins; 0 is a sharp corner. The less of the two sides. */
  readonly fillet: Mm;
  /** What it joins: a pad by its number, or another thin section where leaves cross. */
  readonly joins: { readonly kind: 'pad'; readonly pad: number } | { readonly kind: 'flexure' };
  /** How thick what it joins is, measured like the section itself. */
  readonly shoulder: Mm;
}

/** How far and in which sense the middle of the section bends as printed. */
export interface CentreLine {
  /** Corners of it in the plane of its section [mm], from one root to the other. */
  readonly points: readonly Point[];
  readonly length: Mm;
  /** Straight distance between its ends. */
  readonly chord: Mm;
  /** Greatest distance of it from that straight line. */
  readonly rise: Mm;
  /** By how much its direction has changed from end to end, without sign. */
  readonly turn: Rad;
}

/** One thin section. Directions have length 1 and stand square on one another. */
export interface Flexure {
  /** As numbered on the drawing, from 1. */
  readonly number: number;
  readonly kind: FlexureKind;
  readonly isCurved: boolean;
  /** The middle of it [mm] in the coordinates of the part. */
  readonly centre: Point3;
  /** From root to root. */
  readonly along: Point3;
  /** The thin way. */
  readonly across: Point3;
  /** The axis about which it bends. */
  readonly axis: Point3;
  /** Least anywhere, and mean over the length. */
  readonly thickness: { readonly least: Mm; readonly mean: Mm };
  /** From pad to pad along the centre line; fillets count up to where they meet the pad, bevels belong to the pad. */
  readonly length: Mm;
  /** Length of an even section of the least thickness that bends as far under the same moment: ∫(t_least/t)³ ds. */
  readonly bendingLength: Mm;
  /** How deep it is along its axis. */
  readonly depth: Mm;
  readonly roots: readonly [FlexureRoot, FlexureRoot];
  /** Whether the part still hangs together with this one cut: it is then one of several ways from pad to pad. */
  readonly isInLoop: boolean;
  readonly centreLine: CentreLine;
  /** Both sides of it in the plane of its section [mm], in the direction of the centre line. */
  readonly walls: readonly [readonly Point[], readonly Point[]];
  /** Which of the sections it was measured in. */
  readonly section: number;
}

/** Why something thin is not called a flexure. */
export type PassedOverWhy =
  /** One end is free: a fin or a rib. */
  | 'free-end'
  /** It is held along its side as well: a wall, a skin. */
  | 'held-at-side'
  /** It is thicker than what was looked for. */
  | 'too-thick'
  /** Both ends join the same pad close by: an eye, a ring, the bridge beside a hole. */
  | 'ring'
  /** The surface has a hole there. */
  | 'open-there';

/** Something thin that is not called a flexure. */
export interface PassedOver {
  readonly why: PassedOverWhy;
  readonly thickness: Mm;
  readonly at: Point3;
}

/** A cut through the part in which flexures show: a point of it is origin + x·right + y·up. */
export interface PartSection {
  readonly origin: Point3;
  readonly right: Point3;
  readonly up: Point3;
  /** Towards the eye: right × up. */
  readonly normal: Point3;
  /** What is cut: outer outlines counter-clockwise, holes clockwise [mm]. */
  readonly outlines: readonly (readonly Point[])[];
  /** Numbers of the flexures that were measured in it. */
  readonly shows: readonly number[];
}

/** Everything found in a part. */
export interface PartFindings {
  readonly flexures: readonly Flexure[];
  readonly passedOver: readonly PassedOver[];
  readonly sections: readonly PartSection[];
  readonly pads: number;
  /** True where looking was ended by a limit on work before all places had been looked at. */
  readonly isCut: boolean;
}
