import type { LengthUnit } from '../text/numbers.ts';
import type { QuantityKind } from './quantity.ts';

/** Everything a value field shows and does; values are in mm, rad or plain numbers. */
export interface ValueSpec {
  /** Key of the field in its sentence. */
  readonly key: string;
  /** “Leaf length”. */
  readonly label: string;
  readonly kind: QuantityKind;
  readonly unit: LengthUnit;
  readonly value: number;
  /** The bare figure of a value: “12.00”. */
  readonly say: (value: number) => string;
  /** The value in force in the unit that is shown, for readers of the page by ear. */
  readonly shownNumber: number;
  /** `say` of the value in force. */
  readonly figure: string;
  /** As it stands after the figure: “ mm”, “°”, or nothing. */
  readonly suffix: string;
  /** Said under the field before anything is typed. */
  readonly hint: string;
  /** How far one press of an arrow key goes from a value. */
  readonly step: (value: number, up: boolean) => number;
  /** As far as stepping goes. */
  readonly min: number;
  readonly max: number;
  /**
   * Puts a value in force, or says why it cannot be. `was` is the value that a run of steps began with, and `run` is
   * the same for all steps of one run.
   */
  readonly take: (value: number, was: number, run?: string) => string | undefined;
}
