/** Places on a grid of whole micrometres. */

/** Whole micrometres in a millimetre. */
export const GRID = 1000;

/** A place [µm]. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A key for two places by their numbers, whichever comes first. */
export const pairKey = (a: number, b: number): number => Math.min(a, b) * 2 ** 26 + Math.max(a, b);

/** Twice the area of the triangle of three places, above 0 counter-clockwise; exact up to parts of metres. */
export function turnOf(a: Spot, b: Spot, c: Spot): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Places by number, each there once. */
export class Spots {
  readonly all: Spot[] = [];
  readonly #numbers = new Map<string, number>();

  /** Of the place of the grid that is nearest [µm]. */
  numberOf({ x, y }: Spot): number {
    // Adding 0 makes −0 the 0 that it is.
    const spot = { x: Math.round(x) + 0, y: Math.round(y) + 0 };
    const key = `${spot.x} ${spot.y}`;
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    this.#numbers.set(key, this.all.length);
    this.all.push(spot);
    return this.all.length - 1;
  }
}
