import { bendingStrain } from '../closedForms/leafBending.ts';
import type { Bend } from '../material/tally.ts';
import type { Mm } from '../units.ts';

/**
 * Strain on the stretched face of a strip that was bent as a tally says.
 *
 *     ε = t/(2R + t) over a bar, whose surface the inner face lies on;   ε = (t/2)·θ/L between ends turned over a free length
 *
 * @param bend - over a bar of radius R [mm], or to an angle θ [rad] over a free length L [mm]
 * @param thickness - t [mm], > 0
 * @returns strain as a fraction [-], > 0
 *
 * Source: plane-bending.
 * @example strainOfBend({ way: 'over', radius: 5 }, 0.84) // → 0.0774907749
 * @example strainOfBend({ way: 'to', turn: radians(90), length: 10 }, 0.84) // → 0.0659734457
 */
export function strainOfBend(bend: Bend, thickness: Mm): number {
  if (bend.way === 'over') return thickness / (2 * bend.radius + thickness);
  return bendingStrain(thickness, bend.length, bend.turn);
}
