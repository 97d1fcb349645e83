/** Moves that lay nothing and cross a thin section. */
import type { Mm } from '../../units.ts';
import { clipped } from './clip.ts';
import type { NearLayer } from './laidLayers.ts';
import type { NearTravel } from './near.ts';
import type { RunFrame } from './runFrame.ts';

/** The nozzle is clear of what it crosses from here on [mm]: a quarter of a usual layer. Ours. */
const LIFTED_OVER: Mm = 0.05;
/** Ends of moves that follow one another are the same point [mm]. */
const SAME: Mm = 1e-6;

export interface Crossed {
  readonly crossings: number;
  readonly lifted: number;
}

/** Length of a straight way inside the rectangles of the run, `half` to either side. */
function lengthWithin({ pieces }: RunFrame, half: Mm, { from, to }: NearTravel): Mm {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  let inside = 0;
  for (const run of pieces) {
    const local = (x: number, y: number) => [x * run.ux + y * run.uy, y * run.ux - x * run.uy] as const;
    const [s1, t1] = local(from.x - run.x, from.y - run.y);
    const [s2, t2] = local(to.x - run.x, to.y - run.y);
    const [a, b] = clipped(t1, t2, -half, half, ...clipped(s1, s2, 0, run.length, 0, 1));
    inside += Math.max(0, b - a) * long;
  }
  return inside;
}

/** Moves that follow one another without anything laid between are one way. */
function ways(travels: readonly NearTravel[]): readonly (readonly NearTravel[])[] {
  const all: NearTravel[][] = [];
  for (const travel of travels) {
    const before = all.at(-1)?.at(-1);
    const goesOn =
      before &&
      Math.abs(before.over - travel.over) < SAME &&
      Math.hypot(before.to.x - travel.from.x, before.to.y - travel.from.y) < SAME;
    if (goesOn) all.at(-1)!.push(travel);
    else all.push([travel]);
  }
  return all;
}

/**
 * How often travel crosses a section, by layer. A way that stays in it for no more than a line width only comes to a line, or
 * leaves it, and does not count; one is lifted if it is so wherever it is over the section.
 *
 * @param frame - the run [mm]
 * @param section - how far it reaches square to the run, and how wide its lines usually are [mm]
 * @param layers - from the bottom up [mm]
 * @param travels - in the order moved [mm]
 * @returns counts [-], one a layer
 */
export function travelCrossings(
  frame: RunFrame,
  section: { readonly reach: Mm; readonly line: Mm },
  layers: readonly NearLayer[],
  travels: readonly NearTravel[],
): readonly Crossed[] {
  const counts = layers.map(() => ({ crossings: 0, lifted: 0 }));
  for (const way of ways(travels)) {
    const over = way.map((travel) => ({ travel, inside: lengthWithin(frame, section.reach / 2, travel) }));
    if (!(over.reduce((sum, { inside }) => sum + inside, 0) > section.line)) continue;
    const at = layerAt(layers, way[0]!.over);
    const count = at === undefined ? undefined : counts[at];
    if (!count) continue;
    count.crossings += 1;
    if (over.every(({ travel, inside }) => inside === 0 || travel.z - travel.over > LIFTED_OVER)) count.lifted += 1;
  }
  return counts;
}

/** The layer whose top is at a height. */
function layerAt(layers: readonly NearLayer[], z: Mm): number | undefined {
  let [low, high] = [0, layers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (layers[middle]!.z < z - layers[middle]!.height / 2) low = middle + 1;
    else high = middle;
  }
  const layer = layers[low];
  return layer && Math.abs(layer.z - z) <= layer.height / 2 ? low : undefined;
}
