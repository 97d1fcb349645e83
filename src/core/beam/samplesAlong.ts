/** Places along a member as printed at which something is summed up. */
import type { Mm } from '../units.ts';
import type { Centreline } from './centreline.ts';
import type { Member } from './model.ts';
import { ruleOf } from './rule.ts';

export interface Sample {
  readonly x: Mm;
  readonly y: Mm;
  /** Direction of the middle line [rad]. */
  readonly angle: number;
  /** Length that it stands for [mm]. */
  readonly length: Mm;
  readonly thickness: Mm;
}

/** Stretches of five points that sum up smooth curves, each turn of a spiral, and notches to near round-off. */
const STRETCHES = 24;
const STRETCHES_PER_TURN = 16;
const STRETCHES_OF_NOTCH = 96;
const SUM_RULE = ruleOf(5);
const STEP_RULE = ruleOf(3);

function stretchesOf({ shape, thickness }: Member): number {
  if (typeof thickness === 'object' && thickness.kind === 'notch') return STRETCHES_OF_NOTCH;
  // Loads vary evenly along a straight member, for which the rule is exact.
  if (shape.kind === 'straight' && typeof thickness === 'number') return 1;
  if (shape.kind === 'spiral') return Math.max(STRETCHES, Math.ceil(STRETCHES_PER_TURN * Math.abs(shape.turns)));
  return STRETCHES;
}

/**
 * Points along a member at which Gauss's rule sums up, seen from its first node along its heading there.
 *
 * @param member - checked member [-]
 * @param curve - its middle line [mm]
 * @returns places [mm, rad], the length each stands for [mm], thickness [mm]
 */
export function samplesAlong(member: Member, curve: Centreline): readonly Sample[] {
  const stretches = stretchesOf(member);
  const half = 0.5 / stretches;
  let [place, at] = [{ x: 0, y: 0, angle: 0 }, 0];
  return Array.from({ length: stretches }).flatMap((_, i) =>
    SUM_RULE.points.map((point, g) => {
      const u = (2 * i + 1 + point) * half;
      place = advance(curve, place, at, u);
      at = u;
      return { ...place, length: SUM_RULE.weights[g]! * half * curve.speed(u), thickness: curve.thickness(u) };
    }),
  );
}

type Place = Pick<Sample, 'x' | 'y' | 'angle'>;

/** The place a short step further along a curve. */
function advance(curve: Centreline, { x, y, angle }: Place, from: number, to: number): Place {
  const bend = (u: number) => curve.speed(u) * curve.curvature(u);
  let [dx, dy] = [0, 0];
  stepPoints(from, to, (u, length) => {
    let turned = angle;
    stepPoints(from, u, (v, part) => (turned += part * bend(v)));
    dx += length * curve.speed(u) * Math.cos(turned);
    dy += length * curve.speed(u) * Math.sin(turned);
  });
  let turned = angle;
  stepPoints(from, to, (u, length) => (turned += length * bend(u)));
  return { x: x + dx, y: y + dy, angle: turned };
}

function stepPoints(from: number, to: number, visit: (u: number, length: number) => void): void {
  const half = (to - from) / 2;
  for (let g = 0; g < STEP_RULE.degree; g += 1) {
    visit(from + half * (1 + STEP_RULE.points[g]!), STEP_RULE.weights[g]! * half);
  }
}
