import { movedCorner, movedSlab, movedStrip, type Move } from './draft.ts';
import type { Piece } from './piece.ts';

/**
 * A piece turned a quarter counter-clockwise on the plate, its least corner at the origin again.
 *
 * @param piece - any piece [mm]
 * @returns the same piece, turned [mm]
 */
export function turnPiece(piece: Piece): Piece {
  const { x, y, z } = piece.size;
  const move: Move = { x: y, y: 0, isTurned: true };
  return {
    ...piece,
    size: { x: y, y: x, z },
    bodies: piece.bodies.map((body) => body.map((slab) => movedSlab(slab, move))),
    strips: piece.strips.map((strip) => movedStrip(strip, move)),
    corners: piece.corners.map((corner) => movedCorner(corner, move)),
  };
}
