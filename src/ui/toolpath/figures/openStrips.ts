/** Open places of a layer as strips on the page [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { STATION, type LayerLaid, type OpenPlace } from '../../../core/inspect/toolpath/audit.ts';
import type { Mm } from '../../../core/units.ts';
import { onSheet } from '../../drawing/sheet.ts';
import type { Lengthwise } from './lengthwise.ts';

export interface OpenStrip {
  readonly kind: OpenPlace['kind'];
  readonly corners: readonly Point[];
  readonly middle: Point;
  /** Along the run [mm]. */
  readonly long: Mm;
}

/** Too narrow to be seen otherwise [px]. */
const NARROWEST = 2.4;

/** A strip along the run, bent with it. */
export function strip(page: Lengthwise, from: Mm, to: Mm, low: Mm, high: Mm): readonly Point[] {
  const { frame } = page;
  const count = frame.isCurved ? Math.max(1, Math.ceil((to - from) / STATION)) : 1;
  const alongs = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  const side = (off: Mm) => alongs.map((along) => onSheet(page, frame.at(along, off)));
  return [...side(high), ...side(low).toReversed()];
}

export function openStrips(layer: LayerLaid, page: Lengthwise): readonly OpenStrip[] {
  return layer.open.map(({ from, to, width, off, kind }) => {
    const half = Math.max(width, NARROWEST / page.pxPerMm) / 2;
    return {
      kind,
      long: to - from,
      corners: strip(page, from, to, off - half, off + half),
      middle: onSheet(page, page.frame.at((from + to) / 2, off)),
    };
  });
}
