import type { Point } from '../../core/geometry/outline.ts';
import { asRad } from '../../core/units.ts';
import { angle as angleFigure } from '../text/numbers.ts';
import type { Figure } from './figure.ts';
import { bentPoint } from './motion.ts';
import type { Anchor, Label } from './lettering.ts';
import { NO_MARKS, type Arrow, type Marks } from './marks.ts';
import { onSheet, pair, through, type Sheet } from './sheet.ts';

/** How the angle is dimensioned, settled once for a joint so that nothing jumps while it moves. */
export interface AnglePlan {
  /** About the meeting of both centre lines, or about a place of the part that stays [mm]. */
  readonly about: 'tangents' | Point;
  /** Radius of the dimension line [px]. */
  readonly radius: number;
  /** Shown from this fraction of the travel on, because below it would touch the joint. */
  readonly from: number;
}

export type Drawn = Pick<Sheet, 'rootX' | 'pxPerMm'>;

/** Under this angle there is no bend to speak of [rad]. */
export const LEAST_ANGLE = 0.005;
/** Length of an arrowhead [px]. */
const HEAD = 9;
/** Between the dimension line and its figure [px]. */
const FIGURE_OFF = 7;
/** How far the centre line overruns the far face, and arms their dimension line [px]. */
const OVERRUN = { face: 12, arm: 8 };

/** Where the centre lines at rest and as bent meet: R·tan(θ/2) along the leaf [mm]. */
export function meeting({ length, angle }: Figure, fraction: number): Point {
  const turn = angle * fraction;
  return { x: turn < 1e-6 ? length / 2 : (length / turn) * Math.tan(turn / 2), y: 0 };
}

const vertexOf = (figure: Figure, plan: AnglePlan, fraction: number): Point =>
  plan.about === 'tangents' ? meeting(figure, fraction) : plan.about;

/** The figure of the angle, outside the middle of its arc. */
export function angleLabel(figure: Figure, sheet: Drawn, plan: AnglePlan, fraction: number): Label {
  const turn = figure.angle * fraction;
  const vertex = onSheet(sheet, vertexOf(figure, plan, fraction));
  const direction = { x: Math.cos(turn / 2), y: -Math.sin(turn / 2) };
  const out = plan.radius + FIGURE_OFF;
  const anchor: Anchor = direction.x > 0.3 ? 'start' : direction.x < -0.3 ? 'end' : 'middle';
  return {
    text: angleFigure(asRad(turn)),
    x: vertex.x + out * direction.x,
    // Centred on the arc's own height at the side, standing on it at the top.
    y: vertex.y + out * direction.y + 5 * (1 + direction.y),
    anchor,
    tone: 'pencil',
    size: 13,
  };
}

/** The angle dimension at a fraction of the travel. */
export function angleMarks(figure: Figure, sheet: Drawn, plan: AnglePlan, fraction: number): Marks {
  const turn = figure.angle * fraction;
  if (turn < LEAST_ANGLE || fraction < plan.from) return NO_MARKS;
  const vertex = onSheet(sheet, vertexOf(figure, plan, fraction));
  const at = (angle: number): Point => ({
    x: vertex.x + plan.radius * Math.cos(angle),
    y: vertex.y - plan.radius * Math.sin(angle),
  });
  const isTight = plan.radius * turn < 3.2 * HEAD;
  const tail = isTight ? (2.2 * HEAD) / plan.radius : 0;
  const large = turn + 2 * tail > Math.PI ? 1 : 0;
  const arc = `M${pair(at(-tail))}A${plan.radius} ${plan.radius} 0 ${large} 0 ${pair(at(turn + tail))}`;
  // A head lies along the chord under its own length, so it leans by half of what that turns.
  const lean = degreesOf(HEAD / 2 / plan.radius);
  const [first, last] = isTight ? [-90 - lean, 90 + lean] : [90 - lean, -90 + lean];
  const arrows: Arrow[] = [
    { ...at(0), turn: first },
    { ...at(turn), turn: last - degreesOf(turn) },
  ];
  return { ...NO_MARKS, lines: arc, arrows, labels: [angleLabel(figure, sheet, plan, fraction)] };
}

const degreesOf = (angle: number) => (angle * 180) / Math.PI;

/** Points along the dimension line, for keeping other words off it. */
export function angleTrace(figure: Figure, sheet: Drawn, plan: AnglePlan, fraction: number): Point[] {
  const turn = figure.angle * fraction;
  if (turn < LEAST_ANGLE || fraction < plan.from) return [];
  const vertex = onSheet(sheet, vertexOf(figure, plan, fraction));
  const steps = Math.max(2, Math.ceil((plan.radius * turn) / 6));
  return Array.from({ length: steps + 1 }, (_, i) => ({
    x: vertex.x + plan.radius * Math.cos((turn * i) / steps),
    y: vertex.y - plan.radius * Math.sin((turn * i) / steps),
  }));
}

/** Where the centre line of the moved pad ends. */
export function centreTip(figure: Figure, sheet: Drawn, fraction: number): Point {
  const beyond = figure.box.right + OVERRUN.face / sheet.pxPerMm;
  return onSheet(sheet, bentPoint(figure, { x: beyond, y: 0 }, fraction));
}

/** The centre line of the moved pad, and where the angle is dimensioned about a place of its own, both directions from there. */
export function centreLines(
  figure: Figure,
  sheet: Drawn,
  { about, radius, from }: AnglePlan,
  fraction: number,
): string {
  const turn = figure.angle * fraction;
  if (turn < LEAST_ANGLE) return '';
  const line = (...points: readonly Point[]) => through(points.map((point) => onSheet(sheet, point)));
  const tip = bentPoint(figure, { x: figure.box.right + OVERRUN.face / sheet.pxPerMm, y: 0 }, fraction);
  if (about === 'tangents') return line(meeting(figure, fraction), tip);
  const pad = line(bentPoint(figure, { x: figure.length, y: 0 }, fraction), tip);
  if (fraction < from) return pad;
  const arm = (radius + OVERRUN.arm) / sheet.pxPerMm;
  const arms = [0, turn].map((angle) =>
    line(about, { x: about.x + arm * Math.cos(angle), y: about.y + arm * Math.sin(angle) }),
  );
  return pad + arms.join('');
}
