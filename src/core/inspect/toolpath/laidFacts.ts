/** What is laid across a thin section, told by what is wanted: which lines are whole, which are thin, how thick it all is. */
import type { Mm } from '../../units.ts';
import {
  STATION,
  type LayerLaid,
  type OpenPlace,
  type PathEnd,
  type PlaceAudit,
  type Span,
  type Track,
} from './audit.ts';
import type { WantedLaid } from './judgedPlace.ts';
import type { Place } from './place.ts';
import { spanOf } from './span.ts';

/**
 * A line under this share of the wanted width is a thin one [-], pressed into a gap; from there on it is a whole line that came out
 * narrow. Common practice, no source: fillers of changing width are laid from about a quarter of a line up.
 */
export const THIN_UNDER = 0.75;
/** A gap that is open over this share of what is looked at is open all along [-]; stations know its ends to half a step. Ours. */
const ALL_ALONG = 0.95;

/** One layer, its lines told apart. */
export interface LayerFacts {
  readonly laid: LayerLaid;
  readonly isLaid: boolean;
  readonly whole: readonly Track[];
  readonly thin: readonly Track[];
  /** Whole lines across, at most of the cuts; where none runs along, what covers the cuts. */
  readonly count: number;
  /** Whether the thin lines together are missing from some of the cuts. */
  readonly isBroken: boolean;
  /** Widths of whole lines [mm]. */
  readonly widths?: Widths;
  readonly thinWidths?: Span;
  /** Gaps, but for those beside a thin line, which are told with it. */
  readonly openAllAlong: readonly OpenPlace[];
  readonly openElsewhere: readonly OpenPlace[];
  /** Ends of whole lines; those of a thin one are told by its being broken. */
  readonly stops: readonly PathEnd[];
}

export interface LaidFacts {
  readonly layers: readonly LayerFacts[];
  /** Of those that are laid: the middle of their thicknesses; of a crease their heights together [mm]. */
  readonly thickness: Mm;
  /** How deep it is laid along its axis [mm]; undefined where the layers do not tell. */
  readonly depth?: Mm;
  /** Lines across, or layers through. */
  readonly counts: Span;
  /** Mean width of whole lines, of a crease mean height of layers [mm]; 0 where there is none. */
  readonly each: Mm;
  /** Widths of all that lies there [mm]. */
  readonly widths?: Span;
}

/**
 * The middle of some numbers in their order.
 *
 * @param values - numbers [-]
 * @returns the middle one, of two the mean [-]; 0 of none
 *
 * @example middleOf([3, 1, 2, 10]) // → 2.5
 */
export function middleOf(values: readonly number[]): number {
  // As plain numbers they sort many times faster: of a tall section there are some ten thousand.
  const sorted = Float64Array.from(values).toSorted();
  const half = sorted.length >> 1;
  if (sorted.length === 0) return 0;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

interface Widths extends Span {
  readonly mean: Mm;
}

/** Of all pieces of some lines; undefined where there are none. */
function widthsOf(tracks: readonly Track[]): Widths | undefined {
  let [least, most, all, count] = [Infinity, -Infinity, 0, 0];
  for (const { width } of tracks) {
    for (const one of width) {
      least = Math.min(least, one);
      most = Math.max(most, one);
      all += one;
    }
    count += width.length;
  }
  return count > 0 ? { least, most, mean: all / count } : undefined;
}

/** How many of some lines there are at each place along the run; places are those of the stations. */
function countsAlong(tracks: readonly Track[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { at } of tracks) for (const place of at) counts.set(place, (counts.get(place) ?? 0) + 1);
  return counts;
}

function usualCount(tracks: readonly Track[], stations: number): number {
  if (tracks.every(({ at }) => at.length === stations)) return tracks.length;
  const often = new Map<number, number>();
  const counts = countsAlong(tracks);
  for (const count of counts.values()) often.set(count, (often.get(count) ?? 0) + 1);
  if (stations > counts.size) often.set(0, stations - counts.size);
  return [...often].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

/** A thin line ends here. */
function endsThin({ at, off }: PathEnd, thin: readonly Track[], line: Mm): boolean {
  return thin.some((track) => {
    const ends = [0, track.at.length - 1];
    return ends.some((i) => Math.abs(track.at[i]! - at) < line && Math.abs(track.off[i]! - off) < line / 2);
  });
}

/** The middle of a gap lies at a station, or half-way between two [-]. */
const NEXT_TO = 0.6;

/** A thin line lies beside the middle of a gap. */
function isBesideThin({ from, to, kind }: OpenPlace, thin: readonly Track[]): boolean {
  const middle = (from + to) / 2;
  return kind === 'between' && thin.some(({ at }) => at.some((place) => Math.abs(place - middle) <= NEXT_TO * STATION));
}

function factsOf(laid: LayerLaid, each: Mm, stations: number, looked: Span): LayerFacts {
  const isThin = (track: Track) => widthsOf([track])!.mean < THIN_UNDER * each;
  const thin = laid.tracks.filter(isThin);
  const whole = laid.tracks.filter((track) => !isThin(track));
  const widths = widthsOf(whole);
  const thinWidths = widthsOf(thin);
  const long = ALL_ALONG * (looked.most - looked.least);
  const open = laid.open.filter((one) => !isBesideThin(one, thin));
  const isAllAlong = ({ from, to, kind }: OpenPlace) => kind === 'between' && to - from >= long;
  return {
    laid,
    isLaid: laid.lines.most > 0,
    whole,
    thin,
    count: laid.tracks.length > 0 ? usualCount(whole, stations) : laid.lines.usual,
    isBroken: thin.length > 0 && countsAlong(thin).size < stations,
    ...(widths && { widths }),
    ...(thinWidths && { thinWidths }),
    openAllAlong: open.filter(isAllAlong),
    openElsewhere: open.filter((one) => !isAllAlong(one)),
    stops: laid.stops.filter((stop) => !endsThin(stop, thin, each)),
  };
}

/** The cuts at which lines are looked for: from the first that meets one in any layer to the last. */
function stationsOf({ layers, length }: PlaceAudit): { readonly count: number; readonly looked: Span } {
  let [least, most, step] = [Infinity, -Infinity, Infinity];
  for (const { tracks } of layers) {
    for (const { at } of tracks) {
      least = Math.min(least, at[0]!);
      most = Math.max(most, at.at(-1)!);
      if (at.length > 1) step = Math.min(step, at[1]! - at[0]!);
    }
  }
  if (most < least) return { count: 0, looked: { least: 0, most: length } };
  return { count: 1 + Math.round((most - least) / step), looked: { least, most } };
}

/**
 * What is laid, told by what is wanted.
 *
 * @param place - the section [mm]
 * @param audit - what is laid across it [mm]
 * @param wanted - count, and width of each line or height of each layer [mm]
 * @returns layers with their lines told apart, thickness, depth and counts [mm]
 *
 * Source: common-practice.
 */
export function laidFacts(place: Place, audit: PlaceAudit, wanted: Pick<WantedLaid, 'countOf' | 'each'>): LaidFacts {
  const isCrease = place.lying === 'crease';
  const { count: stations, looked } = stationsOf(audit);
  // Of a crease it is not known how wide its lines should be: as they mostly are.
  const line = wanted.countOf === 'lines' ? wanted.each : usualWidth(audit);
  const layers = audit.layers.map((laid) => factsOf(laid, line, stations, looked));
  const laid = layers.filter(({ isLaid }) => isLaid);
  const heights = laid.map(({ laid: { height } }) => height);
  const across = middleOf(laid.map(({ laid: { thickness } }) => thickness));
  const whole = laid.flatMap(({ widths }) => widths ?? []);
  const widths = spanOf(laid.flatMap(({ laid: { widths: all } }) => (all ? [all.least, all.most] : [])));
  const depth = isCrease ? across : place.lying === 'flat' ? sum(heights) : undefined;
  const counts = wanted.countOf === 'layers' ? [laid.length] : layers.map(({ laid: { lines } }) => lines.usual);
  const each = wanted.countOf === 'layers' ? heights : whole.map(({ mean }) => mean);
  return {
    layers,
    thickness: isCrease ? sum(heights) : across,
    ...(depth !== undefined && { depth }),
    counts: spanOf(counts) ?? { least: 0, most: 0 },
    each: middleOf(each),
    ...(widths && { widths: wanted.countOf === 'layers' ? spanOf(heights)! : widths }),
  };
}

/**
 * How wide lines of a section mostly are: the middle of all widths at all cuts.
 *
 * @param audit - what is laid [mm]
 * @returns width [mm]; 0 where nothing runs along
 */
export function usualWidth({ layers }: PlaceAudit): Mm {
  const all: number[] = [];
  for (const { tracks } of layers) {
    for (const { width } of tracks) for (const one of width) all.push(one);
  }
  if (all.length > 0) return middleOf(all);
  return middleOf(layers.flatMap(({ widths }) => (widths ? [widths.mean] : [])));
}
