/** Where everything of Fig. 1 lies: one layer at a thin section, seen from above [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { LayerLaid, PlaceAudit } from '../../../core/inspect/toolpath/audit.ts';
import type { NearPath } from '../../../core/inspect/toolpath/near.ts';
import type { Place } from '../../../core/inspect/toolpath/place.ts';
import type { Mm } from '../../../core/units.ts';
import { gridOf } from '../../drawing/ground.ts';
import { letteringWidth, type Box } from '../../drawing/lettering.ts';
import { clearPaper } from '../../drawing/clearPaper.ts';
import type { Marks } from '../../drawing/marks.ts';
import { densified } from '../../drawing/polygon.ts';
import type { Room } from '../../drawing/room.ts';
import { FRAME, through, type Sheet } from '../../drawing/sheet.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { breakEdges, type BreakEdges } from './breakEdge.ts';
import { laidBeads, type LaidBead } from './laidBeads.ts';
import { layerWords } from './layerWords.ts';
import type { Lengthwise } from './lengthwise.ts';
import { openStrips, strip, type OpenStrip } from './openStrips.ts';
import { ringsOf, type Ring } from './pathStarts.ts';
import { surfaceLine } from './surfaceLine.ts';

/** A layer, and all that Fig. 1 needs to draw it. */
export interface DrawnLayer {
  readonly place: Place;
  readonly audit: PlaceAudit;
  readonly layer: LayerLaid;
  /** What is laid in this layer. */
  readonly paths: readonly NearPath[];
  /** Of the filament, and how wide a whole line is [mm]. */
  readonly diameter: Mm;
  readonly each: Mm;
  readonly unit: LengthUnit;
}

export interface LayerFigure {
  readonly sheet: Sheet;
  /** Where plastic is drawn. */
  readonly window: Box;
  readonly beads: readonly LaidBead[];
  readonly edges: BreakEdges;
  readonly open: readonly OpenStrip[];
  readonly rings: readonly Ring[];
  readonly keepOut: string;
  readonly marks: Marks;
  /** Barred squares before words of what goes wrong. */
  readonly squares: readonly Point[];
}

/** Paper above and below the plastic, for words and for the dimension of the run [px]. */
const ABOVE = 40;
const BELOW = 62;

function sheetOf({ scale, pxPerMm, width, rootX, shown, small }: Lengthwise): Sheet {
  const top = -Math.ceil(shown.high * pxPerMm) - ABOVE;
  return { scale, pxPerMm, width, rootX, top, bottom: Math.ceil(-shown.low * pxPerMm) + BELOW, small };
}

/** Where plastic is drawn; never over the frame. */
function windowOf({ shown, rootX, pxPerMm, width }: Lengthwise): Box {
  const left = Math.max(FRAME + 3, rootX + shown.left * pxPerMm);
  const right = Math.min(width - 3, rootX + shown.right * pxPerMm);
  return {
    x: left,
    y: -shown.high * pxPerMm,
    width: right - left,
    height: (shown.high - shown.low) * pxPerMm,
  };
}

function roomOf(sheet: Sheet): Room {
  const over = { x: FRAME + 2, y: sheet.top, width: sheet.width - FRAME - 4, height: sheet.bottom - FRAME - sheet.top };
  const room: Room = { paper: clearPaper(over), words: clearPaper(over), figures: [] };
  for (const { x, text } of gridOf(sheet).figures) {
    const box = { x, y: sheet.bottom - FRAME - 14, width: letteringWidth(text, 12), height: 12 };
    room.paper.inkBox(box);
    room.words.inkBox(box);
    room.figures?.push(box);
  }
  return room;
}

/** From now on words keep off the plastic. */
function inkBeads({ paper }: Room, beads: readonly LaidBead[], { x, y, width, height }: Box): void {
  for (const { strokes } of beads)
    for (const stroke of strokes) {
      const half = stroke.width / 2;
      for (const at of densified(stroke.points, Math.max(4, half))) {
        if (at.x < x - half || at.x > x + width + half || at.y < y - half || at.y > y + height + half) continue;
        const [top, bottom] = [Math.max(y, at.y - half), Math.min(y + height, at.y + half)];
        paper.inkBox({ x: at.x - half, y: top, width: stroke.width, height: bottom - top });
      }
    }
}

function nothingStrip({ place, audit }: DrawnLayer, page: Lengthwise): readonly OpenStrip[] {
  const corners = strip(page, 0, audit.length, -place.reach / 2, place.reach / 2);
  const middle = { x: (corners[0]!.x + corners.at(-1)!.x) / 2, y: (corners[0]!.y + corners.at(-1)!.y) / 2 };
  return [{ kind: 'along', corners, middle, long: audit.length }];
}

/** Numbers of the paths that run along the section; where none does, of those that cover it. */
function runsAcross({ layer, paths, place, audit }: DrawnLayer, { frame }: Lengthwise): ReadonlySet<number> {
  if (layer.tracks.length > 0) return new Set(layer.tracks.map(({ path }) => path));
  const isOn = ({ x, y }: Point) => x > 0 && x < audit.length && Math.abs(y) < place.reach / 2;
  const covers = paths.filter(({ points }) => {
    const corners = Array.from({ length: points.length / 2 }, (_, i) =>
      frame.into({ x: points[2 * i]!, y: points[2 * i + 1]! }),
    );
    return densified(corners, 0.2).some(isOn);
  });
  return new Set(covers.map(({ path }) => path));
}

export function layerFigure(drawn: DrawnLayer, page: Lengthwise): LayerFigure {
  const { layer, paths, audit, place } = drawn;
  const across = runsAcross(drawn, page);
  const laid = laidBeads({ paths, across, height: layer.height, diameter: drawn.diameter }, page);
  // What fills a pad lies under what runs along the section, which is what is looked at.
  const beads = [...laid.filter(({ isAcross }) => !isAcross), ...laid.filter(({ isAcross }) => isAcross)];
  const sheet = sheetOf(page);
  const window = windowOf(page);
  const open = layer.lines.most > 0 ? openStrips(layer, page) : nothingStrip(drawn, page);
  const isShown = ({ x, y }: Point) =>
    x > window.x && x < window.x + window.width && y > window.y && y < window.y + window.height;
  const rings = ringsOf(drawn, beads, page).filter(isShown);
  const keepOut = surfaceLine(audit, place.reach, page);
  const room = roomOf(sheet);
  inkBeads(room, beads, window);
  const { marks, squares } = layerWords({ ...drawn, page, sheet, window, open, rings, keepOut }, room);
  return {
    sheet,
    window,
    beads,
    edges: breakEdges(
      window,
      beads.flatMap(({ strokes }) => strokes),
    ),
    open,
    rings,
    keepOut: through(keepOut),
    marks,
    squares,
  };
}
