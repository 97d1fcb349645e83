/** Which pads of all sections are the same body, and which flexures alone hold it together. */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, from3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { FlexureRoot } from '../flexure.ts';
import type { MeasuredRun } from './measureRun.ts';
import type { RunEnd } from './regions.ts';
import type { Solid } from './solid.ts';

/** A way between two pads goes through thick material where it is at least so many times as thick as the thinnest flexure. */
const THICK = 2;
/** Places on the way at which that is looked at. */
const STOPS = 9;
/** With more pads than this their pairs are no longer tried. */
const MOST_PADS = 80;
const AXES: readonly Point3[] = [
  { x: 1, y: 0, z: 0 },
  { x: 0, y: 1, z: 0 },
  { x: 0, y: 0, z: 1 },
  { x: Math.SQRT1_2, y: Math.SQRT1_2, z: 0 },
  { x: Math.SQRT1_2, y: -Math.SQRT1_2, z: 0 },
  { x: 0, y: Math.SQRT1_2, z: Math.SQRT1_2 },
];

export interface PadPlace {
  readonly at: Point3;
}

class Groups {
  readonly #up: number[];
  constructor(count: number) {
    this.#up = Array.from({ length: count }, (_, i) => i);
  }
  of(i: number): number {
    let top = i;
    while (this.#up[top] !== top) top = this.#up[top]!;
    this.#up[i] = top;
    return top;
  }
  join(a: number, b: number): void {
    this.#up[this.of(a)] = this.of(b);
  }
}

function isThickBetween(solid: Solid, a: Point3, b: Point3, thinnest: Mm): boolean {
  if (!solid.isClear(a, b)) return false;
  const way = from3(a, b);
  for (let i = 1; i < STOPS; i += 1) {
    const stop = along3(a, way, i / STOPS);
    const isThick = AXES.every((axis) => (solid.thickness(stop, axis) ?? 0) >= THICK * thinnest);
    if (!isThick) return false;
  }
  return true;
}

/**
 * Numbers pads, alike for places of one body.
 *
 * @param solid - the part
 * @param places - one place inside each pad of each section [mm]
 * @param thinnest - least thickness of all flexures [mm]
 * @returns the number of each, from 0, and how many there are
 */
export function joinedPads(
  solid: Solid,
  places: readonly PadPlace[],
  thinnest: Mm,
): { readonly numbers: readonly number[]; readonly count: number } {
  const groups = new Groups(places.length);
  if (places.length <= MOST_PADS) {
    for (const [i, a] of places.entries()) {
      for (const [j, b] of places.entries()) {
        if (j <= i || groups.of(i) === groups.of(j)) continue;
        if (isThickBetween(solid, a.at, b.at, thinnest)) groups.join(i, j);
      }
    }
  }
  const tops = [...new Set(places.map((_, i) => groups.of(i)))];
  return { numbers: places.map((_, i) => tops.indexOf(groups.of(i))), count: tops.length };
}

/** A name for what a run ends at: a pad, or a place where runs meet. */
function nodeOf(root: FlexureRoot, end: RunEnd): string {
  if (root.joins.kind === 'pad') return `pad ${root.joins.pad}`;
  return end.kind === 'meeting' ? `meeting ${[...end.triangles].toSorted((a, b) => a - b).join(' ')}` : 'thin';
}

/** For each flexure, whether what it joins still hangs together without it. */
export function hangsTogether(
  roots: readonly (readonly [FlexureRoot, FlexureRoot])[],
  runs: readonly MeasuredRun[],
): readonly boolean[] {
  const ways = roots.map(
    ([a, b], i) => [nodeOf(a, runs[i]!.ends[0].joins), nodeOf(b, runs[i]!.ends[1].joins)] as const,
  );
  const nodes = [...new Set(ways.flat())];
  return ways.map(([from, to], i) => {
    const groups = new Groups(nodes.length);
    for (const [j, [a, b]] of ways.entries()) if (j !== i) groups.join(nodes.indexOf(a), nodes.indexOf(b));
    return groups.of(nodes.indexOf(from)) === groups.of(nodes.indexOf(to));
  });
}
