import type { PrintProfile } from '../print/profile.ts';
import { asRad, type Mm, type Rad } from '../units.ts';

export type Ways = 'one way' | 'both ways';
export const WAYS: readonly Ways[] = ['one way', 'both ways'];

/** What the user wants of the joint. */
export interface Movement {
  /** Id of one of the family's drives: in what way it is moved. */
  readonly drive: string;
  /** How far the whole joint is moved, [rad] or [mm] as the drive measures. */
  readonly amount: number;
  readonly ways: Ways;
  /** Wanted number of flexes. */
  readonly cycles: number;
  /** Whether it is left bent for hours or longer. */
  readonly held: boolean;
  /** Share of prints that should reach the wanted number, 0.5 to 0.99. */
  readonly chance: number;
  /** How hard it may push back, [N·mm] or [N] as the drive measures; absent when that does not matter. */
  readonly effortAtMost?: number;
  /** Whether it should stay in its second place; asked only of kinds that snap. */
  readonly stays?: boolean;
}

/**
 * The angle of a movement whose drive measures a turn.
 *
 * @param movement - what is wanted, of a drive that turns: amount [rad]
 * @returns the same amount as an angle [rad]
 */
export function turnOf({ amount }: Pick<Movement, 'amount'>): Rad {
  return asRad(amount);
}

/** One flexure with its movement and its print profile. */
export interface Joint {
  readonly id: string;
  readonly name: string;
  /** Key of a flexure family. */
  readonly family: string;
  readonly sizes: Readonly<Record<string, number>>;
  readonly movement: Movement;
  readonly profile: PrintProfile;
  /**
   * Thickness measured on a part that exists already [mm]. When present it is the thickness that bends, and the
   * count in `sizes` only records the nearest whole number.
   */
  readonly measuredThickness?: Mm;
}

/** A named set of joints, saved together. */
export interface Part {
  readonly name: string;
  /** True for the demonstration part, whose figures are invented. */
  readonly invented: boolean;
  readonly joints: readonly Joint[];
}
