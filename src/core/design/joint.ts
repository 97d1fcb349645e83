import type { PrintProfile } from '../print/profile.ts';
import { asRad, type Mm, type Rad } from '../units.ts';

/** From rest and back; as far to the other side; or between any two amounts. */
export type Ways = 'one way' | 'both ways' | 'between';
export const WAYS: readonly Ways[] = ['one way', 'both ways', 'between'];

/** One kind of flex, over and over. */
export interface Swing {
  /** How far the whole joint is moved, [rad] or [mm] as the drive measures. */
  readonly amount: number;
  readonly ways: Ways;
  /** `between` only: the other end of the swing, from −amount to less than the amount; above 0 it never comes to rest. */
  readonly least?: number;
  /** Wanted number of flexes. */
  readonly cycles: number;
}

/** What the user wants of the joint; what it is moved by most is its own swing. */
export interface Movement extends Swing {
  /** Id of one of the family's drives: in what way it is moved. */
  readonly drive: string;
  /** Smaller movements beside it, driven alike, none farther to either side. */
  readonly also?: readonly Swing[];
  /** Whether it is left bent for hours or longer. */
  readonly held: boolean;
  /** How long it is left bent at a time [h]; a day where it is held and this is absent. */
  readonly heldHours?: number;
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

/**
 * The other end of a swing: where it comes back to before it goes again.
 *
 * @param swing - amount [rad] or [mm], and which way [-]
 * @returns other end of the swing [rad] or [mm], from −amount to less than the amount
 *
 * @example leastOf({ amount: 0.5, ways: 'both ways' }) // → -0.5
 */
export function leastOf({ amount, ways, least = 0 }: Pick<Swing, 'amount' | 'ways' | 'least'>): number {
  if (ways === 'between') return least;
  return ways === 'both ways' ? -amount : 0;
}

/** Damp as in a room, which nylon becomes within days or weeks, or kept dry. */
export type Moisture = 'damp' | 'dry';
export const MOISTURES: readonly Moisture[] = ['damp', 'dry'];

/** Where it is used. */
export interface Surroundings {
  /** The warmest that it gets while it is in use. */
  readonly temperatureC: number;
  /** Matters to nylon alone. */
  readonly moisture: Moisture;
}

/** A room, for which the filament rows hold. */
export const A_ROOM: Surroundings = { temperatureC: 23, moisture: 'damp' };

/** One flexure with its movement and its print profile. */
export interface Joint {
  readonly id: string;
  readonly name: string;
  /** Key of a flexure family. */
  readonly family: string;
  readonly sizes: Readonly<Record<string, number>>;
  readonly movement: Movement;
  readonly profile: PrintProfile;
  /** `A_ROOM` when absent. */
  readonly surroundings?: Surroundings;
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
