import type { DrawnEdges } from './drawnEdges.ts';
import type { OnScreen } from './onScreen.ts';

/** Where more than two edges meet, a line goes on only into one that turns by less than this: 45°. */
const COS_ON = Math.SQRT1_2;
/** How many edges at a vertex are looked at, so that a vertex with a million takes no longer. */
const MOST_LOOKS = 16;

/** Edges one after the other, and the vertices between them: one more than edges. */
export interface Chain {
  readonly edges: readonly number[];
  readonly vertices: readonly number[];
}

/**
 * Joins edges of one class to lines as long as possible.
 *
 * @param drawn - edges [-]
 * @param silhouettes - 1 for those where the surface turns away, 0 for the others [-]
 * @param isUsed - 1 for each edge that is to be left out [-]; those that are told are marked
 * @param screen - places of the vertices [pixels]
 * @returns lines, every edge in one of them
 */
export function* chainsOf(
  drawn: DrawnEdges,
  silhouettes: 0 | 1,
  isUsed: Uint8Array,
  screen: OnScreen,
): Generator<Chain> {
  const links = new Links(drawn, silhouettes, isUsed, screen);
  for (let edge = 0; edge < drawn.count; edge += 1) {
    if (isUsed[edge] === 1 || drawn.isSilhouette[edge] !== silhouettes) continue;
    isUsed[edge] = 1;
    const [from, to] = [drawn.from[edge]!, drawn.to[edge]!];
    const ahead = links.goOn(from, to);
    const back = links.goOn(to, from);
    yield {
      edges: [...back.edges.toReversed(), edge, ...ahead.edges],
      vertices: [...back.vertices.toReversed(), from, to, ...ahead.vertices],
    };
  }
}

/** Which edges meet at which vertices: for each vertex its first place, for each place the next one. */
class Links {
  readonly #drawn: DrawnEdges;
  readonly #isUsed: Uint8Array;
  readonly #screen: OnScreen;
  readonly #first: Int32Array;
  readonly #next: Int32Array;
  readonly #meeting: Uint32Array;

  constructor(drawn: DrawnEdges, silhouettes: 0 | 1, isUsed: Uint8Array, screen: OnScreen) {
    this.#drawn = drawn;
    this.#isUsed = isUsed;
    this.#screen = screen;
    this.#first = new Int32Array(screen.x.length).fill(-1);
    this.#next = new Int32Array(2 * drawn.count);
    this.#meeting = new Uint32Array(screen.x.length);
    for (let edge = 0; edge < drawn.count; edge += 1) {
      if (isUsed[edge] === 1 || drawn.isSilhouette[edge] !== silhouettes) continue;
      this.#link(2 * edge, drawn.from[edge]!);
      this.#link(2 * edge + 1, drawn.to[edge]!);
    }
  }

  #link(place: number, vertex: number): void {
    this.#next[place] = this.#first[vertex]!;
    this.#first[vertex] = place;
    this.#meeting[vertex]! += 1;
  }

  /** On from the second of two vertices, as far as it goes. */
  goOn(from: number, to: number): { readonly edges: number[]; readonly vertices: number[] } {
    const way = { edges: [] as number[], vertices: [] as number[] };
    let [before, at] = [from, to];
    for (let next = this.#straightest(before, at); next !== undefined; next = this.#straightest(before, at)) {
      this.#isUsed[next] = 1;
      before = at;
      at = this.#farEnd(next, at);
      way.edges.push(next);
      way.vertices.push(at);
    }
    return way;
  }

  #farEnd(edge: number, vertex: number): number {
    return this.#drawn.from[edge] === vertex ? this.#drawn.to[edge]! : this.#drawn.from[edge]!;
  }

  #straightest(before: number, at: number): number | undefined {
    let best: number | undefined;
    let bestCos = this.#meeting[at] === 2 ? -Infinity : COS_ON;
    let looks = 0;
    for (let place = this.#first[at]!; place >= 0 && looks < MOST_LOOKS; place = this.#next[place]!) {
      const edge = place >> 1;
      if (this.#isUsed[edge] === 1) {
        if (place === this.#first[at]) this.#first[at] = this.#next[place]!;
        else looks += 1;
        continue;
      }
      looks += 1;
      const cos = this.#turn(before, at, this.#farEnd(edge, at));
      if (cos < bestCos) continue;
      bestCos = cos;
      best = edge;
    }
    return best;
  }

  /** Cosine of how far a line turns on the picture. */
  #turn(a: number, b: number, c: number): number {
    const { x, y } = this.#screen;
    const [ax, ay] = [x[b]! - x[a]!, y[b]! - y[a]!];
    const [bx, by] = [x[c]! - x[b]!, y[c]! - y[b]!];
    const lengths = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
    return lengths > 0 ? (ax * bx + ay * by) / lengths : 1;
  }
}
