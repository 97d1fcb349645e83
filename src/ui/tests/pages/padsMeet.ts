import type { Piece, Strip } from '../../../core/coupons/piece.ts';
import { asRad, type Rad } from '../../../core/units.ts';

/**
 * The turn at which the pads of a strip that lies as a crease meet, on the side to which they stand up from the plate.
 *
 *     θ = L / (H − t/2)
 *
 * The strip is taken as an arc of a circle; faces of pads then point at its middle, and their upper edges come together there.
 *
 * @param piece - with pads all of one height H [mm], on which the bars stand that tell its kind
 * @param strip - of length L and thickness t, flush with the plate side of its pads [mm]
 * @returns the turn [rad], > 0; nothing where no pads stand up from a strip that lies as a crease
 */
export function padsMeet(
  { bodies }: Pick<Piece, 'bodies'>,
  { countOf, length, thickness }: Pick<Strip, 'countOf' | 'length' | 'thickness'>,
): Rad | undefined {
  const high = bodies[0]?.at(-1)?.from;
  return countOf === 'layers' && high !== undefined ? asRad(length / (high - thickness / 2)) : undefined;
}
