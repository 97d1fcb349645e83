/** Where in a layer of a thin section contours start, lines begin and lines end. */
import type { Point } from '../../geometry/outline.ts';
import { laidWidth } from '../../print/bead.ts';
import type { Mm } from '../../units.ts';
import type { PathEnd } from './audit.ts';
import type { NearLayer } from './laidLayers.ts';
import type { NearPath } from './near.ts';
import { onRun, type OnRun, type RunFrame } from './runFrame.ts';

/** What runs within so much of the run is a line along it, as where lines are counted. */
const ALONG = Math.cos((46 * Math.PI) / 180);
/** A line thinner than this share of a usual one is pressed in between others; where it begins is no start of a contour [-]. Ours. */
const WHOLE_LINE = 0.75;

export interface Ends {
  readonly starts: readonly PathEnd[];
  readonly stops: readonly PathEnd[];
}

/** The section as its ends are looked at [mm]. */
export interface EndsLooked {
  /** Square to the run. */
  readonly reach: Mm;
  /** How wide its lines usually are. */
  readonly line: Mm;
  readonly diameter: Mm;
  /** How far from either end of the run lines are not counted, as in fillets. */
  readonly margin: Mm;
}

interface End extends OnRun {
  readonly point: Point;
  /** Whether the line runs along the section there, and how wide it is. */
  readonly isAlong: boolean;
  readonly width: Mm;
}

function endOf(frame: RunFrame, { points, feeds }: NearPath, width: (feed: number) => Mm, isFirst: boolean): End {
  const last = points.length / 2 - 1;
  const [a, b] = isFirst ? [0, 1] : [last, last - 1];
  const point = { x: points[2 * a]!, y: points[2 * a + 1]! };
  const dx = points[2 * b]! - point.x;
  const dy = points[2 * b + 1]! - point.y;
  const place = onRun(frame, point);
  const run = frame.pieces.findLast(({ from }) => from <= place.at) ?? frame.pieces[0]!;
  const isAlong = Math.abs(dx * run.ux + dy * run.uy) >= ALONG * Math.sqrt(dx * dx + dy * dy);
  return { ...place, point, isAlong, width: width(feeds[isFirst ? 0 : feeds.length - 1]!) };
}

/**
 * Starts and stops of a layer.
 *
 * A contour that starts from root to root, up to one line width beside the section, starts on it. So does a whole line that is
 * no contour and begins farther than that from both roots, fillets left out. Where such a line ends in there, or a thin one begins or ends, it stops.
 *
 * @param frame - the run [mm]
 * @param layer - what is laid [mm]
 * @param looked - reach, usual line width, filament [mm]
 * @returns starts and stops, by where along the run they are [mm]
 */
export function pathEnds(frame: RunFrame, { paths, height }: NearLayer, looked: EndsLooked): Ends {
  const { reach, line, diameter, margin } = looked;
  const inside = margin + line;
  const starts: PathEnd[] = [];
  const stops: PathEnd[] = [];
  const width = (feed: number) => laidWidth(diameter, feed, height);
  const isBeside = ({ off }: OnRun) => Math.abs(off) <= reach / 2 + line;
  const isOn = ({ at }: OnRun, from: Mm) => at >= from && at <= frame.length - from;
  for (const path of paths) {
    if (path.feeds.length === 0 || !(path.begins || path.ends)) continue;
    if (path.begins) {
      const begin = endOf(frame, path, width, true);
      const isInside = begin.isAlong && isOn(begin, inside) && isBeside(begin);
      if (path.isClosed && isOn(begin, 0) && isBeside(begin)) starts.push(told(begin, path));
      if (!path.isClosed && isInside) (begin.width >= WHOLE_LINE * line ? starts : stops).push(told(begin, path));
    }
    if (path.ends && !path.isClosed) {
      const end = endOf(frame, path, width, false);
      if (end.isAlong && isOn(end, inside) && isBeside(end)) stops.push(told(end, path));
    }
  }
  return { starts: starts.toSorted(byPlace), stops: stops.toSorted(byPlace) };
}

const told = ({ point, at, off }: End, { line }: NearPath): PathEnd => ({ point, at, off, line });

const byPlace = (a: PathEnd, b: PathEnd) => a.at - b.at || a.off - b.off;
