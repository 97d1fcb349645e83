/** Lines of a layer at a place along the run. */
import { STATION, type LayerLaid, type PlaceAudit, type Track } from '../../../core/inspect/toolpath/audit.ts';
import type { Mm } from '../../../core/units.ts';

/** A line as it is cut there: how far off the run, and how wide [mm]. */
export interface CutLine {
  readonly off: Mm;
  readonly width: Mm;
}

/** Place of the last station at or before a place; -1 before the first. */
function stationBefore(at: Float64Array, along: Mm): number {
  let [low, high] = [-1, at.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at[middle]! <= along) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Stations stand in the middle of equal steps, so that a line reaches half a step beyond its last one. */
export function halfStep(at: Float64Array): Mm {
  return at.length > 1 ? (at[1]! - at[0]!) / 2 : STATION / 2;
}

/** A line where it is cut; nothing where it does not reach. */
export function cutAt({ at, off, width }: Track, along: Mm): CutLine | undefined {
  const [first, last] = [at[0], at.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const reach = halfStep(at) + 1e-6;
  if (along < first - reach || along > last + reach) return undefined;
  const i = Math.max(0, stationBefore(at, along));
  const span = i + 1 < at.length ? at[i + 1]! - at[i]! : 0;
  const share = span > 0 ? Math.max(0, (along - at[i]!) / span) : 0;
  const mixed = (values: Float64Array) => values[i]! + share * ((values[i + 1] ?? values[i]!) - values[i]!);
  return { off: mixed(off), width: mixed(width) };
}

/** All lines of a layer where it is cut, from the right of the run to its left. */
export function linesAt({ tracks }: LayerLaid, along: Mm): readonly CutLine[] {
  return tracks.flatMap((track) => cutAt(track, along) ?? []).toSorted((a, b) => a.off - b.off);
}

/** From where to where something lies across the run there, off it [mm]; the least of all that are asked. */
export function sidesAt(layers: readonly LayerLaid[], along: Mm): readonly [low: Mm, high: Mm] | undefined {
  let [low, high] = [Infinity, -Infinity];
  for (const layer of layers)
    for (const track of layer.tracks) {
      const cut = cutAt(track, along);
      if (!cut) continue;
      low = Math.min(low, cut.off - cut.width / 2);
      high = Math.max(high, cut.off + cut.width / 2);
    }
  return low <= high ? [low, high] : undefined;
}

/** Section B–B: through the middle of the run. */
export function cutPlace({ length }: PlaceAudit): Mm {
  return length / 2;
}

/** How much of the run lines are told along: fillets, where they part, are left out [mm]. */
export function lookedLength({ layers, length }: PlaceAudit): Mm {
  let [least, most] = [Infinity, -Infinity];
  for (const { tracks } of layers)
    for (const { at } of tracks) {
      least = Math.min(least, at[0]! - halfStep(at));
      most = Math.max(most, at.at(-1)! + halfStep(at));
    }
  return most > least ? Math.min(length, most - least) : length;
}
