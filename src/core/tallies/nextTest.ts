/** What could be tested next, and what each test is likely to tell about one joint. */
import type { PieceId } from '../coupons/piece.ts';
import type { Bend } from '../material/tally.ts';

/** A test that could be made. */
export interface Candidate {
  readonly what: 'flexes' | 'goOn' | 'thickness' | 'mark' | 'sag' | 'hold';
  readonly piece: PieceId;
  /** Of flexes: how bent, how many strips, and when to stop counting. */
  readonly bend?: Bend;
  readonly strips?: number;
  readonly stopAt?: number;
  /** Of going on: key of the tally of the first strip. */
  readonly from?: string;
}

/** From here to there. */
export type Span = readonly [low: number, high: number];

/** What a joint's life looks like, nine prints in ten. */
export interface LifeNow {
  /** Cycles by which 10 and 90 in 100 have broken, everything in doubt. */
  readonly life: Span;
  /** Where the chance of lasting lies, nine times in ten: what one print's scatter leaves open is in it, what can be learned is not. */
  readonly chance: Span;
}

export interface NextTest {
  readonly candidate: Candidate;
  /** Strain at which it tests, as a fraction; absent where none is. */
  readonly strain?: number;
  /** What is expected afterwards. */
  readonly after: LifeNow;
  /** Standard deviation of log10 N that stands for what is not known, before and after; their ratio ranks the tests. */
  readonly doubt: { readonly now: number; readonly after: number };
  /** Of effort, where the test tells that instead: shares by which it may be off, before and after. */
  readonly effort?: { readonly now: number; readonly after: number };
  /** Time by hand [h], and flexes to be counted in all. */
  readonly hours: number;
  readonly flexes: number;
  /** Grams of filament to print [g]; 0 where no printing is needed. */
  readonly grams: number;
}
