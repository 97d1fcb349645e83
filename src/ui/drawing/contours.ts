import type { Assessment } from '../../core/design/assessment.ts';
import { flatten } from '../../core/geometry/flatten.ts';
import { inset } from '../../core/geometry/inset.ts';
import type { Path, Point } from '../../core/geometry/outline.ts';
import { contourInsets } from '../../core/print/wholeLines.ts';
import type { Mm } from '../../core/units.ts';
import { passableOutline, type Figure } from './figure.ts';
import { stretches, trimmed } from './polygon.ts';

/** The middle of one line of plastic, as the nozzle goes [mm]. */
type Run = readonly Point[];

export interface Contours {
  readonly runs: readonly Run[];
  /** Lines of filling in the pads. */
  readonly filling: readonly Run[];
  /** Where runs begin and end: on the far face of the fixed pad, and of the other where it has contours of its own [mm]. */
  readonly starts: readonly Point[];
}

/** What is left open at a start point beyond the round ends themselves [mm]. */
const OPENING: Mm = 0.1;
const TOLERANCE: Mm = 0.002;
/** Filling at half of what would be solid, so that it reads as filling. */
const FILLING_PITCH = 2;

/** Contours, middle line and filling of a flexure whose lines run along it. */
export function contoursOf(a: Assessment, figure: Figure): Contours {
  const { lineWidth } = a.joint.profile;
  const { fit } = a;
  const through = fit.outcome === 'vanishes' ? 0 : fit.contours;
  const insets = contourInsets(2 * Math.max(1, through), a.joint.profile);
  const closed =
    through > 0
      ? insets.flatMap((d) => insetPoints(figure, d))
      : padLoops(passableOutline(a, figure), figure, lineWidth);
  const runs = closed.map((points) => trimmed(points, (lineWidth + OPENING) / 2));
  const innermost = insets.at(-1) ?? lineWidth / 2;
  const middle = fit.middleLine && fit.outcome !== 'vanishes' ? [middleLine(figure, innermost, lineWidth)] : [];
  const far = figure.box.left + lineWidth / 2;
  const faces = through > 0 ? [far] : [far, figure.length - far];
  return {
    runs: [...runs, ...middle],
    filling: fillingOf(figure, innermost + lineWidth * 0.9, lineWidth),
    starts: faces.map((x) => ({ x, y: 0 })),
  };
}

function insetPoints({ outline }: Figure, distance: Mm): Run[] {
  const path = inset(outline, distance);
  return path ? [flatten(path, TOLERANCE)] : [];
}

/**
 * With a single line, or none, no contour passes the leaf: each pad has its own, which closes where two lines still
 * lie side by side.
 */
function padLoops(outline: Path, { box, length }: Figure, lineWidth: Mm): Run[] {
  const path = inset(outline, lineWidth / 2);
  if (!path) return [];
  const around = flatten(path, TOLERANCE);
  const isInLeaf = ({ x, y }: Point) => x > box.left / 2 && Math.abs(y) < lineWidth / 2;
  const fixed = [...around.slice(0, around.findIndex(isInLeaf)), ...around.slice(around.findLastIndex(isInLeaf) + 1)];
  // Both pads are alike, so the moving one's loop is the fixed one's in a mirror.
  return [fixed, fixed.map(({ x, y }) => ({ x: length - x, y }))];
}

/** Runs on into both pads until the contours have parted enough to take it between them. */
function middleLine({ outline, length, fillet }: Figure, innermost: Mm, lineWidth: Mm): Run {
  const path = inset(outline, innermost);
  const apart = path ? flatten(path, TOLERANCE).filter(({ x, y }) => x < 0 && Math.abs(y) >= lineWidth * 1.25) : [];
  const nearest = Math.max(...apart.map(({ x }) => x), -fillet - 1.5 * lineWidth);
  const end = Math.min(-lineWidth, nearest) - lineWidth / 2;
  return [
    { x: end, y: 0 },
    { x: length - end, y: 0 },
  ];
}

/** Turned by 45°, the slanting lines are level. */
const turn = ({ x, y }: Point): Point => ({ x: (x + y) / Math.SQRT2, y: (y - x) / Math.SQRT2 });
const back = ({ x, y }: Point): Point => ({ x: (x - y) / Math.SQRT2, y: (x + y) / Math.SQRT2 });

/** Lines at 45° in the core of both pads. */
function fillingOf({ box, length, fillet }: Figure, inside: Mm, lineWidth: Mm): Run[] {
  const [left, right] = [box.left + inside, -fillet - inside];
  const [bottom, top] = [box.bottom + inside, box.top - inside];
  if (right - left < lineWidth / 2 || top - bottom < lineWidth / 2) return [];
  const core: readonly Point[] = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  const turned = core.map(turn);
  const levels = turned.map(({ y }) => y);
  const [low, high] = [Math.min(...levels), Math.max(...levels)];
  const pitch = FILLING_PITCH * lineWidth;
  const count = Math.max(1, Math.floor((high - low) / pitch));
  const fixed = Array.from({ length: count }, (_, i) => low + ((high - low) * (i + 0.5)) / count).flatMap((level) =>
    stretches(turned, 'y', level).map(([from, to]): Run => [back({ x: from, y: level }), back({ x: to, y: level })]),
  );
  const moving = fixed.map((run) => run.map(({ x, y }) => ({ x: length - x, y })));
  return [...fixed, ...moving];
}
