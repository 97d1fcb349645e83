/** Where everything of a sectional drawing lies on its sheet [px]. */
import type { Loop } from '../../core/geometry/loop.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { PartSection } from '../../core/inspect/flexure.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import type { Box } from '../drawing/lettering.ts';
import { FRAME, through, type Sheet } from '../drawing/sheet.ts';

export interface SectionPlan {
  readonly sheet: Sheet;
  readonly loops: readonly Loop[];
  readonly d: string;
  /** Of the plastic. */
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly boxes: readonly { readonly number: number; readonly box: Box }[];
  /** Where balloons may be. */
  readonly room: Box;
}

const SCALES = [5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02];
/** Room for balloons above, and for the dimension and the frame below; at the right for the other dimension [px]. */
const ABOVE = 46;
const BELOW = 66;
const BESIDE = 52;
const TALLEST = 380;
/** A box stands so far off its thin section [px]. */
const OFF = 6;

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function extentOf(points: readonly Point[]): Extent {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return left <= right ? { left, right, bottom, top } : { left: 0, right: 1, bottom: 0, top: 1 };
}

/** The longer side lies across the sheet: turned a quarter where it stands, never turned over. */
function laidAcross(points: readonly Point[]): (point: Point) => Point {
  const { left, right, bottom, top } = extentOf(points);
  return right - left >= top - bottom ? (point) => point : ({ x, y }) => ({ x: y, y: -x });
}

export function sectionPlan(
  section: PartSection,
  judged: readonly Judged[],
  scale: number,
  width: number,
  pxPerMm: number,
): SectionPlan {
  const seen = laidAcross(section.outlines.flat());
  const extent = extentOf(section.outlines.flat().map(seen));
  const [wide, high] = [scale * (extent.right - extent.left), scale * (extent.top - extent.bottom)];
  const fits = (by: number) => wide * by * pxPerMm <= width - BESIDE - FRAME - 24 && high * by * pxPerMm <= TALLEST;
  const drawn = SCALES.find(fits) ?? 0.01;
  const by = drawn * pxPerMm;
  const left = Math.round(FRAME + (width - FRAME - 36 - wide * by) / 2);
  const count = section.shows.length;
  // Many balloons stand in rows above the part.
  const rows = Math.max(0, Math.ceil((count * 25) / Math.max(120, wide * by)) - 1);
  const above = ABOVE + 24 * rows;
  const sheet: Sheet = {
    scale: drawn,
    pxPerMm: by,
    width,
    rootX: left,
    top: -Math.round(high * by + above),
    bottom: BELOW,
    small: width < 520,
  };
  const on = (point: Point): Point => {
    const { x, y } = seen(point);
    return { x: left + scale * by * (x - extent.left), y: -scale * by * (y - extent.bottom) };
  };
  const loops = section.outlines.map((loop) => loop.map(on));
  const boxes = judged
    .filter(({ flexure }) => section.shows.includes(flexure.number))
    .map(({ flexure }) => {
      const at = extentOf(flexure.walls.flat().map(on));
      const box = {
        x: at.left - OFF,
        y: at.bottom - OFF,
        width: at.right - at.left + 2 * OFF,
        height: at.top - at.bottom + 2 * OFF,
      };
      return { number: flexure.number, box };
    });
  return {
    sheet,
    loops,
    d: loops.map((loop) => through(loop, true)).join(''),
    box: { left, right: left + wide * by, bottom: 0, top: -high * by },
    boxes,
    room: { x: FRAME + 4, y: sheet.top + 4, width: width - FRAME - 8, height: high * by + above + 8 },
  };
}
