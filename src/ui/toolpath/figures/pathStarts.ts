/** Where paths that run along a section begin, inside it and on its pads [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { LayerLaid, PathEnd } from '../../../core/inspect/toolpath/audit.ts';
import { THIN_UNDER } from '../../../core/inspect/toolpath/laidFacts.ts';
import type { NearPath } from '../../../core/inspect/toolpath/near.ts';
import type { Mm } from '../../../core/units.ts';
import { onSheet } from '../../drawing/sheet.ts';
import type { LaidBead } from './laidBeads.ts';
import type { Lengthwise } from './lengthwise.ts';

export interface Ring extends Point {
  readonly reach: number;
  readonly kind: 'start' | 'stop' | 'pad';
  /** What is ringed, where it is a fault. */
  readonly end?: PathEnd;
  /** In its layer: two may be at the same place. */
  readonly number: number;
}

const SMALLEST = 6;
const LARGEST = 13;
/** Nearer than this to a fault it is the same place [mm]. */
const SAME_PLACE = 0.02;

/** How wide the bead is that begins or ends nearest to a place [px]. */
function widthAt(beads: readonly LaidBead[], { x, y }: Point): number {
  let [nearest, width] = [Infinity, 0];
  for (const { strokes } of beads)
    for (const stroke of strokes)
      for (const end of [stroke.points[0], stroke.points.at(-1)]) {
        const distance = end ? Math.hypot(end.x - x, end.y - y) : Infinity;
        if (distance < nearest) [nearest, width] = [distance, stroke.width];
      }
  return width;
}

interface Ringed {
  readonly layer: LayerLaid;
  readonly paths: readonly NearPath[];
  /** How wide a whole line is [mm]. */
  readonly each: Mm;
}

/**
 * Rings round faults, then round harmless start points. Where a thin line is broken the gap itself is hatched, and its ends are no
 * faults of their own.
 */
export function ringsOf({ layer, paths, each }: Ringed, beads: readonly LaidBead[], page: Lengthwise): readonly Ring[] {
  const { frame, pxPerMm } = page;
  const across = beads.filter(({ isAcross }) => isAcross);
  const numbers = new Set(layer.tracks.map(({ path }) => path));
  const faults = [...layer.starts, ...layer.stops].map(({ point }) => point);
  const isFault = ({ x, y }: Point) => faults.some((one) => Math.hypot(one.x - x, one.y - y) < SAME_PLACE);
  const harmless = paths
    .filter(({ path, begins }) => begins && numbers.has(path))
    .map(({ points }) => ({ x: points[0]!, y: points[1]! }))
    .filter((point) => !isFault(point));
  const ring = (point: Point, kind: Ring['kind']): Omit<Ring, 'number'> => {
    const at = onSheet(page, frame.into(point));
    return { ...at, reach: Math.min(LARGEST, Math.max(SMALLEST, 0.85 * widthAt(across, at))), kind };
  };
  const isWhole = ({ point }: PathEnd) =>
    widthAt(across, onSheet(page, frame.into(point))) >= THIN_UNDER * each * pxPerMm;
  const all = [
    ...layer.starts.map((end) => ({ ...ring(end.point, 'start'), end })),
    ...layer.stops.filter(isWhole).map((end) => ({ ...ring(end.point, 'stop'), end })),
    ...harmless.map((point) => ring(point, 'pad')),
  ];
  return all.map((one, number) => ({ ...one, number }));
}
