import type { Point } from '../../core/geometry/outline.ts';
import { lengthFigure } from '../text/numbers.ts';
import { faultFigure, filletFigure, thicknessFigure } from '../text/drawingText.ts';
import { grown, labelBox, letteringWidth, type Anchor, type Label } from './lettering.ts';
import { boxAround, leader, levelDimension, measured, NO_MARKS, type Marks } from './marks.ts';
import { fits, keep, MARGIN, settle, type Plan } from './plan.ts';
import { through } from './sheet.ts';

/** A dimension that can be dragged: its marks, and where its handle is. */
export interface Held {
  readonly marks: Marks;
  readonly handle: Point;
}

/** Half of what a handle needs round it [px]. */
const handleReach = (small: boolean) => (small ? 16 : 12);

/** The keep-out line keeps off the surface by a third of a line, and always far enough to be told from the outline. */
export function keepOutOffset({ sheet }: Pick<Plan, 'sheet'>): number {
  return Math.max(0.28 * sheet.pxPerMm, 6);
}

/** Half the thickness of the leaf on the sheet [px]. */
const halfLeaf = ({ figure, sheet }: Plan) => (figure.thickness / 2) * sheet.pxPerMm;

/** Where words under the leaf may begin: below the keep-out line, or below the plate. */
const underLeaf = (plan: Plan) => halfLeaf(plan) + (plan.figure.padBelow ? keepOutOffset(plan) : 8);

export function lengthDimension(plan: Plan): Held {
  const { figure, sheet, unit } = plan;
  const padBottom = -figure.box.bottom * sheet.pxPerMm;
  const y = Math.max(padBottom + (sheet.small ? 32 : 28), underLeaf(plan) + (sheet.small ? 62 : 46));
  const [x0, x1] = [sheet.rootX, sheet.rootX + figure.length * sheet.pxPerMm];
  const text = lengthFigure(figure.length, unit);
  const at = (share: number): Label => ({
    text,
    x: x0 + share * (x1 - x0),
    y: y - 5,
    anchor: 'middle',
    tone: 'pencil',
    size: 13,
  });
  const outside = x1 - x0 < letteringWidth(text, 13) + 26;
  const handle = { x: x1, y };
  keep(plan, boxAround(handle, handleReach(sheet.small)));
  const label = settle(plan, [0.5, 0.36, 0.64, 0.25].map(at)) ?? at(0.5);
  keep(plan, { x: x0 - (outside ? 26 : 6), y: y - 2, width: x1 - x0 + (outside ? 52 : 12), height: 4 });
  return { marks: levelDimension(x0, x1, y, underLeaf(plan) + 4, label, outside), handle };
}

export function thicknessDimension(plan: Plan): Held | undefined {
  const { a, figure, sheet, unit } = plan;
  const half = halfLeaf(plan);
  const y = underLeaf(plan) + (sheet.small ? 20 : 15);
  const text = thicknessFigure(a, unit);
  const reach = handleReach(sheet.small);
  const places = [0.5, 0.42, 0.58, 0.34, 0.66].flatMap((share) => {
    const x = sheet.rootX + share * figure.length * sheet.pxPerMm;
    const label = (dx: number, dy: number, anchor: Anchor): Label => ({
      text,
      x: x + dx,
      y: y + dy,
      anchor,
      tone: 'pencil',
      size: 13,
    });
    const beside = [label(13, 5, 'start'), label(-13, 5, 'end')];
    const below = label(0, 22, 'middle');
    return (sheet.small ? [below, ...beside] : [...beside, below]).map((words) => ({ x, words }));
  });
  const place =
    places.find(({ x, words }) => fits(plan, [labelBox(words), grown(boxAround({ x, y }, reach), -MARGIN)])) ??
    places.at(2);
  if (!place) return undefined;
  const { x, words } = place;
  keep(plan, labelBox(words));
  keep(plan, boxAround({ x, y }, reach));
  const across = measured({ x, y: -half }, { x, y: half }, true);
  const down = through([
    { x, y: half },
    { x, y },
  ]);
  return { marks: { ...across, lines: across.lines + down, labels: [words] }, handle: { x, y } };
}

/** One of the roots' fillets: the middle of its arc, and the way out of the material there [px, y down]. */
interface Corner {
  readonly middle: Point;
  readonly out: Point;
}

/** Fillets in the order in which a leader would rather point at them. */
function corners({ figure, sheet }: Plan): Corner[] {
  const { fillet, thickness, length, padBelow } = figure;
  const s = sheet.pxPerMm;
  const d = Math.SQRT1_2;
  const at = (side: 1 | -1, up: 1 | -1): Corner => {
    const root = side === 1 ? length : 0;
    const centre = { x: root, y: up * (thickness / 2 + fillet) };
    return {
      middle: { x: sheet.rootX + (centre.x + side * d * fillet) * s, y: -(centre.y - up * d * fillet) * s },
      out: { x: -side * d, y: -up * d },
    };
  };
  return padBelow ? [at(1, -1), at(-1, -1), at(-1, 1)] : [at(-1, 1), at(1, 1)];
}

/** A leader to a fillet, from whichever side there is clear paper; across the material where there is none outside. */
export function filletLeader(plan: Plan): Held | undefined {
  const { figure, sheet, unit } = plan;
  const text = filletFigure(figure.fillet, unit);
  const reach = handleReach(sheet.small);
  for (const { middle, out } of corners(plan)) {
    for (const way of [1, -1]) {
      for (const length of [44, 56, 34, 70, 90, 120]) {
        const elbow = { x: middle.x + way * out.x * length, y: middle.y + way * out.y * length };
        for (const side of [Math.sign(way * out.x), -Math.sign(way * out.x)]) {
          const words: Label = {
            text,
            x: elbow.x + side * (reach + 4),
            y: elbow.y + 5,
            anchor: side > 0 ? 'start' : 'end',
            tone: 'pencil',
            size: 13,
          };
          const boxes = [labelBox(words), grown(boxAround(elbow, reach), -MARGIN)];
          if (!fits(plan, boxes)) continue;
          keep(plan, labelBox(words));
          keep(plan, boxAround(elbow, reach));
          return { marks: leader(middle, elbow, side * reach, words), handle: elbow };
        }
      }
    }
  }
  return undefined;
}

/** Where the section is cut: two heavy dashes with arrows, near a root, clear of the travel. */
export function cutMarks(plan: Plan): Marks | undefined {
  const { figure, sheet } = plan;
  if (sheet.small || figure.length * sheet.pxPerMm < 120) return undefined;
  const [up, down] = [-halfLeaf(plan) - 12, underLeaf(plan) + 6];
  const found = [0.12, 0.16, 0.2, 0.25, 0.3, 0.8, 0.86]
    .map((share) => sheet.rootX + share * figure.length * sheet.pxPerMm)
    .find((x) =>
      fits(plan, [
        { x: x - 2, y: up - 13, width: 34, height: 12 },
        { x: x - 2, y: down + 1, width: 34, height: 12 },
      ]),
    );
  if (found === undefined) return undefined;
  const one = (y: number, away: 1 | -1): Marks => {
    const end = { x: found, y: y + 12 * away };
    const letter: Label = { text: 'A', x: found + 22, y: end.y + 4, anchor: 'start', tone: 'bold', size: 13 };
    keep(plan, { x: found - 3, y: Math.min(y, end.y) - 6, width: 40, height: 24 });
    return {
      lines: through([end, { x: found + 17, y: end.y }]),
      heavy: through([{ x: found, y }, end]),
      arrows: [{ x: found + 17, y: end.y, turn: 0 }],
      labels: [letter],
    };
  };
  const [above, below] = [one(up, -1), one(down, 1)];
  return {
    lines: above.lines + below.lines,
    heavy: above.heavy + below.heavy,
    arrows: [...above.arrows, ...below.arrows],
    labels: [...above.labels, ...below.labels],
  };
}

/** What is wrong in a section that is not whole, pointed at from clear paper. */
export function faultLeader(plan: Plan): Marks | undefined {
  const { a, figure, landing, sheet, unit } = plan;
  const [fault] = landing.faults;
  if (!fault) return undefined;
  const text = faultFigure(a, unit);
  const places = [0.72, 0.28, 0.6, 0.4].flatMap((share) => {
    const tip = {
      x: sheet.rootX + share * figure.length * sheet.pxPerMm,
      y: -((fault.from + fault.to) / 2) * sheet.pxPerMm,
    };
    return [34, 52, 70, 88, 110].flatMap((drop) =>
      [1, -1].map((side) => {
        const elbow = { x: tip.x + side * 14, y: underLeaf(plan) + drop };
        const words: Label = {
          text,
          x: elbow.x + side * 12,
          y: elbow.y + 4,
          anchor: side > 0 ? 'start' : 'end',
          tone: 'fault',
          size: 13,
        };
        return { tip, elbow, words, side };
      }),
    );
  });
  const place = places.find(({ words }) => fits(plan, [labelBox(words)]));
  if (!place) return undefined;
  keep(plan, labelBox(place.words));
  return leader(place.tip, place.elbow, place.side * 8, place.words);
}

/** The circle round the start points, and what it is. */
export function startMark(
  plan: Plan,
  start: Point,
): { readonly circle: Point; readonly radius: number; readonly marks: Marks } {
  const { a, figure, sheet } = plan;
  const line = a.joint.profile.lineWidth * sheet.pxPerMm;
  const circle = { x: sheet.rootX + start.x * sheet.pxPerMm, y: -start.y * sheet.pxPerMm };
  const radius = Math.max(7, line * 0.95);
  keep(plan, boxAround(circle, radius));
  if (sheet.small) return { circle, radius, marks: NO_MARKS };
  const edge = (figure.box.top * sheet.pxPerMm) | 0;
  const places = [-1, 1].map((way) => {
    const y = way * (edge + 14);
    const tip = { x: circle.x - radius * 0.5, y: way * radius * 0.87 };
    const elbow = { x: circle.x + 8, y };
    const words: Label = {
      text: 'start points here',
      x: elbow.x + 20,
      y: y + 4,
      anchor: 'start',
      tone: 'ink',
      size: 12,
    };
    return { tip, elbow, words };
  });
  const place = places.find(({ words }) => fits(plan, [labelBox(words)]));
  if (!place) return { circle, radius, marks: NO_MARKS };
  keep(plan, labelBox(place.words));
  const { tip, elbow, words } = place;
  return { circle, radius, marks: { ...leader(tip, elbow, 16, words), arrows: [] } };
}

/** The words to the keep-out line, under it wherever there is room. */
export function keepOutLabel(plan: Plan): Label | undefined {
  const { figure, sheet } = plan;
  if (sheet.small || !figure.padBelow) return undefined;
  const y = underLeaf(plan) + 18;
  const at = (share: number, anchor: Anchor): Label => ({
    text: 'start points off both sides',
    x: sheet.rootX + share * figure.length * sheet.pxPerMm,
    y,
    anchor,
    tone: 'ink',
    size: 12,
  });
  const spread = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5];
  return settle(plan, [...spread.map((x) => at(x, 'start')), ...spread.map((x) => at(1 - x, 'end'))]);
}
