/**
 * The working of a joint as data: formulas as text that a computer algebra reads, what is put into them, and the figure
 * that the core itself gives. Whoever shows it works every formula out once more, with units, and sets both side by side.
 */
import type { ProvenanceKind } from '../material/types.ts';
import type { SourceKey } from '../sources.ts';

/** Unit of a quantity as it is shown; '' for a plain number. */
export type WorkingUnit =
  | ''
  | 'deg'
  | 'mm'
  | '1/mm'
  | 'mm^2'
  | '1/mm^2'
  | 'mm^3'
  | '1/mm^3'
  | 'mm^4'
  | 'MPa'
  | 'N'
  | 'N/mm'
  | 'N mm'
  | '1/(N mm)'
  | 'mm/N';

/** Where a quantity comes from that is put in. */
export type GivenFrom =
  /** What is wanted of the joint. */
  | 'brief'
  /** A size that can be changed. */
  | 'size'
  /** The print profile. */
  | 'print'
  /** The filament row; its provenance stands beside it. */
  | 'filament'
  /** A constant of the formula's source. */
  | 'constant'
  /** A sum or a root that is too long for a page; the program has done it. */
  | 'summed'
  /** The solver's answer. */
  | 'solver';

/** A quantity that is put in. Symbols: letters, Greek ones too; what stands after `_` is set below the line. */
export interface Given {
  readonly symbol: string;
  /** In its unit. */
  readonly value: number;
  readonly unit: WorkingUnit;
  readonly from: GivenFrom;
  /** How sound the value is, where that is known. */
  readonly provenance?: ProvenanceKind;
}

interface StepOf<Kind extends string> {
  readonly kind: Kind;
  /** Names its words: what it is called, and within what it holds. */
  readonly id: string;
  /** The quantity that it gives. */
  readonly symbol: string;
  /** Quantities that are put in here for the first time; later steps may use them. */
  readonly given: readonly Given[];
  /** Unit of the result. */
  readonly unit: WorkingUnit;
  readonly source: SourceKey;
}

/** A quantity worked out: symbol = expression. */
export interface Formula extends StepOf<'formula'> {
  /** Of quantities that have been given or worked out: + − * / ^, brackets, functions, numbers and `pi`. */
  readonly expression: string;
  /** What the core itself gives, in the unit; absent for what it gives no name to on the way. */
  readonly figure?: number;
}

/** A quantity that no formula gives outright: the value at which both sides are alike. It is checked by putting it in. */
export interface Balance extends StepOf<'balance'> {
  readonly left: string;
  readonly right: string;
  /** The value that the core has found, in the unit. */
  readonly figure: number;
}

/** Sum of an expression over the values of one quantity. */
export interface Sum extends StepOf<'sum'> {
  readonly expression: string;
  /** What runs: its symbol, and its values in order. */
  readonly over: Omit<Given, 'value' | 'symbol'> & { readonly symbol: string; readonly values: readonly number[] };
  readonly figure?: number;
}

export type Step = Formula | Balance | Sum;

/** Parts of a working in the order of the argument. */
export type WorkingSectionId =
  'section' | 'movement' | 'hand' | 'solved' | 'root' | 'effort' | 'set' | 'life' | 'chance';

export interface WorkingSection {
  readonly id: WorkingSectionId;
  readonly steps: readonly Step[];
}

/** A quantity that is put in, by its symbol, value and unit. */
export function given(
  symbol: string,
  value: number,
  unit: WorkingUnit,
  from: GivenFrom,
  provenance?: ProvenanceKind,
): Given {
  return { symbol, value, unit, from, ...(provenance === undefined ? {} : { provenance }) };
}

/** What a formula is written down with; what is left out is empty. */
type Written<S extends Step> = Omit<S, 'kind' | 'given'> & { readonly given?: readonly Given[] };

/** symbol = expression. */
export function formula(step: Written<Formula>): Formula {
  return { kind: 'formula', ...step, given: step.given ?? [] };
}

/** left = right at the figure of the symbol. */
export function balance(step: Written<Balance>): Balance {
  return { kind: 'balance', ...step, given: step.given ?? [] };
}

/** symbol = Σ expression. */
export function sum(step: Written<Sum>): Sum {
  return { kind: 'sum', ...step, given: step.given ?? [] };
}
