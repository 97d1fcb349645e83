/** Where in a layer of a thin section nothing lies. */
import type { Mm } from '../../units.ts';
import type { OpenPlace } from './audit.ts';
import { COVER_SIZE, type Covers } from './cutLayer.ts';
import type { RunFrame } from './runFrame.ts';

/**
 * Gaps up to this are none [mm]: a line keeps its place and width no better, and beads that are meant to touch are written with
 * places rounded to some microns. Common practice, no source.
 */
export const OPEN_OVER: Mm = 0.02;

/** Stations that are looked at: from `first` up to, and without, `end`; and how far the section reaches square to its run. */
export interface Looked {
  readonly first: number;
  readonly end: number;
  readonly reach: Mm;
}

/** A cut of the section: what is covered of it, between which limits it is looked at, and whether anything lies there. */
export interface Cut {
  readonly covers: Covers;
  readonly low: Mm;
  readonly high: Mm;
  readonly count: number;
}

interface Hole {
  readonly low: Mm;
  readonly high: Mm;
}

const NO_HOLES: readonly Hole[] = [];

/** The covers that reach into a cut, from the lowest on; most cuts have few, which are in order or nearly so. */
function inOrder(covers: Covers, low: Mm, high: Mm): readonly number[] {
  const order: number[] = [];
  let isSorted = true;
  for (let i = 0; i < covers.length; i += COVER_SIZE) {
    if (covers[i + 1]! <= low || covers[i]! >= high) continue;
    if (order.length > 0 && covers[i]! < covers[order.at(-1)!]!) isSorted = false;
    order.push(i);
  }
  return isSorted ? order : order.toSorted((a, b) => covers[a]! - covers[b]!);
}

/** Between what is covered of one cut, from the lowest to the highest, as far as that lies between two limits. */
function holes(covers: Covers, low: Mm, high: Mm): readonly Hole[] {
  let found: Hole[] | undefined;
  let reached = Infinity;
  for (const i of inOrder(covers, low, high)) {
    const from = Math.max(low, covers[i]!);
    if (from - reached > OPEN_OVER) (found ??= []).push({ low: reached, high: from });
    const to = Math.min(high, covers[i + 1]!);
    reached = reached === Infinity ? to : Math.max(reached, to);
  }
  return found ?? NO_HOLES;
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
  const before = open.filter((one) => one.to === station - 1 && one.kind === kind);
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
 * @param cuts - by station [mm]
 * @param frame - the stations [mm]
 * @param looked - which stations, and how far square to the run [mm]
 * @returns open places [mm]
 */
export function openPlaces(
  cuts: readonly Cut[],
  { stations, step }: Pick<RunFrame, 'stations' | 'step'>,
  { first, end, reach }: Looked,
): readonly OpenPlace[] {
  const open: Growing[] = [];
  let isLaid = false;
  for (let k = first; k < end; k += 1) {
    const { covers, low, high, count } = cuts[k]!;
    if (count === 0) grow(open, [{ low: -reach / 2, high: reach / 2 }], k, 'along');
    else isLaid = true;
    const found = holes(covers, low, high);
    if (found.length > 0) grow(open, found, k, 'between');
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
