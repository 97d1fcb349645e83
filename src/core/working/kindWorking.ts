import type { HandForm, Sizes } from '../flexures/family.ts';
import type { Mm } from '../units.ts';
import type { WorkingAsked } from './asked.ts';
import type { Step } from './step.ts';

/** What the hand forms of a kind are worked out from. */
export interface HandAsked<P extends Record<keyof P, number>> extends WorkingAsked {
  /** As they act. */
  readonly sizes: Sizes<P>;
  readonly thickness: Mm;
  /** [rad] or [mm], whole joint. */
  readonly amount: number;
  /** The form of the drive that tells the strain, and the one that tells the effort. */
  readonly form: HandForm<Sizes>;
}

/**
 * The hand forms of one drive, formula by formula.
 *
 * Before them stand `t` [mm] and, for a turn, `θ` (a plain number). They give `ε`, the strain of the skin without the
 * root, and `M` [N·mm] for a turn or `F` [N] for a travel: the effort of all side by side with the modulus `E` that they
 * put in by `modulusGiven`, for a narrow section and before anything flows.
 */
export type HandSteps<P extends Record<keyof P, number> = Record<string, number>> = (
  asked: HandAsked<P>,
) => readonly Step[];

/** The working of one kind of flexure: its drives by id. */
export interface KindWorking<P extends Record<keyof P, number> = Record<string, number>> {
  readonly family: string;
  readonly drives: Readonly<Record<string, HandSteps<P>>>;
}
