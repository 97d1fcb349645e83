import type { Point } from '../../core/geometry/outline.ts';
import { asRad } from '../../core/units.ts';
import { radiusFigure } from '../text/drawingText.ts';
import { angle as angleFigure } from '../text/numbers.ts';
import { bentPoint, type Figure } from './figure.ts';
import { grown, labelBox, type Anchor, type Box, type Label } from './lettering.ts';
import { boxAround, leader, NO_MARKS, type Arrow, type Marks } from './marks.ts';
import { MARGIN, type Plan } from './plan.ts';
import { onSheet, pair, through, type Sheet } from './sheet.ts';

/** How the angle is dimensioned, settled once for a joint so that nothing jumps while it moves. */
export interface AnglePlan {
  /** About the meeting of both centre lines, or about a place that stays. */
  readonly about: 'tangents' | Point;
  /** Radius of the dimension line [px]. */
  readonly radius: number;
  /** Shown from this fraction of the travel on, because below it would touch the joint. */
  readonly from: number;
}

/** Where the bend radius is lettered, settled once for a joint. */
export interface RadiusPlan {
  /** Share of the length at which the leader meets the leaf. */
  readonly share: number;
  /** 1 on the hollow side, −1 on the other. */
  readonly side: 1 | -1;
  readonly reach: number;
  readonly way: 1 | -1;
  readonly from: number;
}

/** Beyond this the centre lines meet too far away for a dimension about their meeting [rad]. */
const TANGENTS_UP_TO = (110 * Math.PI) / 180;
/** Up to here an arc beyond the far end of the pad takes little room [rad]. */
const OUTSIDE_UP_TO = Math.PI / 3;
/** Under this angle there is no bend to speak of [rad]. */
const LEAST_ANGLE = 0.005;
/** Past this radius a leaf looks straight [mm]. */
const LARGEST_RADIUS = 500;
const HEAD = 9;

type Drawn = Pick<Sheet, 'rootX' | 'pxPerMm'>;

/** Where the centre lines at rest and as bent meet: R·tan(θ/2) along the leaf [mm]. */
function meeting({ length, angle }: Figure, fraction: number): Point {
  const turn = angle * fraction;
  return { x: turn < 1e-6 ? length / 2 : (length / turn) * Math.tan(turn / 2), y: 0 };
}

const vertexOf = (figure: Figure, plan: AnglePlan, fraction: number): Point =>
  plan.about === 'tangents' ? meeting(figure, fraction) : plan.about;

function angleLabel(figure: Figure, sheet: Drawn, plan: AnglePlan, fraction: number): Label {
  const turn = figure.angle * fraction;
  const vertex = onSheet(sheet, vertexOf(figure, plan, fraction));
  const direction = { x: Math.cos(turn / 2), y: -Math.sin(turn / 2) };
  const out = plan.radius + 7;
  const anchor: Anchor = direction.x > 0.3 ? 'start' : direction.x < -0.3 ? 'end' : 'middle';
  return {
    text: angleFigure(asRad(turn)),
    x: vertex.x + out * direction.x,
    y: vertex.y + out * direction.y + 5 * (1 + direction.y),
    anchor,
    tone: 'pencil',
    size: 13,
  };
}

/** The angle dimension at a fraction of the travel: its own arc and words, and the centre line of the moved pad. */
export function angleMarks(
  figure: Figure,
  sheet: Drawn,
  plan: AnglePlan,
  fraction: number,
): { readonly marks: Marks; readonly ray: string } {
  const turn = figure.angle * fraction;
  const vertex = onSheet(sheet, vertexOf(figure, plan, fraction));
  const at = (angle: number): Point => ({
    x: vertex.x + plan.radius * Math.cos(angle),
    y: vertex.y - plan.radius * Math.sin(angle),
  });
  const ray = rayOf(figure, sheet, plan, fraction);
  if (turn < LEAST_ANGLE || fraction < plan.from) return { marks: NO_MARKS, ray };
  const tight = plan.radius * turn < 3.2 * HEAD;
  const tail = tight ? (2.2 * HEAD) / plan.radius : 0;
  const arc = `M${pair(at(-tail))}A${plan.radius} ${plan.radius} 0 ${turn + 2 * tail > Math.PI ? 1 : 0} 0 ${pair(at(turn + tail))}`;
  // A head lies along the chord of its own length, half of it back from its tip.
  const lean = HEAD / 2 / plan.radius;
  const heads: Arrow[] = [
    { ...at(0), turn: tight ? -90 - deg(lean) : 90 + deg(-lean) },
    { ...at(turn), turn: tight ? 90 - deg(turn) + deg(lean) : -90 - deg(turn) + deg(lean) },
  ];
  const label = angleLabel(figure, sheet, plan, fraction);
  return { marks: { ...NO_MARKS, lines: arc, arrows: heads, labels: [label] }, ray };
}

const deg = (angle: number) => (angle * 180) / Math.PI;

/** The centre line of the moved pad, from where it leaves the line at rest to a little beyond the far face. */
function rayOf(figure: Figure, sheet: Drawn, plan: AnglePlan, fraction: number): string {
  const turn = figure.angle * fraction;
  if (turn < LEAST_ANGLE) return '';
  const beyond = 12 / sheet.pxPerMm;
  const tip = bentPoint(figure, { x: figure.box.right + beyond, y: 0 }, fraction);
  const root =
    plan.about === 'tangents' ? meeting(figure, fraction) : bentPoint(figure, { x: figure.length, y: 0 }, fraction);
  const pad = through([root, tip].map((point) => onSheet(sheet, point)));
  if (plan.about === 'tangents') return pad;
  // About a place of its own, the dimension needs both directions drawn from there.
  const arm = (plan.radius + 8) / sheet.pxPerMm;
  const arms = [0, turn].map((angle) => {
    const end = {
      x: plan.about === 'tangents' ? 0 : plan.about.x + arm * Math.cos(angle),
      y: plan.about === 'tangents' ? 0 : plan.about.y + arm * Math.sin(angle),
    };
    return through([plan.about === 'tangents' ? root : plan.about, end].map((point) => onSheet(sheet, point)));
  });
  return pad + arms.join('');
}

/** The bend radius at a fraction of the travel, or nothing while the leaf looks straight. */
export function radiusMarks(
  figure: Figure,
  sheet: Drawn,
  plan: RadiusPlan,
  fraction: number,
  unit: Parameters<typeof radiusFigure>[1],
): Marks {
  const turn = figure.angle * fraction;
  const radius = figure.length / turn;
  if (turn < LEAST_ANGLE || fraction < plan.from || radius > LARGEST_RADIUS) return NO_MARKS;
  const { share, side, reach, way } = plan;
  const tip = onSheet(
    sheet,
    bentPoint(figure, { x: share * figure.length, y: (side * figure.thickness) / 2 }, fraction),
  );
  const normal = { x: -Math.sin(turn * share) * side, y: -Math.cos(turn * share) * side };
  const elbow = { x: tip.x + normal.x * reach, y: tip.y + normal.y * reach };
  const words: Label = {
    text: radiusFigure(radius, unit),
    x: elbow.x + way * 18,
    y: elbow.y + 4,
    anchor: way > 0 ? 'start' : 'end',
    tone: 'ink',
    size: 13,
  };
  return leader(tip, elbow, way * 14, words);
}

/** The smallest fraction from which on a word that moves along never touches the joint; 2 when it always would. */
function clearFrom(plan: Plan, boxAt: (fraction: number) => Box | undefined): number {
  let from = 2;
  for (const { fraction, points } of plan.moved.toReversed()) {
    const box = boxAt(fraction);
    if (box) {
      const wide = grown(box, MARGIN);
      if (!plan.restPaper.isClear(wide) || points.some((point) => isIn(wide, point))) break;
    }
    from = fraction;
  }
  return from;
}

function isIn({ x, y, width, height }: Box, point: Point): boolean {
  return point.x >= x && point.x <= x + width && point.y >= y && point.y <= y + height;
}

/** How far from the meeting of the centre lines the far corners of a pad ever are [px]. */
function outermost({ figure, sheet, moved }: Plan): number {
  const { box, length } = figure;
  const half = Math.max(box.top, -box.bottom);
  const far = moved.map(({ fraction }) => {
    const { x } = meeting(figure, fraction);
    return Math.hypot(Math.max(box.right - x, x + box.right - length), half);
  });
  return Math.max(...far) * sheet.pxPerMm + 10;
}

/** The dimension of the angle, where its words are clear of the joint over as much of the travel as possible. */
export function planAngle(plan: Plan): AnglePlan {
  const { figure, sheet } = plan;
  const { angle, length, box } = figure;
  if (angle > TANGENTS_UP_TO) return fixedAngle(plan);
  const outer = outermost(plan);
  const inner = (box.right - meeting(figure, 1).x) * sheet.pxPerMm;
  const insides = [0.6, 0.5, 0.42, 0.75, 0.34].map((share) => share * inner);
  const isRoom = sheet.rootX + length * 0.5 * sheet.pxPerMm + outer < sheet.width - 30;
  const outside = isRoom && !sheet.small ? [outer] : [];
  const radii = angle < OUTSIDE_UP_TO ? [...outside, ...insides] : [...insides, ...outside];
  return bestRadius(plan, 'tangents', radii);
}

/** Past a right angle the centre lines no longer meet nearby: about the centre of the full bend, or about the leaf. */
function fixedAngle(plan: Plan): AnglePlan {
  const { figure, sheet } = plan;
  const bend = figure.length / figure.angle;
  const room = (bend - figure.thickness / 2) * sheet.pxPerMm;
  if (room > 70)
    return bestRadius(
      plan,
      { x: 0, y: bend },
      [0.5, 0.4, 0.6].map((share) => share * room),
    );
  const reach = figure.box.right * sheet.pxPerMm;
  return bestRadius(
    plan,
    { x: figure.length / 2, y: 0 },
    [0.62, 0.75, 0.5, 0.9, 1.15].map((share) => share * reach),
  );
}

function bestRadius(plan: Plan, about: AnglePlan['about'], radii: readonly number[]): AnglePlan {
  const tried = radii.map((radius) => {
    const at: AnglePlan = { about, radius: Math.round(radius), from: 0 };
    return { ...at, from: clearFrom(plan, (f) => (f === 0 ? undefined : labelBox(widest(plan, at, f)))) };
  });
  const good = tried.find(({ from }) => from <= 0.15);
  return good ?? tried.toSorted((p, q) => p.from - q.from)[0] ?? { about, radius: 40, from: 2 };
}

/** The label with as many figures as it will ever have. */
function widest({ figure, sheet }: Plan, at: AnglePlan, fraction: number): Label {
  const label = angleLabel(figure, sheet, at, fraction);
  return { ...label, text: label.text.length < 5 ? '00.0°' : label.text };
}

/** The leader of the bend radius, or nothing where it never has clear paper. */
export function planRadius(plan: Plan, angle: AnglePlan): RadiusPlan | undefined {
  const { sheet, unit } = plan;
  if (sheet.small) return undefined;
  const ways = [-1, 1] as const;
  for (const side of [1, -1] as const) {
    for (const share of [0.62, 0.5, 0.72, 0.4, 0.82, 0.3]) {
      for (const reach of [46, 34, 60, 80]) {
        for (const way of ways) {
          const tried: RadiusPlan = { share, side, reach, way, from: 0 };
          const from = clearFrom(plan, (fraction) => radiusBox(plan, tried, angle, fraction, unit));
          if (from <= 0.3) return { ...tried, from };
        }
      }
    }
  }
  return undefined;
}

/** Room of the radius's words; so placed that they would run into the angle's, the whole sheet. */
function radiusBox(
  { figure, sheet }: Plan,
  tried: RadiusPlan,
  angle: AnglePlan,
  fraction: number,
  unit: Plan['unit'],
): Box | undefined {
  const [label] = radiusMarks(figure, sheet, tried, fraction, unit).labels;
  if (!label) return undefined;
  const box = labelBox(label);
  const [other] = angleMarks(figure, sheet, angle, fraction).marks.labels;
  const isApart = !other || !isNear(box, labelBox(other));
  return isApart ? box : { x: 0, y: 0, width: sheet.width, height: 1 };
}

function isNear(a: Box, b: Box): boolean {
  const wide = grown(a, 10);
  return wide.x < b.x + b.width && b.x < wide.x + wide.width && wide.y < b.y + b.height && b.y < wide.y + wide.height;
}

/** Everywhere that the words that move along will be [px]. */
export function movingBoxes(plan: Plan, angle: AnglePlan, radius: RadiusPlan | undefined): Box[] {
  const { figure, sheet, unit, moved } = plan;
  return moved.flatMap(({ fraction }) => {
    const marks = [
      angleMarks(figure, sheet, angle, fraction).marks,
      radius ? radiusMarks(figure, sheet, radius, fraction, unit) : NO_MARKS,
    ];
    return marks.flatMap(({ labels, arrows }) => [
      ...labels.map(labelBox),
      ...arrows.map((arrow) => boxAround(arrow, 5)),
    ]);
  });
}
