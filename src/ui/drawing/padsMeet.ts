import type { Point } from '../../core/geometry/outline.ts';
import type { Figure } from './figure.ts';
import { bentPoints } from './motion.ts';
import { densified } from './polygon.ts';

/** Fractions of the travel at which to look, and how closely the edge of the moving pad is followed [mm]. */
const LOOKS = 90;
const STEP = 0.25;

/** The fraction of the travel at which the moving pad first runs into the fixed one, or nothing where it never does. */
export function padsMeetAt(figure: Figure): number | undefined {
  const { points, length, thickness } = figure;
  const fixed = points.filter(({ x }) => x < 0);
  const moving = densified(
    points.filter(({ x, y }) => x > length && Math.abs(y) > thickness / 2),
    STEP,
  );
  for (let look = 1; look <= LOOKS; look++) {
    const fraction = look / LOOKS;
    if (bentPoints(figure, moving, fraction).some((point) => isInside(fixed, point))) return fraction;
  }
  return undefined;
}

function isInside(polygon: readonly Point[], { x, y }: Point): boolean {
  // The fixed pad lies left of the root; most points never get there.
  if (x >= 0) return false;
  let inside = false;
  for (let i = 0; i < polygon.length; i++) {
    const [a, b] = [polygon[i], polygon[(i + 1) % polygon.length]];
    if (a && b && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}
