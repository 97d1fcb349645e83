/** Points of arcs on paper [mm], y down. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { Rad } from '../../../core/units.ts';

const rounded = (value: number) => Math.round(value * 1e4) / 1e4;

/** The point of a round at an angle from the right, counter-clockwise as it is seen. */
export function onRound(centre: Point, radius: number, angle: Rad): Point {
  return { x: rounded(centre.x + radius * Math.cos(angle)), y: rounded(centre.y - radius * Math.sin(angle)) };
}

/** A strip that stands up from what holds it, and is turned to the left along an arc. */
export interface GuideStrip {
  readonly number: number;
  readonly root: Point;
  readonly free: number;
  readonly radius: number;
  readonly end: Point;
  /** How far the arc reaches up, down and to the left [mm], all ≥ 0 from its root. */
  readonly reach: { readonly up: number; readonly down: number; readonly left: number };
}

/**
 * A strip turned to the left. It bends evenly, and so along a round of its own length.
 *
 * @param number - as notched beside it [-]
 * @param free - its length [mm], > 0
 * @param root - middle of its lower end on paper [mm]
 * @param turn - to which its ends are turned against each other [rad], > 0
 */
export function guideStrip(number: number, free: number, root: Point, turn: Rad): GuideStrip {
  const radius = rounded(free / turn);
  const end = onRound({ x: root.x - radius, y: root.y }, radius, turn);
  // Where the arc runs level or upright on its way it reaches farther than its end.
  const [level, over, under] = [0.5, 1, 1.5].map((half) => turn > half * Math.PI);
  const reach = {
    up: level ? radius : root.y - end.y,
    down: under ? radius : Math.max(0, end.y - root.y),
    left: over ? 2 * radius : root.x - end.x,
  };
  return { number, root, free, radius, end, reach };
}

/** Straight on from a place in the direction of a turned end, and a step to its left. */
export function onwards({ x, y }: Point, turn: Rad, along: number, aside = 0): Point {
  return {
    x: rounded(x - along * Math.sin(turn) - aside * Math.cos(turn)),
    y: rounded(y - along * Math.cos(turn) + aside * Math.sin(turn)),
  };
}

/** Of an arc from the root of a strip to its end. */
export function arcPath({ root, radius, end }: GuideStrip, turn: Rad): string {
  return `M${root.x} ${root.y}A${radius} ${radius} 0 ${turn > Math.PI ? 1 : 0} 0 ${end.x} ${end.y}`;
}
