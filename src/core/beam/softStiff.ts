import type { Mm } from '../units.ts';
import { DIRECTIONS, type Direction, type SixStiffnesses } from './spatialStiffness.ts';

/** How far something gives in one direction under one newton [mm/N]; infinite where nothing resists. */
export interface Give {
  readonly direction: Direction;
  readonly give: number;
}

export interface SoftStiff {
  /** All six, softest first. */
  readonly gives: readonly Give[];
  readonly soft: Give;
  readonly stiff: Give;
  /** How many times as far the softest gives as the stiffest [-], ≥ 1. */
  readonly ratio: number;
  /** How many times as far the softest gives as the next softest [-], ≥ 1: how well the wanted movement stands apart. */
  readonly apart: number;
}

/**
 * Moves and turns on one footing: how far a place at some radius gives under one newton there.
 *
 *     give = 1/k  for a move,   give = R²/K  for a turn
 *
 * @param stiffnesses - six of a pad [N/mm, N·mm/rad], ≥ 0; 0 gives without bound
 * @param radius - R, where the newton acts when it turns the pad [mm], > 0
 * @returns the six sorted, softest and stiffest, and how far they are apart
 *
 * Source: unit-load-method.
 * @example softStiff({ x: 8, y: 2, z: 4, turnX: 100, turnY: 50, turnZ: 1 }, 2).ratio // → 100
 */
export function softStiff(stiffnesses: SixStiffnesses, radius: Mm): SoftStiff {
  if (!(radius > 0)) throw new RangeError(`a radius above 0 is needed, not ${radius}`);
  const arm = (direction: Direction) => (direction.startsWith('turn') ? radius * radius : 1);
  const gives = DIRECTIONS.map((direction) => ({ direction, give: arm(direction) / stiffnesses[direction] })).toSorted(
    (a, b) => compare(b.give, a.give),
  );
  const [soft, next, stiff] = [gives[0]!, gives[1]!, gives[5]!];
  return { gives, soft, stiff, ratio: times(soft, stiff), apart: times(soft, next) };
}

/** A difference of two infinities would be no number. */
function compare(a: number, b: number): number {
  return a === b ? 0 : a - b;
}

function times(a: Give, b: Give): number {
  return a.give === b.give ? 1 : a.give / b.give;
}
