/** The zone to keep start points out of: a line along the surface of a thin section [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { STATION, type PlaceAudit } from '../../../core/inspect/toolpath/audit.ts';
import type { Mm } from '../../../core/units.ts';
import { onSheet } from '../../drawing/sheet.ts';
import type { Lengthwise } from './lengthwise.ts';
import { sidesAt } from './trackAt.ts';

/** How far off the surface it is drawn: as in the drawing of a joint [mm], and never so near that it touches [px]. */
const OFF: Mm = 0.28;
const OFF_PX = 9;

/** Moves each point square to the line through its neighbours, away from the run. */
function pushedOut(points: readonly Point[], by: number): readonly Point[] {
  return points.map((point, i) => {
    const [a, b] = [points[i - 1] ?? point, points[i + 1] ?? point];
    const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    return { x: point.x - (by * (b.y - a.y)) / long, y: point.y + (by * (b.x - a.x)) / long };
  });
}

/**
 * Follows the outermost that any layer lays at the right of the run, which is its lower side on the page, as far as lines run
 * along it: in fillets they turn away.
 */
export function surfaceLine(audit: PlaceAudit, reach: Mm, page: Lengthwise): readonly Point[] {
  const count = Math.max(2, Math.ceil(audit.length / STATION));
  const alongs = Array.from({ length: count + 1 }, (_, i) => (audit.length * i) / count);
  const lows = alongs.map((along) => sidesAt(audit.layers, along)?.[0]);
  const isKnown = lows.filter((low) => low !== undefined).length > 1;
  const points = alongs.flatMap((along, i) => {
    const low = isKnown ? lows[i] : -reach / 2;
    return low === undefined ? [] : [onSheet(page, page.frame.at(along, Math.min(low, 0)))];
  });
  return pushedOut(points, Math.max(OFF_PX, OFF * page.pxPerMm));
}
