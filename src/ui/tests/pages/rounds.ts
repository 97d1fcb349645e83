/** Points of arcs on paper [mm], y down. */
import type { Strip } from '../../../core/coupons/piece.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { asRad, type Rad } from '../../../core/units.ts';

const rounded = (value: number) => Math.round(value * 1e4) / 1e4;

/** The point of a round at an angle from the right, counter-clockwise as it is seen. */
export function onRound(centre: Point, radius: number, angle: Rad): Point {
  return { x: rounded(centre.x + radius * Math.cos(angle)), y: rounded(centre.y - radius * Math.sin(angle)) };
}

/** A strip that stands up from the spine and is turned to the right along an arc. */
export interface GuideStrip {
  readonly number: number;
  readonly root: Point;
  readonly free: number;
  readonly radius: number;
  readonly end: Point;
  /** Where its grip ends, straight on. */
  readonly tip: Point;
}

/** Drawn of a grip [mm]. */
export const GRIP = 12;
/**
 * A strip turned to the right, its grip drawn on by `GRIP`.
 *
 * @param turn - to which its ends are turned against each other [rad], > 0
 */
export function guideStrip({ number, length, from }: Strip, turn: Rad): GuideStrip {
  const radius = rounded(length / turn);
  const root = { x: from.x, y: -from.y };
  const end = onRound({ x: root.x + radius, y: root.y }, radius, asRad(Math.PI - turn));
  const tip = { x: rounded(end.x + GRIP * Math.sin(turn)), y: rounded(end.y - GRIP * Math.cos(turn)) };
  return { number, root, free: length, radius, end, tip };
}

export function guideStrips(strips: readonly Strip[], turn: Rad): readonly GuideStrip[] {
  return strips.map((strip) => guideStrip(strip, turn));
}
