/** What of a band is still one with the pad that it grows out of, so that there is no gap between them. */
import type { Mm } from '../units.ts';
import type { GapPad } from './gapPads.ts';
import { forNear, nearest, newMeeting, type Strand } from './strand.ts';

/** A band is growing out of its pad while its clearance rises by this much [mm] within so many thicknesses. */
const RISE: Mm = 0.01;
const RISE_WITHIN = 3;

/** Segments of a band from the first up to before the last. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
}

/** A band and the pads that hold its two ends. */
interface HeldStrand {
  readonly strand: Strand;
  readonly heldBy: readonly [readonly GapPad[], readonly GapPad[]];
}

/**
 * The segments of a band that are out in the open: not inside the pads that hold its ends.
 *
 * @param band - a band and its pads [mm]
 * @returns the stretch, empty when all is inside
 */
export function openStretch({ strand, heldBy }: HeldStrand): Stretch {
  const { count, x, y } = strand;
  // Asked of the middle of a segment, since ends of bands lie on the very edge of a pad.
  const isIn = (pads: readonly GapPad[], i: number) =>
    pads.some((pad) => pad.holds({ x: (x[i]! + x[i + 1]!) / 2, y: (y[i]! + y[i + 1]!) / 2 }));
  let [first, last] = [0, count];
  while (first < count && isIn(heldBy[0], first)) first += 1;
  while (last > first && isIn(heldBy[1], last - 1)) last -= 1;
  return { first, last };
}

/**
 * The segments of a band that a pad counts for: all that are in the open, but for those that are growing out of it.
 *
 * @param band - a band, its pads and its open stretch [mm]
 * @param pad - any pad [mm]
 * @param limit - greater clearances do not matter [mm]
 * @returns the stretch
 */
export function grownStretch(band: HeldStrand & Stretch, pad: GapPad, limit: Mm): Stretch {
  const [near, far] = band.heldBy.map((pads) => pads.includes(pad));
  if (!near && !far) return band;
  const clearances = clearancesOf(band.strand, pad, limit);
  return {
    first: near ? grownFrom(band.strand, clearances, band.first, band.last - 1) : band.first,
    last: far ? grownFrom(band.strand, clearances, band.last - 1, band.first) + 1 : band.last,
  };
}

/** Clear distance of every segment from a pad [mm], Infinity where it is above a limit. */
function clearancesOf(strand: Strand, pad: GapPad, limit: Mm): Float64Array {
  const clearances = new Float64Array(strand.count).fill(Infinity);
  const meeting = newMeeting();
  for (const edge of pad.edges) {
    forNear(strand, edge, { gap: limit }, (i, j) => {
      nearest(strand, i, edge, j, meeting);
      clearances[i] = Math.min(clearances[i]!, meeting.gap);
    });
  }
  return clearances;
}

/** The segment where the clearance has stopped rising on the way from one to another; one past that if nowhere. */
function grownFrom({ along, half }: Strand, clearances: Float64Array, from: number, to: number): number {
  const step = from <= to ? 1 : -1;
  let [most, raised] = [-Infinity, from];
  for (let i = from; i !== to + step; i += step) {
    const clearance = clearances[i]!;
    if (clearance > most + RISE) [most, raised] = [clearance, i];
    else if (clearance < most - RISE) return raised;
    else if (Math.abs(along[i]! - along[raised]!) > RISE_WITHIN * 2 * half[i]!) return raised;
  }
  return to + step;
}
