import { outsideRange, type Problem, type Range } from '../problems.ts';
import { asRad, degrees, radians, type Rad } from '../units.ts';
import type { Movement } from './joint.ts';

/** What a movement may ask for: angle of the whole joint [rad], number of flexes [-], share of prints [-]. */
export const MOVEMENT_LIMITS = {
  angle: {
    min: radians(0.1),
    max: radians(360),
    because: 'less is no movement, and past a full turn the pads run into each other',
  },
  cycles: {
    min: 1,
    max: 1e9,
    because: 'a joint flexes at least once, and once a second for thirty years is 1e9',
  },
  chance: {
    min: 0.5,
    max: 0.99,
    because: 'below one half most prints fail, and past 99 in 100 nominal data know nothing',
  },
} as const satisfies Record<'angle' | 'cycles' | 'chance', Range>;

/** Twelve figures, so that 359.99999999999994 reads as 360. */
function inDegrees(angle: number): string {
  return `${Number(degrees(asRad(angle)).toPrecision(12))}°`;
}

/** Compared in radians, said in degrees. */
function checkAngle(angle: Rad): Problem | undefined {
  const { min, max, because } = MOVEMENT_LIMITS.angle;
  const field = 'movement.angle';
  if (!Number.isFinite(angle)) {
    const message = `angle is not a number; give one from ${inDegrees(min)} to ${inDegrees(max)}`;
    return { code: 'not-a-number', message, field, value: String(angle) };
  }
  if (!(angle >= min)) {
    const message = `angle ${inDegrees(angle)} is below ${inDegrees(min)} (${because}); raise it`;
    return { code: 'below-minimum', message, field, value: angle, limit: min };
  }
  if (!(angle <= max)) {
    const message = `angle ${inDegrees(angle)} is above ${inDegrees(max)} (${because}); lower it`;
    return { code: 'above-maximum', message, field, value: angle, limit: max };
  }
  return undefined;
}

function checkCycles(cycles: number): Problem | undefined {
  const field = 'movement.cycles';
  const outside = outsideRange(field, 'number of flexes', cycles, MOVEMENT_LIMITS.cycles, '');
  if (outside || Number.isInteger(cycles)) return outside;
  return { code: 'not-whole', message: `number of flexes ${cycles} is not whole; give a count`, field, value: cycles };
}

/**
 * What is wrong with the figures of a movement; empty when it can be assessed.
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`.
 *
 * @param movement - what is wanted: angle [rad], 0.1° to 360°; cycles [-], whole, 1 to 1e9; chance [-], 0.5 to 0.99
 * @returns refusals [-] with fields `movement.angle`, `movement.cycles`, `movement.chance`
 *
 * @example checkMovement({ angle: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.9 }).length // → 0
 */
export function checkMovement(movement: Movement): Problem[] {
  const chance = outsideRange('movement.chance', 'chance', movement.chance, MOVEMENT_LIMITS.chance, '');
  return [checkAngle(movement.angle), checkCycles(movement.cycles), chance].filter((problem) => problem !== undefined);
}
