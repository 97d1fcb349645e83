/** Bodies put together from upright parts with cuts in them, and made into slabs. */
import { unite, without } from '../geometry/clipping.ts';
import { disc } from '../geometry/disc.ts';
import { loopArea, pathLoop, type Loop } from '../geometry/loop.ts';
import type { Point } from '../geometry/outline.ts';
import { along as moveAlong, left } from '../geometry/vector.ts';
import type { Mm } from '../units.ts';
import type { Slab } from './piece.ts';
import { onGrid } from './solid/onGrid.ts';
import { GRID } from './solid/spot.ts';

/** How far a chord may lie from its arc: a tenth of what a printer can place [mm]. */
export const CHORD: Mm = 0.003;

/** To the grid of 1 µm. */
export const toGrid = (length: Mm): Mm => Math.round(length * GRID) / GRID;

/** Material, or a cut, with one outline from one height to another. */
export interface Part {
  readonly loop: Loop;
  readonly from: Mm;
  readonly to: Mm;
}

/** A body as it is put together: parts may overlap, cuts go through all of them. */
export interface Body {
  readonly parts: readonly Part[];
  readonly cuts: readonly Part[];
}

/** An upright rectangle, counter-clockwise. */
export function rectangle(x: Mm, y: Mm, width: Mm, height: Mm): Loop {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** A rectangle about its middle. */
export function about({ x, y }: Point, width: Mm, height: Mm): Loop {
  return rectangle(x - width / 2, y - height / 2, width, height);
}

/** A full circle, counter-clockwise. */
export function circle(centre: Point, radius: Mm): Loop {
  return pathLoop(disc(centre, radius), CHORD);
}

/** Points of an arc, both ends among them, chords within `CHORD`. */
export function arcPoints(centre: Point, radius: Mm, from: number, to: number): Loop {
  const most = 2 * Math.acos(Math.max(0, 1 - CHORD / radius));
  const chords = Math.max(2, Math.ceil(Math.abs(to - from) / most));
  return Array.from({ length: chords + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / chords;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

/** The loop run counter-clockwise, as material is. */
export const counterClockwise = (loop: Loop): Loop => (loopArea(loop) < 0 ? loop.toReversed() : loop);

/**
 * A rectangle that stands on a place of an edge and goes from one depth to another.
 *
 * @param at - place on the edge [mm]
 * @param inward - direction of length 1 [-]
 * @param width - along the edge [mm]
 * @param from - how far in it begins [mm], below 0 outside
 * @param to - how far in it ends [mm]
 */
export function barAt(at: Point, inward: Point, width: Mm, from: Mm, to: Mm): Loop {
  const side = left(inward);
  const corner = (depth: Mm, off: Mm) => moveAlong(moveAlong(at, inward, depth), side, off);
  return counterClockwise([
    corner(from, -width / 2),
    corner(from, width / 2),
    corner(to, width / 2),
    corner(to, -width / 2),
  ]);
}

/**
 * What rounds the inner corner between a strip and a pad.
 *
 * @param corner - where their edges meet [mm]
 * @param x - the way along the edge of the pad, away from the strip [-]
 * @param y - the way along the edge of the strip, away from the pad [-]
 * @param radius - of the round [mm], > 0
 */
export function filletLoop(corner: Point, x: 1 | -1, y: 1 | -1, radius: Mm): Loop {
  // Laid a little over strip and pad, so that rounding opens no hairline between them.
  const over = Math.min(0.1, radius / 2);
  const centre = { x: corner.x + x * radius, y: corner.y + y * radius };
  const onPad = y > 0 ? -Math.PI / 2 : Math.PI / 2;
  const sweep = x * y > 0 ? -Math.PI / 2 : Math.PI / 2;
  const round = arcPoints(centre, radius, onPad, onPad + sweep);
  return counterClockwise([
    { x: corner.x - x * over, y: corner.y - y * over },
    { x: corner.x + x * radius, y: corner.y - y * over },
    ...round,
    { x: corner.x - x * over, y: corner.y + y * radius },
  ]);
}

/** The slabs of a body, its region at each height in one piece of work, on the grid of 1 µm. */
export function slabsOf({ parts, cuts }: Body): readonly Slab[] {
  const heights = parts.flatMap(({ from, to }) => [from, to].map(toGrid));
  const top = Math.max(...heights);
  const inner = cuts.flatMap(({ from, to }) => [from, to].map(toGrid)).filter((z) => z > 0 && z < top);
  const levels = [...new Set([...heights, ...inner])].toSorted((a, b) => a - b);
  const regions = levels.slice(1).map((to, i) => {
    const fills = (part: Part) => toGrid(part.from) <= levels[i]! && toGrid(part.to) >= to;
    const whole = unite(parts.filter(fills).map(({ loop }) => loop));
    const gone = cuts.filter(fills).map(({ loop }) => loop);
    return gone.length > 0 ? without(whole, gone) : whole;
  });
  return onGrid(regions).map((region, i): Slab => ({ from: levels[i]!, to: levels[i + 1]!, region }));
}
