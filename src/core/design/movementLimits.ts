import type { Problem } from '../problems.ts';
import { asRad, degrees, radians } from '../units.ts';
import type { Movement } from './joint.ts';

/** What one figure of a movement may be, and why. */
export interface MovementLimit {
  readonly min: number;
  readonly max: number;
  readonly because: string;
}

/** Angle [rad], cycles [-] and chance [-] that a movement may ask for. */
export const MOVEMENT_LIMITS = {
  angle: {
    min: radians(0.1),
    max: radians(360),
    because: 'less than 0.1° is not a movement, and past one full turn the pads run into each other',
  },
  cycles: {
    min: 1,
    max: 1e9,
    because: 'a joint flexes at least once, and once a second for thirty years makes a thousand million',
  },
  chance: {
    min: 0.5,
    max: 0.99,
    because: 'below one half most prints fail, and the tail past 99 in 100 is not known from nominal data',
  },
} as const satisfies Record<'angle' | 'cycles' | 'chance', MovementLimit>;

type Figure = keyof typeof MOVEMENT_LIMITS;

/** How a figure is said in a message; angles in degrees, rounded so that 359.99999999999994 reads as 360. */
const SAID: { readonly [F in Figure]: (value: number) => string } = {
  angle: (value) => `${Number(degrees(asRad(value)).toPrecision(12))}°`,
  cycles: String,
  chance: String,
};

function outsideOf(figure: Figure, value: number): Problem | undefined {
  const { min, max, because } = MOVEMENT_LIMITS[figure];
  const field = `movement.${figure}`;
  const say = SAID[figure];
  if (!Number.isFinite(value)) {
    return { code: 'not-a-number', message: `${figure} is ${value}, give a number`, field };
  }
  if (!(value >= min)) {
    const message = `${figure} ${say(value)} is below ${say(min)}: ${because}`;
    return { code: 'below-minimum', message, field, value, limit: min };
  }
  if (!(value <= max)) {
    const message = `${figure} ${say(value)} is above ${say(max)}: ${because}`;
    return { code: 'above-maximum', message, field, value, limit: max };
  }
  return undefined;
}

/**
 * What is wrong with the figures of a movement; empty when it can be assessed.
 *
 * @param movement - what is wanted of the joint: angle [rad], 0.1° to 360°; cycles [-], whole, 1 to 1e9; chance [-], 0.5 to 0.99
 * @returns refusals with fields `movement.angle`, `movement.cycles`, `movement.chance` [-]
 *
 * @example checkMovement({ angle: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.9 }).length // → 0
 */
export function checkMovement(movement: Movement): Problem[] {
  const figures: readonly Figure[] = ['angle', 'cycles', 'chance'];
  const problems = figures.flatMap((figure) => outsideOf(figure, movement[figure]) ?? []);
  if (Number.isFinite(movement.cycles) && !Number.isInteger(movement.cycles)) {
    const message = `cycles ${movement.cycles} is not a whole number, give a count of flexes`;
    problems.push({ code: 'not-whole', message, field: 'movement.cycles', value: movement.cycles });
  }
  return problems;
}
