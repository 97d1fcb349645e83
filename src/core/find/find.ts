import type { Result } from '../result.ts';
import type { FindAnswer } from './findAnswer.ts';
import type { Wanted } from './wanted.ts';

/** How a search tells what it does. */
export interface FindAsked {
  /** Called every few milliseconds, with the share that is done. */
  readonly alive?: (share: number) => void;
  /** Called with all that has been found so far, a few times a second. */
  readonly tell?: (soFar: FindAnswer) => void;
  /** Milliseconds by any clock: says only when to tell. */
  readonly now?: () => number;
}

export declare function find(wanted: Wanted, asked?: FindAsked): Result<FindAnswer>;
