/** Beads of one layer as they are drawn: each at the width that the file lays, piece by piece [px on the page, y down]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { pieceWidths } from '../../../core/inspect/toolpath/laidLayers.ts';
import type { NearPath } from '../../../core/inspect/toolpath/near.ts';
import type { Mm } from '../../../core/units.ts';
import { onSheet, through } from '../../drawing/sheet.ts';
import type { Extent } from './extent.ts';
import type { Lengthwise } from './lengthwise.ts';

/** Pieces that follow one another and are as wide as one another. */
export interface LaidStroke {
  readonly points: readonly Point[];
  readonly d: string;
  /** [px] */
  readonly width: number;
}

export interface LaidBead {
  readonly path: number;
  /** Whether it runs along the section; what only fills a pad is drawn lighter. */
  readonly isAcross: boolean;
  readonly strokes: readonly LaidStroke[];
}

/** Widths nearer than this are one [mm]: files round what is fed. */
const SAME: Mm = 5e-4;

/** Whether a piece may show, by the box round it. */
function mayShow(a: Point, b: Point, reach: number, { left, right, low, high }: Extent): boolean {
  return (
    Math.max(a.x, b.x) > left - reach &&
    Math.min(a.x, b.x) < right + reach &&
    Math.max(a.y, b.y) > low - reach &&
    Math.min(a.y, b.y) < high + reach
  );
}

function strokesOf(path: NearPath, widths: Float64Array, page: Lengthwise): readonly LaidStroke[] {
  const { frame, pxPerMm, shown } = page;
  const corner = (i: number) => frame.into({ x: path.points[2 * i]!, y: path.points[2 * i + 1]! });
  const strokes: { points: Point[]; width: Mm }[] = [];
  let isOn = false;
  let from = corner(0);
  for (let i = 0; i < widths.length; i += 1) {
    const to = corner(i + 1);
    const width = widths[i]!;
    const last = strokes.at(-1);
    if (!(width > 0) || !mayShow(from, to, width, shown)) isOn = false;
    else {
      if (isOn && last && Math.abs(last.width - width) < SAME) last.points.push(to);
      else strokes.push({ points: [from, to], width });
      isOn = true;
    }
    from = to;
  }
  return strokes.map(({ points, width }) => {
    const onPage = points.map((point) => onSheet(page, point));
    return { points: onPage, d: through(onPage), width: width * pxPerMm };
  });
}

/** What Fig. 1 needs of a layer to draw its beads. */
export interface LaidLayer {
  readonly paths: readonly NearPath[];
  /** Numbers of the paths that run along the section. */
  readonly across: ReadonlySet<number>;
  /** Of the layer at the section, and of the filament [mm]. */
  readonly height: Mm;
  readonly diameter: Mm;
}

/** Beads in the order laid. */
export function laidBeads({ paths, across, height, diameter }: LaidLayer, page: Lengthwise): readonly LaidBead[] {
  return paths
    .map((path) => ({
      path: path.path,
      isAcross: across.has(path.path),
      strokes: strokesOf(path, pieceWidths(path, height, diameter), page),
    }))
    .filter(({ strokes }) => strokes.length > 0);
}
