/** Files of test pieces, one by one or as they stand on a plate. */
import type { Piece, PieceId, PlacedPiece, Plate } from '../../core/coupons/piece.ts';
import { solidOf } from '../../core/coupons/solidOf.ts';
import { write3mf } from './write3mf.ts';
import { writeStl } from './writeStl.ts';
import type { WrittenSolid } from './writtenSolid.ts';

export type SolidFormat = '3mf' | 'stl';

const NAMES: Readonly<Record<PieceId, string>> = {
  ladder: 'Thickness ladder',
  comb: 'Strip comb',
  radii: 'Radius block',
  bar: 'Deflection bar',
  hold: 'Hold piece',
  creases: 'Crease ladder',
};

function solidsOf({ piece, at }: PlacedPiece): readonly WrittenSolid[] {
  const { id, bodies } = piece;
  return bodies.map((body, i) => ({
    name: bodies.length > 1 ? `${NAMES[id]}, body ${i + 1} of ${bodies.length}` : NAMES[id],
    mesh: solidOf(body),
    at,
  }));
}

/**
 * All that stands on a plate, as a file for the printer's own program.
 *
 * @param plate - pieces and where they stand [mm]
 * @param format - of the file [-]
 * @returns the file
 */
export function plateFile(plate: Plate, format: SolidFormat): Uint8Array {
  const solids = plate.flatMap(solidsOf);
  if (format === 'stl') return writeStl(solids);
  const title = plate.map(({ piece }) => NAMES[piece.id]).join(', ');
  return write3mf(solids, { title, description: 'Test pieces: print them as they lie, then count and measure' });
}

/**
 * One piece with its least corner at the origin.
 *
 * @param piece - any piece [mm]
 * @param format - of the file [-]
 * @returns the file
 */
export function pieceFile(piece: Piece, format: SolidFormat): Uint8Array {
  return plateFile([{ piece, at: { x: 0, y: 0 } }], format);
}
