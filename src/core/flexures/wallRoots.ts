import type { Corner } from '../geometry/roundedOutline.ts';
import type { Mm } from '../units.ts';

/**
 * A corner that is not rounded.
 *
 * @param x - across [mm]
 * @param y - up [mm]
 * @returns the corner [mm]
 *
 * @example sharpCorner(1, 2) // → { x: 1, y: 2, radius: 0 }
 */
export function sharpCorner(x: Mm, y: Mm): Corner {
  return { x, y, radius: 0 };
}

/**
 * Corners of a level root on an upright wall, from below: foot, end, end and foot.
 *
 * @param wall - where the wall stands [mm]
 * @param end - where what bends begins, a fillet off the wall on the open side [mm]
 * @param level - height of the middle line [mm]
 * @param thickness - of what bends [mm], > 0
 * @param fillet - root fillet [mm], ≥ 0
 * @returns four corners [mm], the feet rounded
 *
 * @example rootOnWall(0, 1, 0, 2, 1)[1] // → { x: 1, y: -1, radius: 0 }
 */
export function rootOnWall(wall: Mm, end: Mm, level: Mm, thickness: Mm, fillet: Mm): readonly Corner[] {
  const [low, high] = [level - thickness / 2, level + thickness / 2];
  return [
    { x: wall, y: low, radius: fillet },
    { x: end, y: low, radius: 0 },
    { x: end, y: high, radius: 0 },
    { x: wall, y: high, radius: fillet },
  ];
}
