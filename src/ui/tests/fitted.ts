/** What a trial takes over from the piece it is made with, so that sentence and piece speak of the same. */
import type { Piece, PieceId } from '../../core/coupons/piece.ts';
import type { Bend } from '../../core/material/tally.ts';
import { bentAs, type TestValues } from '../../store/tests.ts';

/** The one whose value is nearest. */
function nearest<T>(all: readonly T[], value: number, of: (one: T) => number): T | undefined {
  return all.toSorted((a, b) => Math.abs(of(a) - value) - Math.abs(of(b) - value))[0];
}

/** Of strips that are flexed to an angle: free, between what holds their ends. */
function lengthOf(piece: Piece, { length, count }: TestValues): Partial<TestValues> {
  const isCrease = piece.id === 'creases';
  const strip = isCrease
    ? nearest(piece.strips, count, (one) => one.count)
    : nearest(piece.strips, length, (one) => one.length);
  return { way: 'to', ...(strip && { length: strip.length }), ...(strip && isCrease && { count: strip.count }) };
}

/**
 * The weight of a bar and where it hangs, the length of a strip, a round corner, the slot: as they are on the piece.
 *
 * @param piece - that the trial is made with, where there is one
 * @param values - the trial so far; what the piece has several of is the one nearest to it
 */
export function asOnPiece(piece: Piece | undefined, values: TestValues): Partial<TestValues> {
  if (!piece) return {};
  switch (piece.id) {
    case 'bar':
      return { ...(piece.arm && { arm: piece.arm }), ...(piece.grams && { grams: piece.grams }) };
    case 'hold':
      return {
        ...(piece.slotRadius && { radius: Math.round(10 * piece.slotRadius) / 10 }),
        ...(piece.slotTurn && { held: piece.slotTurn }),
      };
    case 'radii': {
      const corner = nearest(piece.corners, values.radius, ({ radius }) => radius);
      return corner ? bentAs({ way: 'over', radius: corner.radius }) : {};
    }
    case 'comb':
    case 'creases':
      return lengthOf(piece, values);
    case 'ladder':
      return {};
  }
}

/** Strips over a bar come with the block, those turned to an angle with the comb; creases can be turned alone. */
export function bentLike(way: Bend['way'], values: TestValues, pieces: readonly Piece[]): Partial<TestValues> {
  const id: PieceId = way === 'over' ? 'radii' : values.piece === 'creases' ? 'creases' : 'comb';
  const piece = pieces.find((one) => one.id === id);
  return piece ? { piece: id, ...asOnPiece(piece, values), way } : { way };
}
