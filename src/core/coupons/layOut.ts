/** Pieces side by side on as few plates as are found to do. */
import { failIfAny, ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import { fitsOn, MARGIN, plateProblems, ROUND_OFF, roomOf, standsOn, tooLargeFor } from './onPlate.ts';
import type { Piece, PlacedPiece, Plate, PlateSize } from './piece.ts';
import { toGrid } from './slabs.ts';
import { turnPiece } from './turnPiece.ts';

/** Between pieces, so that their brims do not meet [mm]. Ours. */
export const BETWEEN: Mm = 8;
/** Up to so many pieces all orders are tried; beyond, those that usually do well. */
const ALL_ORDERS = 6;
/** Narrowed by so much at a time to bring pieces together [mm]. */
const CLOSER: Mm = 10;

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
  const wrong = failIfAny(plateProblems(plate));
  if (wrong) return wrong;
  const tooLarge = failIfAny(
    pieces.filter(({ size }) => !fitsOn(size, plate)).map((piece) => tooLargeFor(piece, plate)),
  );
  if (tooLarge) return tooLarge;
  return ok(closest(pieces, plate));
}

/** As it is and turned, as far as the plate holds it. */
function waysOf(piece: Piece, plate: PlateSize): readonly Piece[] {
  const { x, y } = piece.size;
  return [
    ...(standsOn({ x, y }, plate) ? [piece] : []),
    ...(standsOn({ x: y, y: x }, plate) && x !== y ? [turnPiece(piece)] : []),
  ];
}

/** On the fewest plates, and there on as small a square as the usual orders find. */
function closest(pieces: readonly Piece[], plate: PlateSize): readonly Plate[] {
  let best = fewest(pieces, plate, ordersOf(pieces));
  for (let side = Math.max(plate.x, plate.y) - CLOSER; side > 2 * MARGIN; side -= CLOSER) {
    const square = { x: Math.min(side, plate.x), y: Math.min(side, plate.y) };
    if (pieces.some(({ size }) => !fitsOn(size, square))) break;
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
