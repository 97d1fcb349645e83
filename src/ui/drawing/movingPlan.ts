import type { Point } from '../../core/geometry/outline.ts';
import { angleLabel, angleMarks, angleTrace, centreTip, meeting, type AnglePlan } from './angleDimension.ts';
import { grown, labelBox, overlap, type Box, type Label } from './lettering.ts';
import { boxAround, together } from './marks.ts';
import { reachOf, type Plan } from './plan.ts';
import { isClearWay, MARGIN } from './room.ts';
import { radiusMarks, type RadiusPlan } from './radiusLeader.ts';

/** Beyond this the centre lines meet too far away for a dimension about their meeting [rad]. */
const TANGENTS_UP_TO = (110 * Math.PI) / 180;
/** A dimension that is clear from so early in the travel on is as good as one that always is. */
const EARLY = 0.15;
/** A bend radius is worth lettering if it can be read over this much of the travel. */
const LATEST = 0.3;
/** Between the far corners of the pad and a dimension line beyond them [px]. */
const BEYOND = 10;
/** An arc may make the sheet higher by so much before one nearer the leaf is preferred [px]. */
const WORTH = 40;
/** A bend this wide has room for a dimension at its own centre [px]. */
const ROOMY = 46;
/** Clear paper at the right edge [px]. */
const EDGE = 4;

/** The smallest fraction from which on words that move along never touch the joint; 2 when they always would. */
function clearFrom(plan: Plan, boxAt: (fraction: number) => Box | undefined): number {
  let from = 2;
  for (const { fraction, points } of plan.moved.toReversed()) {
    const box = boxAt(fraction);
    if (box) {
      const wide = grown(box, MARGIN);
      if (!plan.rest.isClear(wide) || points.some((point) => isIn(wide, point))) break;
    }
    from = fraction;
  }
  return from;
}

function isIn({ x, y, width, height }: Box, point: Point): boolean {
  return point.x >= x && point.x <= x + width && point.y >= y && point.y <= y + height;
}

/** The dimension of the angle, where its figure is clear of the joint over as much of the travel as possible. */
export function planAngle(plan: Plan): AnglePlan {
  const tried = (plan.figure.angle > TANGENTS_UP_TO ? wideAngle(plan) : tangentAngle(plan)).map(
    ({ about, radius }): AnglePlan => {
      const at = { about, radius: Math.round(radius), from: 0 };
      return { ...at, from: clearFrom(plan, (f) => (f === 0 ? undefined : labelBox(widest(plan, at, f)))) };
    },
  );
  const early = tried.find(({ from }) => from <= EARLY);
  const best = early ?? tried.toSorted((p, q) => p.from - q.from)[0];
  return best ?? { about: 'tangents', radius: 40, from: 2 };
}

type Tried = Pick<AnglePlan, 'about' | 'radius'>;

/** Radii about the meeting of the centre lines: beyond the pads where there is room, else before them. */
function tangentAngle(plan: Plan): Tried[] {
  const { figure, sheet } = plan;
  const s = sheet.pxPerMm;
  const outer = outermost(plan);
  const end = meeting(figure, 1).x;
  const inner = (figure.box.right - end) * s;
  const isRoom = sheet.rootX + end * s + outer + EDGE < sheet.width && !sheet.small;
  const isLow = outer * Math.sin(Math.min(figure.angle, Math.PI / 2)) < -reachOf(plan).top + WORTH;
  const insides = [0.6, 0.5, 0.42, 0.75, 0.34].map((share) => share * inner);
  const radii = isRoom ? (isLow ? [outer, ...insides] : [...insides, outer]) : insides;
  return radii.map((radius) => ({ about: 'tangents', radius }));
}

/** How far from the meeting of the centre lines the far corners of a pad ever are, with some margin [px]. */
function outermost({ figure, sheet, moved }: Plan): number {
  const { box, length } = figure;
  const half = Math.max(box.top, -box.bottom);
  const far = moved.map(({ fraction }) => {
    const { x } = meeting(figure, fraction);
    return Math.hypot(Math.max(box.right - x, x + box.right - length), half);
  });
  return Math.max(...far) * sheet.pxPerMm + BEYOND;
}

/** Past a right angle: inside the full bend where that is roomy, else about the middle of the leaf. */
function wideAngle({ figure, sheet }: Plan): Tried[] {
  const bend = figure.length / figure.angle;
  const room = (bend - figure.thickness / 2) * sheet.pxPerMm;
  const inside = [0, 0.2, 0.35].flatMap((off) =>
    [0.5, 0.4, 0.3].map((share): Tried => ({ about: { x: off * bend, y: bend }, radius: share * room })),
  );
  const reach = figure.box.right * sheet.pxPerMm;
  const about = { x: figure.length / 2, y: 0 };
  const round = [1.12, 0.62, 0.75, 0.5].map((share): Tried => ({ about, radius: share * reach }));
  return room > ROOMY ? [...inside, ...round] : round;
}

/** The figure at its widest, so that a tenth of a degree more does not push it into the joint. */
function widest({ figure, sheet }: Plan, at: AnglePlan, fraction: number): Label {
  const label = angleLabel(figure, sheet, at, fraction);
  return { ...label, text: label.text.length < 5 ? '00.0°' : label.text };
}

/** The leader of the bend radius, or nothing where it has no clear paper. */
export function planRadius(plan: Plan, angle: AnglePlan): RadiusPlan | undefined {
  if (plan.sheet.small) return undefined;
  for (const tried of radiusPlaces()) {
    const from = clearFrom(plan, (fraction) => radiusBox(plan, tried, angle, fraction));
    if (from <= LATEST) return { ...tried, from };
  }
  return undefined;
}

/** Where the leader might go, the preferred places first: the hollow side, past the middle, words to the left. */
function radiusPlaces(): RadiusPlan[] {
  const places = ([1, -1] as const).flatMap((side) =>
    [0.62, 0.5, 0.72, 0.4, 0.82, 0.3].flatMap((share) => [46, 34, 60, 80].map((reach) => ({ side, share, reach }))),
  );
  return places.flatMap((place) => ([-1, 1] as const).map((way) => ({ ...place, way, from: 0 })));
}

/** Never clear: off the sheet. */
const NOWHERE: Box = { x: -1, y: 0, width: 1, height: 1 };

/** Room for the words of the radius; nowhere, if they or their leader ran into other words. */
function radiusBox(plan: Plan, tried: RadiusPlan, angle: AnglePlan, fraction: number): Box | undefined {
  const { figure, sheet, unit } = plan;
  const { labels, arrows, elbow } = radiusMarks(figure, sheet, tried, fraction, unit);
  const [label] = labels;
  const [tip] = arrows;
  if (!label || !tip) return undefined;
  const box = labelBox(label);
  const [other] = angleMarks(figure, sheet, angle, fraction).labels;
  const isOffWords = !other || !overlap(grown(box, 10), labelBox(other));
  const arc = angleTrace(figure, sheet, angle, fraction);
  const isOffArc = !arc.some((point) => isIn(grown(box, 6), point) || isBeside(tip, elbow, point));
  return isOffWords && isOffArc && isClearWay(plan.words, tip, elbow, 0) ? box : NOWHERE;
}

/** Within a few px of a line. */
function isBeside(a: Point, b: Point, { x, y }: Point): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - a.x - share * dx, y - a.y - share * dy) < 5;
}

/** Everywhere that words which move along will be, and the heads of their arrows [px]. */
export function movingBoxes({ figure, sheet, unit, moved }: Plan, angle: AnglePlan, radius?: RadiusPlan): Box[] {
  return moved.flatMap(({ fraction }) => {
    const marks = together(
      angleMarks(figure, sheet, angle, fraction),
      radius && radiusMarks(figure, sheet, radius, fraction, unit),
    );
    const points = [...marks.arrows, centreTip(figure, sheet, fraction)];
    return [...marks.labels.map(labelBox), ...points.map((point) => boxAround(point, 5))];
  });
}
