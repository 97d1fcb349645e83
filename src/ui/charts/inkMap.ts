import { clamp, type Box, type Px } from './frame.ts';

/** A place that is drawn on; the weight says how bad it is to lay words over it. */
export interface Ink extends Px {
  readonly weight: number;
}

/** Coarser than a line, finer than a letter [px]. */
const CELL = 4;

/**
 * How much is drawn in any part of the plot: a table of sums, so that a label can try a hundred places in no time.
 *
 * @returns the weight of all that lies in an area [px], to the nearest cell
 */
export function inkMap(inks: readonly Ink[], box: Box): (area: Box) => number {
  const columns = Math.ceil((box.right - box.left) / CELL) + 1;
  const rows = Math.ceil((box.bottom - box.top) / CELL) + 1;
  const column = (x: number) => clamp(Math.floor((x - box.left) / CELL), [0, columns - 1]);
  const row = (y: number) => clamp(Math.floor((y - box.top) / CELL), [0, rows - 1]);

  // sums[(r + 1)·(columns + 1) + c + 1] holds everything above and left of the lower right corner of cell (r, c).
  const sums = new Float64Array((columns + 1) * (rows + 1));
  const cell = (r: number, c: number) => r * (columns + 1) + c;
  for (const { x, y, weight } of inks) {
    const index = cell(row(y) + 1, column(x) + 1);
    sums[index] = (sums[index] ?? 0) + weight;
  }
  const sum = (r: number, c: number) => sums[cell(r, c)] ?? 0;
  for (let r = 1; r <= rows; r += 1) {
    for (let c = 1; c <= columns; c += 1)
      sums[cell(r, c)] = sum(r, c) + sum(r - 1, c) + sum(r, c - 1) - sum(r - 1, c - 1);
  }
  return ({ left, right, top, bottom }) => {
    const [r0, r1, c0, c1] = [row(top), row(bottom) + 1, column(left), column(right) + 1];
    return sum(r1, c1) - sum(r0, c1) - sum(r1, c0) + sum(r0, c0);
  };
}
