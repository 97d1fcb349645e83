/** How much a spiral rises a turn, from where it comes by its own beginning again. */
import { fromSegment } from '../../geometry/segment.ts';
import type { Mm } from '../../units.ts';

/** It has come round where it is as near as this to where the turn began, in plan [mm], after having been farther off than that. */
const NEAR: Mm = 1;
const AWAY: Mm = 3;
/** Turns that are looked at. */
const MOST_TURNS = 501;

export class Spiral {
  readonly #rises: number[] = [];
  #x = 0;
  #y = 0;
  #z = Number.NaN;
  #isAway = false;
  #best = Infinity;
  #bestZ = 0;

  /** A piece that rises as it is laid, from place to place [mm]. */
  take(fromX: Mm, fromY: Mm, fromZ: Mm, x: Mm, y: Mm, z: Mm): void {
    if (this.#rises.length >= MOST_TURNS) return;
    if (Number.isNaN(this.#z)) {
      this.#begin(fromX, fromY, fromZ);
      return;
    }
    const off = fromSegment({ x: this.#x, y: this.#y }, { x: fromX, y: fromY }, { x, y });
    if (!this.#isAway) this.#isAway = off > AWAY;
    else if (off < NEAR && off < this.#best) {
      this.#best = off;
      this.#bestZ = (fromZ + z) / 2;
    } else if (off >= NEAR && this.#best < NEAR) {
      this.#rises.push(this.#bestZ - this.#z);
      this.#begin(fromX, fromY, fromZ);
    }
  }

  #begin(x: Mm, y: Mm, z: Mm): void {
    this.#x = x;
    this.#y = y;
    this.#z = z;
    this.#isAway = false;
    this.#best = Infinity;
  }

  /** The middle of what its turns rise [mm]; undefined where it never came round. */
  pitch(): Mm | undefined {
    const rises = this.#rises.filter((rise) => rise > 0).toSorted((a, b) => a - b);
    return rises[rises.length >> 1];
  }
}
