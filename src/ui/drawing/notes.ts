import type { Point } from '../../core/geometry/outline.ts';
import { faultFigure } from '../text/drawingText.ts';
import { grown, labelBox, type Anchor, type Label } from './lettering.ts';
import { boxAround, leader, NO_MARKS, together, type Marks } from './marks.ts';
import { fits, halfLeaf, settle, underLeaf, type Plan } from './plan.ts';
import { isClearWay, keep, keepLine } from './room.ts';
import { through } from './sheet.ts';

/** A leaf shorter than this on the sheet has no room for cut marks [px]. */
const SHORTEST_CUT = 110;

/** Where the section is cut: two heavy dashes with arrows, near a root, clear of the travel. */
export function cutMarks(plan: Plan): Marks | undefined {
  const { figure, sheet } = plan;
  const long = figure.length * sheet.pxPerMm;
  if (sheet.small || long < SHORTEST_CUT) return undefined;
  const [up, down] = [-halfLeaf(plan) - 11, underLeaf(plan) + 6];
  const places = [1, -1].flatMap((way) =>
    [0.12, 0.09, 0.06, 0.16, 0.2, 0.25, 0.3].map((share) => ({ x: sheet.rootX + share * long, way })),
  );
  const boxAt = ({ x, way }: (typeof places)[number], y: number) => ({
    x: way > 0 ? x - 2 : x - 32,
    y,
    width: 34,
    height: 10,
  });
  const found = places.find((place) => fits(plan, [boxAt(place, up - 12), boxAt(place, down + 2)]));
  if (!found) return undefined;
  for (const y of [up - 12, down + 2]) keep(plan, grown(boxAt(found, y), 4));
  return together(cutMark(found, up, -1), cutMark(found, down, 1));
}

/** One dash, an arrow that says which way one looks at the cut, and its letter. */
function cutMark({ x, way }: { readonly x: number; readonly way: number }, y: number, away: 1 | -1): Marks {
  const end = { x, y: y + 12 * away };
  const arrow = { x: x + way * 17, y: end.y, turn: way > 0 ? 0 : 180 };
  return {
    lines: through([end, arrow]),
    heavy: through([{ x, y }, end]),
    arrows: [arrow],
    labels: [{ text: 'A', x: x + way * 22, y: end.y + 4, anchor: way > 0 ? 'start' : 'end', tone: 'bold', size: 13 }],
  };
}

/** What is wrong in a section that is not whole, pointed at from clear paper. */
export function faultLeader(plan: Plan): Marks | undefined {
  const { a, figure, landing, sheet, unit } = plan;
  const [fault] = landing.faults;
  // On a phone the section says it.
  if (!fault || sheet.small) return undefined;
  const text = faultFigure(a, unit);
  const places = [0.76, 0.24, 0.66, 0.34, 0.5].flatMap((share) =>
    [30, 46, 64, 84, 106].flatMap((drop) =>
      [1, -1].map((side) => {
        const tip = {
          x: sheet.rootX + share * figure.length * sheet.pxPerMm,
          y: -((fault.from + fault.to) / 2) * sheet.pxPerMm,
        };
        const elbow = { x: tip.x + side * 12, y: underLeaf(plan) + drop };
        const anchor: Anchor = side > 0 ? 'start' : 'end';
        const label: Label = { text, x: elbow.x + side * 12, y: elbow.y + 4, anchor, tone: 'fault', size: 13 };
        return { tip, elbow, label, side };
      }),
    ),
  );
  const place = places.find(
    ({ tip, elbow, label }) =>
      fits(plan, [labelBox(label)]) && isClearWay(plan.paper, tip, elbow, underLeaf(plan) - tip.y + 8),
  );
  if (!place) return undefined;
  keep(plan, labelBox(place.label));
  keepLine(plan, [place.tip, place.elbow]);
  return leader(place.tip, place.elbow, place.side * 8, place.label);
}

export interface StartMark {
  readonly circles: readonly Point[];
  readonly radius: number;
  readonly marks: Marks;
}

/** The circles round the start points, and what they are. */
export function startMark(plan: Plan, starts: readonly Point[]): StartMark {
  const { a, figure, sheet } = plan;
  const radius = Math.max(7, a.joint.profile.lineWidth * sheet.pxPerMm * 0.95);
  const circles = starts.map(({ x, y }) => ({ x: sheet.rootX + x * sheet.pxPerMm, y: -y * sheet.pxPerMm }));
  for (const circle of circles) keep(plan, boxAround(circle, radius));
  const [circle] = circles;
  if (sheet.small || !circle) return { circles, radius, marks: NO_MARKS };
  const text = 'start points here';
  const edge = Math.ceil(figure.box.top * sheet.pxPerMm) + 14;
  const lead = (tip: Point, elbow: Point, side: 1 | -1) => {
    const anchor: Anchor = side > 0 ? 'start' : 'end';
    const label: Label = { text, x: elbow.x + side * 20, y: elbow.y + 4, anchor, tone: 'ink', size: 12 };
    return { tip, elbow, side, label };
  };
  const over = (way: 1 | -1) =>
    lead({ x: circle.x - radius * 0.5, y: way * radius * 0.87 }, { x: circle.x + 8, y: way * edge }, 1);
  const beside = lead(
    { x: circle.x - radius * 0.7, y: radius * 0.7 },
    { x: circle.x - radius - 10, y: radius + 10 },
    -1,
  );
  const place = [over(-1), over(1), beside].find(({ label }) => fits(plan, [labelBox(label)]));
  if (!place) return { circles, radius, marks: NO_MARKS };
  keep(plan, labelBox(place.label));
  keepLine(plan, [place.tip, place.elbow]);
  return { circles, radius, marks: { ...leader(place.tip, place.elbow, place.side * 16, place.label), arrows: [] } };
}

/** The words to the keep-out line, under it wherever there is room. */
export function keepOutLabel(plan: Plan): Marks {
  const { figure, sheet } = plan;
  if (sheet.small || !figure.padBelow) return NO_MARKS;
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
  const label = settle(plan, [...spread.map((x) => at(x, 'start')), ...spread.map((x) => at(1 - x, 'end'))]);
  return { ...NO_MARKS, labels: label ? [label] : [] };
}

const plateWords = (x: number, y: number, anchor: Anchor): Label => ({
  text: 'plate',
  x,
  y,
  anchor,
  tone: 'quiet',
  size: 12,
});

/** What the line is that a joint seen from the side lies or stands on. */
export function plateLabel(plan: Plan): Marks {
  const { box, laid } = plan.figure;
  const s = plan.sheet.pxPerMm;
  if (laid === 'along') return NO_MARKS;
  const [left, right] = [plan.sheet.rootX + box.left * s, plan.sheet.rootX + box.right * s];
  const below = -box.bottom * s;
  const places =
    laid === 'layers'
      ? [
          plateWords(right + 12, below + 20, 'end'),
          plateWords(left - 12, below + 20, 'start'),
          plateWords(right - 60, below + 20, 'end'),
        ]
      : [plateWords(left - 4, below + 28, 'start'), plateWords(left - 4, -box.top * s - 18, 'start')];
  const label = settle(plan, places);
  return { ...NO_MARKS, labels: label ? [label] : [] };
}
