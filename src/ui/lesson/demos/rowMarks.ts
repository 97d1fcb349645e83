/** Dimensions of a pictured joint: what is long, and how far it has turned. */
import type { Assessment } from '../../../core/design/assessment.ts';
import { asRad } from '../../../core/units.ts';
import { levelDimension, measured, NO_MARKS, together, type Marks } from '../../drawing/marks.ts';
import type { Label } from '../../drawing/lettering.ts';
import { onSheet, pair, type Sheet } from '../../drawing/sheet.ts';
import { padLength } from '../../../core/flexures/commonSizes.ts';
import { angle as angleText } from '../../text/numbers.ts';
import type { Picture } from '../picture.ts';

/** Under the lowest of the pad stands the dimension line [px]. */
const BELOW = 22;
/** Lines shorter than this have their arrows outside [px]. */
const TIGHT = 66;

/** The extent across that is told, at rest, between two places [mm], with its words. */
export interface Told {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export function lengthMarks(sheet: Sheet, { from, to, text }: Told, lowest: number, isLive: boolean): Marks {
  const [a, b] = [onSheet(sheet, { x: from, y: lowest }), onSheet(sheet, { x: to, y: lowest })];
  const y = a.y + BELOW;
  const outside = b.x - a.x < TIGHT;
  const label: Label = {
    text,
    x: outside ? b.x + 26 : (a.x + b.x) / 2,
    y: outside ? y + 4 : y - 5,
    anchor: outside ? 'start' : 'middle',
    tone: isLive ? 'pencil' : 'bold',
    size: 13,
  };
  return levelDimension(a.x, b.x, y, a.y + 3, label, outside);
}

/** The angle between the root line and the line on which the far pad now lies, about where the two meet. */
export function turnMarks(
  sheet: Sheet,
  { now }: Picture,
  a: Assessment,
  isLive: boolean,
): { readonly marks: Marks; readonly centre: string } {
  const tip = now.poses['moving'];
  if (!a.travel || !tip || Math.abs(tip.turn) < 0.02) return { marks: NO_MARKS, centre: '' };
  const meet = tip.x - tip.y / Math.tan(tip.turn);
  const beyond = padLength(a.section.thickness) + a.fillet;
  const reach = Math.hypot(tip.x - meet, tip.y) + beyond;
  const at = (turn: number, radius: number) =>
    onSheet(sheet, { x: meet + radius * Math.cos(turn), y: radius * Math.sin(turn) });
  const radius = reach + 8 / sheet.pxPerMm;
  const [low, high] = [at(0, radius), at(tip.turn, radius)];
  const px = (radius * sheet.pxPerMm).toFixed(2);
  const middle = at(tip.turn / 2, radius + 6 / sheet.pxPerMm);
  const label: Label = {
    text: angleText(asRad(now.amount)),
    x: middle.x,
    y: middle.y + 4,
    anchor: 'start',
    tone: isLive ? 'pencil' : 'bold',
    size: 13,
  };
  // Arrows of an arc lie along its chord but for so little that no eye sees it.
  const { arrows } = measured(low, high, false);
  const arc = `M${pair(low)}A${px} ${px} 0 0 0 ${pair(high)}`;
  const quarter = 90 + (-tip.turn * 180) / Math.PI;
  const turned = arrows.map((arrow, i) => ({ ...arrow, turn: i === 0 ? 90 : quarter + 180 }));
  const end = { x: meet, y: 0 };
  const centre = `M${pair(onSheet(sheet, end))}L${pair(low)}M${pair(onSheet(sheet, end))}L${pair(at(tip.turn, radius + 5 / sheet.pxPerMm))}`;
  return { marks: together({ ...NO_MARKS, lines: arc, arrows: turned, labels: [label] }), centre };
}
