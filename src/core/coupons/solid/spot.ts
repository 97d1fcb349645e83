/** Places on a grid of whole micrometres. */
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
