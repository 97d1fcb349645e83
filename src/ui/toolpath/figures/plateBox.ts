/** A box that is dragged out on the layer: from root to root, as thick as what stands there [mm, on the plate]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { isInside, type Loop } from '../../../core/geometry/loop.ts';
import type { DrawnBox } from '../../../core/inspect/toolpath/drawnPlace.ts';
import { degrees, radians, type Mm, type Rad } from '../../../core/units.ts';

/** What a drag tells; from where to where it stands is told otherwise. */
export type DraggedBox = Omit<DrawnBox, 'bottom' | 'top'>;

/** Taken where nothing stands, or nothing thin [mm]. */
const UNKNOWN: Mm = 1;
const THICKEST: Mm = 8;
/** Shorter drags are presses [mm]. */
const SHORTEST: Mm = 0.3;

const rounded = (value: Mm) => Math.round(value * 100) / 100;

/** How far it is from a place to the nearest side in a direction of length 1. */
function wayOut(loops: readonly Loop[], from: Point, { x: dx, y: dy }: Point): Mm {
  let nearest = Infinity;
  for (const loop of loops) {
    let a = loop.at(-1);
    for (const b of loop) {
      if (a) {
        const [p, q] = [a, b].map((corner) => (corner.x - from.x) * dy - (corner.y - from.y) * dx) as [number, number];
        if (p < 0 !== q < 0) {
          const share = p / (p - q);
          const [x, y] = [a.x + share * (b.x - a.x) - from.x, a.y + share * (b.y - a.y) - from.y];
          const along = x * dx + y * dy;
          if (along > 0 && along < nearest) nearest = along;
        }
      }
      a = b;
    }
  }
  return nearest;
}

/** How thick the body is there, square to a direction; a millimetre where that cannot be told. */
function thicknessAt(outlines: readonly Loop[], middle: Point, angle: Rad): Mm {
  if (!isInside(outlines, middle)) return UNKNOWN;
  const across = { x: -Math.sin(angle), y: Math.cos(angle) };
  const total = wayOut(outlines, middle, across) + wayOut(outlines, middle, { x: -across.x, y: -across.y });
  return total > 0 && total <= THICKEST ? rounded(total) : UNKNOWN;
}

/** The box of a drag between two places; undefined while it is too short to be one. */
export function draggedBox(from: Point, to: Point, outlines: readonly Loop[]): DraggedBox | undefined {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length >= SHORTEST)) return undefined;
  // To a tenth of a degree, as it can be typed.
  const turn = degrees(Math.atan2(to.y - from.y, to.x - from.x) as Rad);
  const angle = radians(Math.round(turn * 10) / 10);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return {
    x: rounded(middle.x),
    y: rounded(middle.y),
    angle,
    length: rounded(length),
    thickness: thicknessAt(outlines, middle, angle),
  };
}

/** Corners of a box. */
export function cornersOf({ x, y, angle, length, thickness }: DraggedBox): readonly Point[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const corner = (u: number, v: number) => ({ x: x + u * c - v * s, y: y + u * s + v * c });
  const [l, t] = [length / 2, thickness / 2];
  return [corner(-l, -t), corner(l, -t), corner(l, t), corner(-l, t)];
}
