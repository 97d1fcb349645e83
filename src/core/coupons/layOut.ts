/** Pieces side by side on as few plates as are found to do. */
import { outsideRange, plain, type Problem } from '../problems.ts';
import { failIfAny, ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import type { Piece, PlacedPiece, Plate, PlateSize } from './piece.ts';
import { toGrid } from './slabs.ts';
import { turnPiece } from './turnPiece.ts';

/** Between pieces, so that their brims do not meet, and to the edge of the plate, so that a brim stays on it [mm]. Ours. */
export const BETWEEN: Mm = 8;
export const MARGIN: Mm = 6;
/** Sizes are sums of decimals: a nanometre is no reason to refuse one [mm]. */
const ROUND_OFF = 1e-6;
/** Up to so many pieces all orders are tried; beyond, those that usually do well. */
const ALL_ORDERS = 6;
/** Narrowed by so much at a time to bring pieces together [mm]. */
const CLOSER: Mm = 10;

const PLATE_LIMITS = { min: 40, max: 2000, because: 'from the smallest desktop printers to the largest' };

/**
 * Where pieces stand on plates.
 *
 * Each order of the pieces is laid by the rule: nearest to the front, then to the left, on the first plate with room. A piece that
 * is turned a quarter is given back as turned. Of layings on as few plates that is taken whose longest side is least: the edges of a
 * bed are its coolest and least even parts (common practice, no source).
 *
 * @param pieces - in any order [mm]
 * @param plate - its sides [mm]
 * @returns plates with what stands on them [mm]; none where there are no pieces
 *
 * Problems: `not-a-number`, `below-minimum` and `above-maximum` of the plate; `above-maximum` for each piece that it does not hold.
 */
export function layOut(pieces: readonly Piece[], plate: PlateSize): Result<readonly Plate[]> {
  const sides = (['x', 'y'] as const).map((side) =>
    outsideRange(`plate.${side}`, 'A plate side of', plate[side], PLATE_LIMITS),
  );
  const wrong = failIfAny(sides.filter((problem) => problem !== undefined));
  if (wrong) return wrong;
  const tooLarge = failIfAny(
    pieces.filter((piece) => waysOf(piece, plate).length === 0).map((piece) => tooLargeFor(piece, plate)),
  );
  if (tooLarge) return tooLarge;
  return ok(closest(pieces, plate));
}

const roomOf = ({ x, y }: PlateSize): PlateSize => ({ x: x - 2 * MARGIN + ROUND_OFF, y: y - 2 * MARGIN + ROUND_OFF });

/** As it is and turned, as far as the plate holds it. */
function waysOf(piece: Piece, plate: PlateSize): readonly Piece[] {
  const room = roomOf(plate);
  const fits = (x: Mm, y: Mm) => x <= room.x && y <= room.y;
  const { x, y } = piece.size;
  return [...(fits(x, y) ? [piece] : []), ...(fits(y, x) && x !== y ? [turnPiece(piece)] : [])];
}

function tooLargeFor({ id, size }: Piece, plate: PlateSize): Problem {
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

/** On the fewest plates, and there on as small a square as the usual orders find. */
function closest(pieces: readonly Piece[], plate: PlateSize): readonly Plate[] {
  let best = fewest(pieces, plate, ordersOf(pieces));
  for (let side = Math.max(plate.x, plate.y) - CLOSER; side > 2 * MARGIN; side -= CLOSER) {
    const square = { x: Math.min(side, plate.x), y: Math.min(side, plate.y) };
    if (pieces.some((piece) => waysOf(piece, square).length === 0)) break;
    const laid = fewest(pieces, square, usualOrders(pieces));
    if (laid.length > best.length) break;
    if (longest(laid) < longest(best)) best = laid;
  }
  return best;
}

/** How far pieces reach along the side on which they reach furthest. */
function longest(plates: readonly Plate[]): Mm {
  return Math.max(0, ...plates.flat().flatMap(({ at, piece }) => [at.x + piece.size.x, at.y + piece.size.y]));
}

function fewest(pieces: readonly Piece[], plate: PlateSize, orders: Iterable<readonly Piece[]>): readonly Plate[] {
  const ways = new Map(pieces.map((piece) => [piece, waysOf(piece, plate)]));
  const area = pieces.reduce((sum, { size }) => sum + size.x * size.y, 0);
  const least = Math.ceil(area / (plate.x * plate.y));
  let best: readonly Plate[] | undefined;
  for (const order of orders) {
    const laid = laidInOrder(order, ways, plate);
    if (best === undefined || laid.length < best.length) best = laid;
    if (best.length <= least) break;
  }
  return best ?? [];
}

function usualOrders(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const by = (size: (piece: Piece) => number) => pieces.toSorted((a, b) => size(b) - size(a));
  return [
    by(({ size }) => size.x * size.y),
    by(({ size }) => Math.max(size.x, size.y)),
    by(({ size }) => Math.min(size.x, size.y)),
  ];
}

function* ordersOf(pieces: readonly Piece[]): Generator<readonly Piece[]> {
  yield* usualOrders(pieces);
  if (pieces.length <= ALL_ORDERS) yield* permutations(pieces);
}

function* permutations<T>(all: readonly T[]): Generator<readonly T[]> {
  if (all.length === 0) yield [];
  for (const [i, first] of all.entries()) for (const rest of permutations(all.toSpliced(i, 1))) yield [first, ...rest];
}

function laidInOrder(
  order: readonly Piece[],
  ways: ReadonlyMap<Piece, readonly Piece[]>,
  plate: PlateSize,
): readonly Plate[] {
  const plates: PlacedPiece[][] = [];
  for (const piece of order) {
    const turns = ways.get(piece) ?? [];
    const found = plates.some((laid) => {
      const place = firstPlace(laid, turns, plate);
      if (place) laid.push(place);
      return place !== undefined;
    });
    if (found) continue;
    const place = firstPlace([], turns, plate);
    if (place) plates.push([place]);
  }
  return plates;
}

const behind = ({ at, piece }: PlacedPiece): Mm => at.y + piece.size.y;

/** Nearest to the front, then to the left, beside or behind what is laid. */
function firstPlace(laid: readonly PlacedPiece[], ways: readonly Piece[], plate: PlateSize): PlacedPiece | undefined {
  const xs = [MARGIN, ...laid.map(({ at, piece }) => toGrid(at.x + piece.size.x + BETWEEN))];
  const ys = [MARGIN, ...laid.map(({ at, piece }) => toGrid(at.y + piece.size.y + BETWEEN))];
  const room = roomOf(plate);
  let best: PlacedPiece | undefined;
  for (const piece of ways) {
    for (const x of xs) {
      for (const y of ys) {
        if (x - MARGIN + piece.size.x > room.x || y - MARGIN + piece.size.y > room.y) continue;
        const placed = { piece, at: { x, y } };
        if (laid.some((other) => areNear(placed, other))) continue;
        const gain = best === undefined ? -1 : behind(placed) - behind(best) || x - best.at.x;
        if (gain < 0) best = placed;
      }
    }
  }
  return best;
}

/** Whether two pieces stand closer than they may. */
function areNear(a: PlacedPiece, b: PlacedPiece): boolean {
  const apart = (side: 'x' | 'y') =>
    a.at[side] >= b.at[side] + b.piece.size[side] + BETWEEN - ROUND_OFF ||
    b.at[side] >= a.at[side] + a.piece.size[side] + BETWEEN - ROUND_OFF;
  return !apart('x') && !apart('y');
}
