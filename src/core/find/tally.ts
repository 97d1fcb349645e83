import type { Place } from './candidates.ts';
import { SHORTCOMINGS, type Shortcoming } from './findAnswer.ts';
import { howFar } from './howFar.ts';
import { BIT, type Cell, type Screened } from './cell.ts';

/** One that falls short in one way alone, and how far off it is. */
export interface Near extends Place {
  readonly far: number;
}

/** So many of each way are remembered in a lot, in case the nearest turns out otherwise once it is assessed. */
const REMEMBERED = 3;

/** What the candidates of one lot fall short in: how many of each combination, and the nearest of each way alone. */
export class Tally {
  /** By the bits of all that they fall short in. */
  readonly #counts = new Int32Array(1 << SHORTCOMINGS.length);
  /** The combinations that have come up: a few hundred of all that there could be. */
  readonly #masks: number[] = [];
  readonly #nearest = new Map<number, Near[]>();

  take(screened: Screened, cell: Cell): void {
    const { mask } = cell;
    const before = this.#counts[mask] ?? 0;
    if (before === 0) this.#masks.push(mask);
    this.#counts[mask] = before + 1;
    // One bit alone: less by one it shares no bit with itself.
    if (mask !== 0 && (mask & (mask - 1)) === 0) this.#remember(screened, cell);
  }

  #remember(screened: Screened, cell: Cell): void {
    const near = this.#nearest.get(cell.mask) ?? [];
    const reason = SHORTCOMINGS[31 - Math.clz32(cell.mask)] as Shortcoming;
    const far = howFar(screened, cell, reason);
    const last = near.at(-1);
    if (near.length >= REMEMBERED && last !== undefined && far >= last.far) return;
    const { at, row, depth, side } = cell;
    near.push({ at, row, depth, side, far });
    near.sort((a, b) => a.far - b.far);
    this.#nearest.set(cell.mask, near.slice(0, REMEMBERED));
  }

  /** How many meet all that is wanted. */
  get meets(): number {
    return this.#counts[0] ?? 0;
  }

  /** How many fall short in one way alone, and with others too. */
  countOf(reason: Shortcoming): { readonly alone: number; readonly withOthers: number } {
    const bit = BIT[reason];
    const all = this.#masks.reduce((sum, mask) => ((mask & bit) === 0 ? sum : sum + (this.#counts[mask] ?? 0)), 0);
    const alone = this.#counts[bit] ?? 0;
    return { alone, withOthers: all - alone };
  }

  /** Those that fall short in one way alone, nearest first. */
  nearestIn(reason: Shortcoming): readonly Near[] {
    return this.#nearest.get(BIT[reason]) ?? [];
  }
}
