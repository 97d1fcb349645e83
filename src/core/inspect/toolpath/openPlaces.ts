/** Where in a layer of a thin section nothing lies. */
import type { Mm } from '../../units.ts';
import type { OpenPlace } from './audit.ts';
import type { Cover } from './cutLayer.ts';
import type { RunFrame } from './runFrame.ts';

/**
 * Gaps up to this are none [mm]: a line keeps its place and width no better, and beads that are meant to touch are written with
 * places rounded to some microns. Common practice, no source.
 */
export const OPEN_OVER: Mm = 0.02;

/** What is looked at: these stations, and of each cut what lies between these two. */
export interface Looked {
  readonly first: number;
  readonly end: number;
  readonly reach: Mm;
}

interface Hole {
  readonly low: Mm;
  readonly high: Mm;
}

/** Between what is covered of one cut, from the lowest to the highest. */
function holes(covers: readonly Cover[]): readonly Hole[] {
  const found: Hole[] = [];
  let reached = Infinity;
  for (const { low, high } of covers.toSorted((a, b) => a.low - b.low)) {
    if (low - reached > OPEN_OVER) found.push({ low: reached, high: low });
    reached = reached === Infinity ? high : Math.max(reached, high);
  }
  return found;
}

interface Growing {
  readonly from: number;
  to: number;
  last: Hole;
  widest: Hole;
  readonly kind: OpenPlace['kind'];
}

const width = ({ low, high }: Hole) => high - low;
const meets = (a: Hole, b: Hole) => a.low < b.high && b.low < a.high;

/** Holes of a station go on those of the station before, one on one: where one parts into two, or two join, others begin. */
function grow(open: Growing[], found: readonly Hole[], station: number, kind: OpenPlace['kind']): void {
  const before = open.filter((one) => one.kind === kind && one.to === station - 1);
  for (const hole of found) {
    const met = before.filter(({ last }) => meets(last, hole));
    const on =
      met.length === 1 && found.filter((other) => meets(met[0]!.last, other)).length === 1 ? met[0] : undefined;
    if (!on) open.push({ from: station, to: station, last: hole, widest: hole, kind });
    else on.to = station;
  }
  for (const on of before) {
    if (on.to !== station) continue;
    on.last = found.find((hole) => meets(on.last, hole))!;
    if (width(on.last) > width(on.widest) + 1e-9) on.widest = on.last;
  }
}

/**
 * Open places of a layer: gaps between what lies beside one another, and stretches of the run across which nothing lies.
 * Where a place begins and ends is known to half a step of the stations. A layer in which nothing is laid at all has none.
 *
 * @param covers - by station: what of its cut is covered [mm]
 * @param frame - the stations [mm]
 * @param looked - which stations, and how far square to the run [mm]
 * @returns open places [mm]
 */
export function openPlaces(
  covers: readonly (readonly Cover[])[],
  { stations, step }: Pick<RunFrame, 'stations' | 'step'>,
  { first, end, reach }: Looked,
): readonly OpenPlace[] {
  const open: Growing[] = [];
  let isLaid = false;
  for (let k = first; k < end; k += 1) {
    const here = covers[k]!;
    if (here.length === 0) grow(open, [{ low: -reach / 2, high: reach / 2 }], k, 'along');
    else isLaid = true;
    grow(open, holes(here), k, 'between');
  }
  if (!isLaid) return [];
  return open.map(({ from, to, widest, kind }) => ({
    from: stations[from]! - step / 2,
    to: stations[to]! + step / 2,
    width: width(widest),
    off: (widest.low + widest.high) / 2,
    kind,
  }));
}
