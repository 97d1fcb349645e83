/** How high each thing is that is laid, from the order in which heights come. */
import type { Mm } from '../../units.ts';

/** Heights that differ by less are one [mm]: a tenth of a micron, finer than files tell. */
const SAME = 1e-4;

/** So many heights are kept, that a spiral takes no more room than a print in layers. */
const MOST_KNOWN = 10_000;

/**
 * What rises lies on what was laid last. What comes back down, as the next part of a plate that is printed part by part does,
 * lies on the highest that is known below it; nothing but the plate is below the first.
 */
export class Steps {
  /** Of what is laid now [mm]. */
  z = 0;
  height = 0;
  #isFirst = true;
  /** Known heights, rising. */
  readonly #known: number[] = [];

  /** Goes on at a height; tells whether it is another one. */
  at(z: Mm): boolean {
    if (!this.#isFirst && Math.abs(z - this.z) < SAME) return false;
    const below = !this.#isFirst && z > this.z ? this.z : this.#below(z);
    this.#isFirst = false;
    this.z = z;
    this.height = z - below > SAME ? z - below : Math.max(z, SAME);
    this.#learn(z);
    return true;
  }

  /** First of the known that is not under z. */
  #place(z: Mm): number {
    let [low, high] = [0, this.#known.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#known[middle]! < z - SAME) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #below(z: Mm): Mm {
    return this.#known[this.#place(z) - 1] ?? 0;
  }

  #learn(z: Mm): void {
    const place = this.#place(z);
    if (this.#known.length >= MOST_KNOWN || Math.abs((this.#known[place] ?? Infinity) - z) < SAME) return;
    this.#known.splice(place, 0, z);
  }
}
