import { spiralLength } from '../closedForms/spiralArm.ts';
import type { Mm } from '../units.ts';

export type SpiralSizes = {
  /** Lines across each arm. */
  readonly lines: number;
  /** Arms, evenly spaced round the hub. */
  readonly arms: number;
  /** Diameter at which the middle lines of the arms leave the hub. */
  readonly hub: Mm;
  /** Diameter at which they end in the ring. */
  readonly ring: Mm;
  /** Turns of each arm from hub to ring. */
  readonly turns: number;
  /** Width out of the plane of the spiral. */
  readonly depth: Mm;
  readonly fillet: Mm;
};

/**
 * Length of each arm.
 *
 * @param sizes - hub and ring [mm], turns [-]
 * @returns length along the middle line [mm]
 *
 * Source: spiral-arm.
 * @example armLength({ hub: 6, ring: 30, turns: 2 }) // → 113.860127
 */
export function armLength({ hub, ring, turns }: Pick<SpiralSizes, 'hub' | 'ring' | 'turns'>): Mm {
  return spiralLength(hub / 2, ring / 2, turns);
}
