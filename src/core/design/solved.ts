/** What the solver answers about one joint, as plain data: it crosses from a worker to the page. */
import type { ErrorEstimate, MemberShape, PathEvent, Peak, Pose } from '../beam/answer.ts';
import type { SpatialStiffness } from '../beam/spatialStiffness.ts';
import type { FlexureNetwork } from '../flexures/network.ts';
import type { Gap } from '../geometry/gaps.ts';
import type { Problem } from '../problems.ts';

/** One state on the way, for a modulus of 1 MPa and all flexures side by side together. */
export interface SolvedPoint {
  /** Movement of the driven pad, [rad] or [mm]. */
  readonly amount: number;
  /** Effort per MPa: [mm³] for a moment, [mm²] for a force. */
  readonly effort: number;
  /** Stored energy per MPa [mm³]. */
  readonly energy: number;
  /** Ways in which it would leave this state when guided, and when pushed by a weight. */
  readonly unstableWays: number;
  readonly unstableFree: number;
  readonly peak: Peak;
  /** Largest strain along members, and where they grow out of pads, as fractions. */
  readonly peakWithin: number;
  readonly peakAtEnds: number;
  readonly poses: Readonly<Record<string, Pose>>;
  readonly shapes: readonly MemberShape[];
  readonly residual: number;
  /** Least clear distance between what may touch; absent where nothing can. */
  readonly gap?: Gap;
  /** All that are nearer than a line is wide, least first, twelve at most; absent where none is. */
  readonly near?: readonly Gap[];
}

/** Something on the way, for a modulus of 1 MPa: effort and energy as for a point. */
export interface SolvedEvent extends Omit<PathEvent, 'share'> {
  readonly amount: number;
}

/** A gap, and the amount at which it is met. */
export interface MetGap extends Gap {
  readonly amount: number;
}

/** One way of the movement, from rest. */
export interface SolvedPath {
  readonly points: readonly SolvedPoint[];
  readonly events: readonly SolvedEvent[];
  /** Where it first touches itself: the last amount that is clear, and the gap just past it; absent where it stays clear. */
  readonly touches?: MetGap;
  /** Why it ends early. */
  readonly stopped?: Problem;
  /** Where it leaves the path that a perfectly even joint would take: amount, and the sideways push that showed it [mm]. */
  readonly leaves?: { readonly amount: number; readonly imperfection: number };
}

export interface Solved {
  /** Wanted amount [rad] or [mm]. */
  readonly amount: number;
  readonly forward: SolvedPath;
  /** The other way, for a movement to both sides; its amounts are negative. */
  readonly back?: SolvedPath;
  /** The wanted end of the way back, where that is not −amount. */
  readonly least?: number;
  readonly network: FlexureNetwork;
  readonly poisson: number;
  /** Factor on the bending stiffness for wide strips, already in the efforts. */
  readonly widthRatio: number;
  /** Of the pad that moves, as printed, for 1 MPa and all side by side: moves [mm], turns [mm³/rad]. */
  readonly stiffness: SpatialStiffness;
  readonly error: ErrorEstimate;
}
