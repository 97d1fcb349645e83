import type { Point } from '../../geometry/outline.ts';

/**
 * A line with fewer corners that stays within a distance of the first: the corner farthest from the chord stays, and so on
 * for both halves. A closed line starts with its two farthest corners.
 *
 * @param line - corners in order [mm]; closed where the last is the first
 * @param within - how far it may move [mm], ≥ 0
 * @returns some of its corners [mm]
 */
export function simplerLine(line: readonly Point[], within: number): readonly Point[] {
  const isKept = new Uint8Array(line.length);
  isKept[0] = isKept[line.length - 1] = 1;
  const waiting: [number, number][] = [[0, line.length - 1]];
  for (let span = waiting.pop(); span !== undefined; span = waiting.pop()) {
    const [from, to] = span;
    const { at, off } = farthest(line, from, to);
    if (at === from || off <= within) continue;
    isKept[at] = 1;
    waiting.push([from, at], [at, to]);
  }
  return line.filter((_, i) => isKept[i] === 1);
}

function farthest(line: readonly Point[], from: number, to: number): { readonly at: number; readonly off: number } {
  const [a, b] = [line[from]!, line[to]!];
  const [x, y] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(x, y);
  let [at, off] = [from, 0];
  for (let i = from + 1; i < to; i += 1) {
    const [px, py] = [line[i]!.x - a.x, line[i]!.y - a.y];
    const away = length > 0 ? Math.abs(px * y - py * x) / length : Math.hypot(px, py);
    if (!(away > off)) continue;
    at = i;
    off = away;
  }
  return { at, off };
}
