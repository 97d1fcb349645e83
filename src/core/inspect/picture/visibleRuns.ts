import type { Hiding, Slack, Spot } from './hiding.ts';

/** A line over the grid, with how near it is; and for each of its pieces how much must be nearer to hide it. */
export interface Line {
  readonly spots: readonly Spot[];
  readonly slackOf: (piece: number) => Slack;
}

/** Hidden for less than this [pixels], a line is drawn through; seen for less, it is left out, unless it is no longer. */
const SPECK = 1.5;
/** How often the end of what is seen is halved. */
const HALVINGS = 8;

/** A stretch from one place along a line to another [pixels]. */
interface Run {
  readonly from: number;
  readonly to: number;
}

/**
 * The parts of a line that nothing hides.
 *
 * @param line - on the grid [pixels]
 * @param hiding - tells what is hidden [-]
 * @param step - how close it is looked at [pixels], > 0
 * @returns the seen parts of it [pixels], in order; a closed line seen past its start is one part there
 */
export function visibleRuns(line: Line, hiding: Hiding, step: number): readonly (readonly Spot[])[] {
  const way = new Way(line, hiding);
  const runs = withoutSpecks(seenRuns(way, step), way.length);
  const parts = runs.map(({ from, to }) => way.cut(from, to));
  const [first, last] = [parts[0], parts.at(-1)];
  const isThrough = way.isClosed && runs.length > 1 && runs[0]?.from === 0 && runs.at(-1)?.to === way.length;
  if (!isThrough || first === undefined || last === undefined) return parts;
  return [[...last, ...first.slice(1)], ...parts.slice(1, -1)];
}

/** Looks at the middle of each step, and where one is seen and the next is not, for the place between them. */
function seenRuns(way: Way, step: number): readonly Run[] {
  const count = Math.max(2, Math.ceil(way.length / step));
  const runs: Run[] = [];
  const middle = (i: number) => ((i + 0.5) / count) * way.length;
  let from: number | undefined;
  for (let i = 0; i < count; i += 1) {
    const isSeen = way.isSeen(middle(i));
    if (isSeen && from === undefined) from = i === 0 ? 0 : way.border(middle(i), middle(i - 1));
    if (isSeen || from === undefined) continue;
    runs.push({ from, to: way.border(middle(i - 1), middle(i)) });
    from = undefined;
  }
  if (from !== undefined) runs.push({ from, to: way.length });
  return runs;
}

function withoutSpecks(runs: readonly Run[], length: number): readonly Run[] {
  const joined: Run[] = [];
  for (const run of runs) {
    const before = joined.at(-1);
    if (before !== undefined && run.from - before.to < SPECK)
      joined[joined.length - 1] = { from: before.from, to: run.to };
    else joined.push(run);
  }
  return joined.filter(({ from, to }) => to - from >= Math.min(SPECK, length));
}

/** A line by how far along it one is. */
class Way {
  readonly length: number;
  readonly isClosed: boolean;
  readonly #line: Line;
  readonly #hiding: Hiding;
  /** How far along each spot is. */
  readonly #along: Float64Array;
  /** The piece that was looked at last: places are mostly asked in order. */
  #piece = 0;

  constructor(line: Line, hiding: Hiding) {
    const { spots } = line;
    this.#line = line;
    this.#hiding = hiding;
    this.#along = new Float64Array(spots.length);
    for (let i = 1; i < spots.length; i += 1) {
      const [a, b] = [spots[i - 1]!, spots[i]!];
      this.#along[i] = this.#along[i - 1]! + Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    }
    this.length = this.#along.at(-1) ?? 0;
    this.isClosed = spots.length > 3 && spots[0] === spots.at(-1);
  }

  isSeen(along: number): boolean {
    const spot = this.#at(along);
    return !this.#hiding.isHidden(spot, this.#line.slackOf(this.#piece));
  }

  /** Between a place that is seen and one that is not. */
  border(seen: number, hidden: number): number {
    let [near, far] = [seen, hidden];
    for (let i = 0; i < HALVINGS; i += 1) {
      const middle = (near + far) / 2;
      if (this.isSeen(middle)) near = middle;
      else far = middle;
    }
    return near;
  }

  cut(from: number, to: number): readonly Spot[] {
    const first = this.#at(from);
    const start = this.#piece + 1;
    const last = this.#at(to);
    return [first, ...this.#line.spots.slice(start, this.#piece + 1), last];
  }

  #at(along: number): Spot {
    const all = this.#along;
    let piece = this.#piece;
    while (piece > 0 && all[piece]! > along) piece -= 1;
    while (piece < all.length - 2 && all[piece + 1]! < along) piece += 1;
    this.#piece = piece;
    const [a, b] = [this.#line.spots[piece]!, this.#line.spots[piece + 1]!];
    const length = all[piece + 1]! - all[piece]!;
    const share = length > 0 ? (along - all[piece]!) / length : 0;
    return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y), near: a.near + share * (b.near - a.near) };
  }
}
