/** Which pads of all sections are the same body, and which flexures alone hold it together. */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { UnionFind } from '../../geometry/mesh/unionFind.ts';
import { along3, from3, length3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { FlexureRoot } from '../flexure.ts';
import type { RunEnd } from './regions.ts';
import type { Solid } from './solid.ts';

/** Most places on the way between two pads at which it is asked whether it goes through a flexure. */
const MOST_STOPS = 200;
/** With more pads than this their pairs are no longer tried. */
const MOST_PADS = 80;

export interface PadPlace {
  readonly at: Point3;
}

/** Whether a straight way through the material joins two places without going through a flexure. */
function isJoined(solid: Solid, a: Point3, b: Point3, isThin: (place: Point3) => boolean, step: Mm): boolean {
  if (!solid.isClear(a, b)) return false;
  const way = from3(a, b);
  const stops = Math.min(MOST_STOPS, Math.ceil(length3(way) / step));
  for (let i = 1; i < stops; i += 1) if (isThin(along3(a, way, i / stops))) return false;
  return true;
}

/**
 * Numbers pads, alike for places of one body.
 *
 * @param solid - the part [mm]
 * @param places - one place inside each pad of each section [mm]
 * @param isThin - whether a place [mm] lies in a flexure
 * @param step - how finely a way is followed: less than the shortest flexure is long [mm]
 * @returns the number of each, from 0, and how many there are
 */
export function joinedPads(
  solid: Solid,
  places: readonly PadPlace[],
  isThin: (place: Point3) => boolean,
  step: Mm,
): { readonly numbers: readonly number[]; readonly count: number } {
  const groups = new UnionFind(places.length);
  if (places.length <= MOST_PADS) {
    for (const [i, a] of places.entries()) {
      for (const [j, b] of places.entries()) {
        if (j <= i || groups.rootOf(i) === groups.rootOf(j)) continue;
        if (isJoined(solid, a.at, b.at, isThin, step)) groups.join(i, j);
      }
    }
  }
  const tops = [...new Set(places.map((_, i) => groups.rootOf(i)))];
  return { numbers: places.map((_, i) => tops.indexOf(groups.rootOf(i))), count: tops.length };
}

/** A name for what a run ends at: a pad, or a place where runs meet. */
export function nodeOf(root: FlexureRoot, end: RunEnd, section: number): string {
  if (root.joins.kind === 'pad') return `pad ${root.joins.pad}`;
  const places = end.kind === 'meeting' ? end.triangles.toSorted((a, b) => a - b) : [end.triangle];
  return `section ${section}, ${places.join(' ')}`;
}

/** For each way between two bodies, whether they still hang together without it. */
export function staysWhole(ways: readonly (readonly [string, string])[]): readonly boolean[] {
  const numbers = new Map([...new Set(ways.flat())].map((node, i) => [node, i]));
  const pairs = ways.map(([from, to]) => [numbers.get(from)!, numbers.get(to)!] as const);
  return pairs.map(([from, to], i) => {
    const groups = new UnionFind(numbers.size);
    for (const [j, [a, b]] of pairs.entries()) if (j !== i) groups.join(a, b);
    return groups.rootOf(from) === groups.rootOf(to);
  });
}
