import { sortedByKey, wholeNumbers } from './countingSort.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** In place of a partner: an edge of one triangle only. */
export const OPEN = -1;
/** In place of a partner: an edge of more than two triangles. */
export const CROWDED = -2;

/**
 * Which triangles meet at which edges. Half-edge h belongs to triangle ⌊h / 3⌋ and runs from its corner h mod 3 to the
 * next one.
 */
export interface MeshEdges {
  /** Half-edges, those of one edge side by side. */
  readonly sorted: Uint32Array;
  /** Where the half-edges of each edge begin in `sorted`, and its length as the last. */
  readonly starts: Uint32Array;
  /** The other half-edge of the same edge where there are exactly two, else OPEN or CROWDED. */
  readonly partner: Int32Array;
  readonly open: number;
  readonly crowded: number;
  /** Edges that their two triangles run along in the same direction: one of them is wound the wrong way. */
  readonly clashing: number;
}

/**
 * The half-edge after another in its triangle.
 *
 * @param half - half-edge [-]
 * @returns half-edge [-]
 */
export function nextHalf(half: number): number {
  return half % 3 === 2 ? half - 2 : half + 1;
}

/**
 * Finds what meets at each edge.
 *
 * @param mesh - any mesh without triangles of repeated vertices [any unit]
 * @returns its edges; `starts` counts one more than there are
 */
export function edgesOf({ points, corners }: TriangleMesh): MeshEdges {
  const [lower, upper] = endsOf(corners);
  const vertices = points.length / 3;
  const sorted = sortedByKey(sortedByKey(wholeNumbers(corners.length), upper, vertices), lower, vertices);
  const starts = startsOf(sorted, lower, upper);
  return { sorted, starts, ...partnersOf(sorted, starts, corners) };
}

function endsOf(corners: Uint32Array): readonly [Uint32Array, Uint32Array] {
  const lower = new Uint32Array(corners.length);
  const upper = new Uint32Array(corners.length);
  for (let half = 0; half < corners.length; half += 1) {
    const from = corners[half]!;
    const to = corners[nextHalf(half)]!;
    lower[half] = from < to ? from : to;
    upper[half] = from < to ? to : from;
  }
  return [lower, upper];
}

function startsOf(sorted: Uint32Array, lower: Uint32Array, upper: Uint32Array): Uint32Array {
  const starts = new Uint32Array(sorted.length + 1);
  let count = 0;
  let [low, up] = [-1, -1];
  for (let i = 0; i < sorted.length; i += 1) {
    const half = sorted[i]!;
    if (lower[half] === low && upper[half] === up) continue;
    low = lower[half]!;
    up = upper[half]!;
    starts[count] = i;
    count += 1;
  }
  starts[count] = sorted.length;
  return starts.slice(0, count + 1);
}

function partnersOf(sorted: Uint32Array, starts: Uint32Array, corners: Uint32Array) {
  const partner = new Int32Array(sorted.length);
  let [open, crowded, clashing] = [0, 0, 0];
  for (let edge = 0; edge + 1 < starts.length; edge += 1) {
    const at = starts[edge]!;
    const meeting = starts[edge + 1]! - at;
    const [first, second] = [sorted[at]!, sorted[at + 1]!];
    if (meeting === 2) {
      partner[first] = second;
      partner[second] = first;
      if (corners[first] === corners[second]) clashing += 1;
      continue;
    }
    for (let i = at; i < at + meeting; i += 1) partner[sorted[i]!] = meeting === 1 ? OPEN : CROWDED;
    if (meeting === 1) open += 1;
    else crowded += 1;
  }
  return { partner, open, crowded, clashing };
}
