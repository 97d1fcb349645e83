import { pieceOf } from '../../../../src/core/coupons/pieceOf.ts';
import type { Piece, PieceId, PiecesAsked } from '../../../../src/core/coupons/piece.ts';
import { radians } from '../../../../src/core/units.ts';
import { filament } from '../../../support/filament.ts';

/** Two lines of 0.42 mm, about the strain of the demonstration's first joint. */
export const ASKED: PiecesAsked = {
  profile: {
    nozzle: 0.4,
    lineWidth: 0.42,
    layerHeight: 0.2,
    firstLayerHeight: 0.24,
    lying: 'flat',
    fitRule: 'nominal',
    filament: 'petg',
  },
  filament: filament('petg'),
  count: 2,
  depth: 6,
  turn: radians(35),
  strain: 0.0214,
  holdRadius: 19.64,
};

export function pieceFor(id: PieceId, asked = ASKED): Piece {
  const made = pieceOf(id, asked);
  if (!made.ok) throw new Error(made.problems[0].message);
  return made.value;
}
