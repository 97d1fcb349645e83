/**
 * What happened to test prints: one tally a specimen, as it was entered. Tallies stand on the row of the user's own that they
 * correct, so that whoever keeps, shares or takes back the row does so with them.
 */
import type { Lying } from '../print/profile.ts';
import type { MPa, Mm, Rad } from '../units.ts';

interface Common {
  /** Another for each tally of a row. */
  readonly id: string;
  /** Day of the test, as `2026-11-25`. */
  readonly date: string;
  /** What was seen, one line; may be empty. */
  readonly seen: string;
  /** Set aside by the user: kept and shown, and nothing is learned from it. */
  readonly leftOut?: true;
}

/** How a strip was bent: laid over a round bar, or its ends turned against each other over a free length. */
export type Bend =
  { readonly way: 'over'; readonly radius: Mm } | { readonly way: 'to'; readonly turn: Rad; readonly length: Mm };

/** A strip flexed over and over. */
export interface FlexTally extends Common {
  readonly kind: 'flexes';
  readonly bend: Bend;
  readonly thickness: Mm;
  readonly lying: Lying;
  readonly ways: 'one way' | 'both ways';
  /** Flexes counted when it broke, or when it was still whole and the count stopped. */
  readonly cycles: number;
  readonly ended: 'broke' | 'whole';
}

/** A rung of the thickness ladder under a caliper. */
export interface ThicknessTally extends Common {
  readonly kind: 'thickness';
  readonly countOf: 'lines' | 'layers';
  readonly count: number;
  /** As thick as the settings make it. */
  readonly set: Mm;
  readonly measured: Mm;
}

/** A strip laid once over a round bar, and what it looked like afterwards. */
export interface MarkTally extends Common {
  readonly kind: 'mark';
  readonly radius: Mm;
  readonly thickness: Mm;
  readonly lying: Lying;
  readonly looks: 'unmarked' | 'whitened' | 'cracked';
}

/** A bar clamped at one end with a weight at the other: how much lower its end hangs than without the weight. */
export interface SagTally extends Common {
  readonly kind: 'sag';
  readonly lying: Lying;
  /** Of the weight [N]. */
  readonly force: number;
  readonly sag: Mm;
  /** From the clamp to the weight. */
  readonly length: Mm;
  readonly thickness: Mm;
  readonly depth: Mm;
}

/** A strip held bent, and how much of the bend stayed. */
export interface HoldTally extends Common {
  readonly kind: 'hold';
  readonly radius: Mm;
  readonly thickness: Mm;
  readonly hours: number;
  readonly held: Rad;
  readonly left: Rad;
}

/** A bar pulled until it broke. */
export interface PullTally extends Common {
  readonly kind: 'pull';
  readonly direction: 'along lines' | 'across layers';
  readonly strength: MPa;
  /** Where the stretch was measured as well. */
  readonly modulus?: MPa;
}

export type Tally = FlexTally | ThicknessTally | MarkTally | SagTally | HoldTally | PullTally;
export type TallyKind = Tally['kind'];

/** What a row of the user's own has been taught by tests, and where they were made. */
export interface Tests {
  /** Which printer, one line; may be empty. */
  readonly printer: string;
  /** Which spool, one line; may be empty. */
  readonly spool: string;
  /** Key of the row whose figures stand where nothing has been tested: one of the table or of the user's own. */
  readonly like: string;
  readonly tallies: readonly Tally[];
}

/** As many tallies as a row carries. */
export const MOST_TALLIES = 500;
