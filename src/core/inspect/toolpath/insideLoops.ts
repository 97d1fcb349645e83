/** Which loop of many a point lies in. */
import { loopArea, type Loop } from '../../geometry/loop.ts';

/** Rows that the edges are sorted into, at most. */
const MOST_ROWS = 4096;

/** Loops that can be asked what lies in them: their edges are sorted into level rows. */
export class InsideLoops {
  readonly loops: readonly Loop[];
  /** Areas, positive counter-clockwise [mm²]. */
  readonly areas: readonly number[];
  readonly #rows: number[][];
  readonly #base: number;
  readonly #step: number;
  readonly #ax: number[] = [];
  readonly #ay: number[] = [];
  readonly #bx: number[] = [];
  readonly #by: number[] = [];
  readonly #of: number[] = [];

  constructor(loops: readonly Loop[]) {
    this.loops = loops;
    this.areas = loops.map(loopArea);
    let [low, high, edges] = [Infinity, -Infinity, 0];
    for (const loop of loops) {
      for (const { y } of loop) {
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
      edges += loop.length;
    }
    const rows = Math.max(1, Math.min(MOST_ROWS, edges));
    this.#base = low;
    this.#step = high > low ? (high - low) / rows : 1;
    this.#rows = Array.from({ length: rows }, () => []);
    for (const [of, loop] of loops.entries()) this.#sort(loop, of);
  }

  #row(y: number): number {
    return Math.min(this.#rows.length - 1, Math.max(0, Math.floor((y - this.#base) / this.#step)));
  }

  #sort(loop: Loop, of: number): void {
    for (const [i, a] of loop.entries()) {
      const b = loop[(i + 1) % loop.length]!;
      if (a.y === b.y) continue;
      const edge = this.#ax.length;
      this.#ax.push(a.x);
      this.#ay.push(a.y);
      this.#bx.push(b.x);
      this.#by.push(b.y);
      this.#of.push(of);
      const [from, to] = [this.#row(Math.min(a.y, b.y)), this.#row(Math.max(a.y, b.y))];
      for (let row = from; row <= to; row += 1) this.#rows[row]!.push(edge);
    }
  }

  /** The smallest loop round a point; −1 outside all. */
  smallest(x: number, y: number): number {
    const isIn = new Set<number>();
    for (const edge of this.#rows[this.#row(y)]!) {
      const [ay, by] = [this.#ay[edge]!, this.#by[edge]!];
      if (ay > y === by > y) continue;
      const at = this.#ax[edge]! + ((y - ay) / (by - ay)) * (this.#bx[edge]! - this.#ax[edge]!);
      if (at <= x) continue;
      const of = this.#of[edge]!;
      if (!isIn.delete(of)) isIn.add(of);
    }
    let best = -1;
    for (const of of isIn) {
      if (best < 0 || Math.abs(this.areas[of]!) < Math.abs(this.areas[best]!)) best = of;
    }
    return best;
  }
}
