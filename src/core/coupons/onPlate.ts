/** What a plate holds: pieces with room round them for a brim. */
import { outsideRange, plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { Piece, PlateSize } from './piece.ts';

/** To the edge of the plate, so that a brim stays on it [mm]. Ours. */
export const MARGIN: Mm = 6;
/** Sizes and places are sums of decimals: a nanometre is no reason to refuse one [mm]. */
export const ROUND_OFF = 1e-6;

const PLATE_LIMITS = { min: 40, max: 2000, because: 'from the smallest desktop printers to the largest' };

/** The room of a plate inside its margin [mm]. */
export const roomOf = ({ x, y }: PlateSize): PlateSize => ({
  x: x - 2 * MARGIN + ROUND_OFF,
  y: y - 2 * MARGIN + ROUND_OFF,
});

/** What is wrong with the sides of a plate. */
export function plateProblems(plate: PlateSize): readonly Problem[] {
  return (['x', 'y'] as const).flatMap(
    (side) => outsideRange(`plate.${side}`, 'A plate side of', plate[side], PLATE_LIMITS) ?? [],
  );
}

/** Whether so long and so wide a thing stands on the plate as it is. */
export function standsOn({ x, y }: PlateSize, plate: PlateSize): boolean {
  const room = roomOf(plate);
  return x <= room.x && y <= room.y;
}

/** Whether it stands on the plate, perhaps turned a quarter. */
export function fitsOn({ x, y }: PlateSize, plate: PlateSize): boolean {
  return standsOn({ x, y }, plate) || standsOn({ x: y, y: x }, plate);
}

/** Names a piece that the plate does not hold, its size and what would help. */
export function tooLargeFor({ id, size }: Piece, plate: PlateSize): Problem {
  const room = roomOf(plate);
  const [long, short] = [Math.max(size.x, size.y), Math.min(size.x, size.y)];
  const isTooLong = long > Math.max(room.x, room.y);
  return {
    code: 'above-maximum',
    message: `The piece “${id}” is ${plain(size.x)} × ${plain(size.y)} mm and needs ${plain(MARGIN)} mm round it for a brim, more than the plate of ${plain(plate.x)} × ${plain(plate.y)} mm holds; choose a larger plate, or fewer lines or layers`,
    field: 'plate',
    value: isTooLong ? long : short,
    limit: isTooLong ? Math.max(plate.x, plate.y) - 2 * MARGIN : Math.min(plate.x, plate.y) - 2 * MARGIN,
    unit: 'mm',
  };
}
