import type { Mm } from '../units.ts';

/** From a pad three times as thick as the leaf on, a thicker one hardly raises the peak at the root. */
const THICK = 3;

/**
 * Thickness to count a long wall with as a shoulder: as much of it as a root feels.
 *
 * @param thickness - thickness of what grows out of it [mm], > 0
 * @param fillet - root fillet [mm], ≥ 0
 * @returns shoulder D [mm], with room for the fillets
 *
 * Source: roark-17.1.
 * @example wallShoulder(0.84, 0.8) // → 2.52
 */
export function wallShoulder(thickness: Mm, fillet: Mm): Mm {
  return Math.max(THICK * thickness, thickness + 2 * fillet);
}
