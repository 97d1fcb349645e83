/** What the solver answers about a network: states along a path, and how well each is known. */
import type { Kept } from './kept.ts';
import type { Problem } from '../problems.ts';
import type { Mm, NMm } from '../units.ts';

/** Where a pad or free node has gone: the place of its reference point [mm] and how far it has turned [rad]. */
export interface Pose {
  readonly x: Mm;
  readonly y: Mm;
  readonly turn: number;
}

/** What is needed to hold a driven or held direction: forces [N] and moment [N·mm] that the outside puts on it. */
export interface Reaction {
  readonly at: string;
  readonly x: number;
  readonly y: number;
  readonly moment: NMm;
}

/** The largest strain at either surface anywhere along any member. */
export interface Peak {
  /** Signed, as a fraction; tension positive. */
  readonly strain: number;
  readonly member: string;
  /** Distance along the member from its first node [mm]. */
  readonly along: Mm;
  /** Left or right of the direction of travel along the member. */
  readonly side: 'left' | 'right';
  /** True where the member grows out of a pad and a root fillet would concentrate it. */
  readonly atEnd: boolean;
}

/** One converged state. */
export interface PathPoint {
  /** Share of the motions and loads that the model asks for; below 0 or above 1 where a path swings beyond. */
  readonly share: number;
  /**
   * Work per unit of share: Σ reaction × motion. Divided by the motion asked for it is the force or moment that drives
   * a single motion.
   */
  readonly effort: number;
  readonly reactions: readonly Reaction[];
  /** By pad, then by node of no pad, in the order of the model. */
  readonly poses: Readonly<Record<string, Pose>>;
  /** Strain energy of members and springs [N·mm]. */
  readonly energy: NMm;
  /** Negative values of the tangent with the driven motion held: 0 is stable when guided. */
  readonly unstableWays: number;
  /** Negative values of the tangent when the drive is let go: 0 rests when pushed by a weight. */
  readonly unstableFree: number;
  readonly peak: Peak;
  /** Largest surface strain within the members [-], and where they grow out of pads, as magnitudes. */
  readonly peakWithin: number;
  readonly peakAtEnds: number;
  /** Out-of-balance force over the largest force in the network [-]. */
  readonly residual: number;
  readonly iterations: number;
}

/** The middle line of one member in one state, sampled from its first node to its second. */
export interface MemberShape {
  readonly member: string;
  /** Distance along the member as printed [mm]. */
  readonly along: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Direction of the middle line [rad]. */
  readonly angle: Float64Array;
  /** Thickness there [mm]. */
  readonly thickness: Float64Array;
  /** Surface strain to the left and to the right of the line, tension positive [-]. */
  readonly left: Float64Array;
  readonly right: Float64Array;
}

/** Something that happens on the way. */
export interface PathEvent {
  /** `limit`: effort is largest or least; `bifurcation`: another path leaves sideways; `rest`: effort passes zero. */
  readonly kind: 'limit' | 'bifurcation' | 'rest';
  readonly share: number;
  readonly effort: number;
  readonly energy: NMm;
  /** For `rest`: whether it stays there by itself. */
  readonly stable: boolean;
}

/**
 * How far answers may be from those of an infinitely fine mesh, from a second mesh of half as many elements. Of the path
 * that a real part takes: a first path is told beyond where another leaves it, but not weighed.
 */
export interface ErrorEstimate {
  /** Relative to the largest effort on the path [-]; 0 where loads drive, which are as they are given. */
  readonly effort: number;
  /** Relative to the largest strain on the path [-]. */
  readonly strain: number;
  /**
   * Of places and turns of pads and free nodes, relative to the largest movement of one in the most strained or the last
   * state [-]; turns count by the longest member. Where loads drive this is what tells: a load near the most that can be
   * carried leaves a place less certain than the same mesh leaves the force of a motion.
   */
  readonly position: number;
  /** Elements along each member, in the order of the model. */
  readonly elements: readonly number[];
}

/** A path of states, in the order in which they were followed. */
export interface PathAnswer {
  readonly points: readonly PathPoint[];
  readonly events: readonly PathEvent[];
  /** Shapes of all members at each point, in the same order as `points`; only where they were asked for. */
  readonly shapes: readonly (readonly MemberShape[])[];
  readonly error: ErrorEstimate;
  /** Why it ended before the end of what was asked, with what to try; the points up to there stand. */
  readonly stopped?: Problem;
  /** The path that leaves at the first bifurcation, and the sideways movement [mm] by which it was entered. */
  readonly second?: { readonly path: PathAnswer; readonly imperfection: Mm; readonly leaves: number };
  /** Where an earlier answer was given to go on from: whether it was, or the path was walked from rest after all. */
  readonly warm?: boolean;
  /** Its last state, to begin another answer at; only where it was asked for. */
  readonly kept?: Kept;
  /** Newton iterations spent. */
  readonly iterations: number;
}
