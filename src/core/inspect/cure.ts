/** Changes to the whole part or print that help its thin sections. */
import type { PlateUp, PrintedAs, AskedOfAll, Judged } from './judged.ts';

export type CureKind = 'scale' | 'line-width' | 'filament' | 'turn' | 'lying';

/** What a cure sets. */
export type CureChange =
  | { readonly kind: 'scale'; readonly scale: number }
  | { readonly kind: 'line-width'; readonly lineWidth: number }
  | { readonly kind: 'filament'; readonly filament: string }
  /** Bend no further [rad]. */
  | { readonly kind: 'turn'; readonly turn: number }
  | { readonly kind: 'lying'; readonly up: PlateUp };

export interface Cure {
  readonly change: CureChange;
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
  /** Each section before and after, in the order of their numbers. */
  readonly before: readonly Judged[];
  readonly after: readonly Judged[];
  /** How many sections land on whole lines, and how many on an even number of them, and how many pass, afterwards. */
  readonly whole: number;
  readonly even: number;
  readonly passing: number;
  /** New over old: volume of the print, effort at the same turn, size in each direction. */
  readonly costs: { readonly volume: number; readonly effort: number; readonly size: number };
}
