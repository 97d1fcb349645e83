/** What is told of each thin section on one printer and in one use. */
import type { Assessment } from '../design/assessment.ts';
import type { Joint, Movement } from '../design/joint.ts';
import type { Lying, PrintProfile } from '../print/profile.ts';
import type { Result } from '../result.ts';
import type { Mm, Rad } from '../units.ts';
import type { Flexure } from './flexure.ts';

/** Which direction of the file points away from the plate. */
export const PLATE_UPS = ['+z', '-z', '+x', '-x', '+y', '-y'] as const;
export type PlateUp = (typeof PLATE_UPS)[number];

/** How the part is printed: all of it alike. `profile.lying` is not used; each section has its own. */
export interface PrintedAs {
  /** The part times this [-], > 0. */
  readonly scale: number;
  readonly up: PlateUp;
  readonly profile: PrintProfile;
}

/** What is asked of every section alike. */
export interface AskedOfAll extends Pick<Movement, 'cycles' | 'chance' | 'held'> {
  readonly ways: 'one way' | 'both ways';
  /** How far each bends [rad]. */
  readonly turn: Rad;
}

/**
 * How a thickness falls on lines or layers: `whole` (an even count), `odd` (whole, its middle line laid alone), `gap` (up to
 * half a line is left open), `squeezed` (half a line or more is left over: a thin one is pressed in or dropped),
 * `not-laid` (thinner than the printer lays).
 */
export type LandingState = 'whole' | 'odd' | 'gap' | 'squeezed' | 'not-laid';

export interface Landing {
  readonly countOf: 'lines' | 'layers';
  /** With its fraction. */
  readonly exact: number;
  readonly nearest: number;
  readonly state: LandingState;
  /** Left over beside the whole lines below it [mm], 0 where whole. */
  readonly left: Mm;
}

/** One thin section as it would be printed and used. Lengths are those of the scaled part. */
export interface Judged {
  readonly flexure: Flexure;
  readonly lying: Lying;
  /** How far it is turned from lying exactly so [rad], at most 54.7°, the way from an axis to the middle of three. */
  readonly aslant: Rad;
  readonly landing: Landing;
  /** The layer in which its section is seen best, from 1, and those through which it runs. */
  readonly layer: number;
  readonly layers: readonly [first: number, last: number];
  /** The joint that stands for it, ready to be opened; its name tells the file and the number. */
  readonly joint: Joint;
  readonly assessed: Result<Assessment>;
}
