/** Test pieces asked for in several ways. */
import { PIECE_IDS, type Piece, type PieceId, type PiecesAsked } from '../../src/core/coupons/piece.ts';
import { pieceOf } from '../../src/core/coupons/pieceOf.ts';
import type { Problem } from '../../src/core/problems.ts';
import { LYINGS, type Lying, type PrintProfile } from '../../src/core/print/profile.ts';
import { radians } from '../../src/core/units.ts';
import { filament } from './filament.ts';

const PROFILE: PrintProfile = {
  nozzle: 0.4,
  lineWidth: 0.42,
  layerHeight: 0.2,
  firstLayerHeight: 0.24,
  lying: 'flat',
  fitRule: 'nominal',
  filament: 'petg',
};

export const ASKED: PiecesAsked = {
  profile: PROFILE,
  filament: filament('petg'),
  count: 2,
  depth: 6,
  turn: radians(90),
  strain: 0.03,
  holdRadius: 19.64,
};

export const lyingAs = (lying: Lying, asked: PiecesAsked = ASKED): PiecesAsked => ({ ...asked, profile: { ...asked.profile, lying } }); // prettier-ignore

/** Other printers, filaments and wishes, as far apart as people have them. */
export const ASKED_WAYS: readonly (readonly [string, PiecesAsked])[] = [
  ['two lines of 0.42 mm in PETG', ASKED],
  [
    'four overlapped lines of 0.45 mm in PLA',
    {
      ...ASKED,
      count: 4,
      filament: filament('pla'),
      profile: { ...PROFILE, lineWidth: 0.45, layerHeight: 0.28, firstLayerHeight: 0.3, fitRule: 'overlapped' },
    },
  ],
  [
    'one line of a fine nozzle in TPU, little turned',
    {
      ...ASKED,
      count: 1,
      depth: 3,
      turn: radians(30),
      strain: 0.012,
      holdRadius: 5,
      filament: filament('tpu95a'),
      profile: { ...PROFILE, nozzle: 0.25, lineWidth: 0.27, layerHeight: 0.1, firstLayerHeight: 0.15 },
    },
  ],
  [
    'eight lines of a wide nozzle in PP, far turned',
    {
      ...ASKED,
      count: 8,
      depth: 15,
      turn: radians(180),
      strain: 0.12,
      holdRadius: 55,
      filament: filament('pp'),
      profile: { ...PROFILE, nozzle: 0.8, lineWidth: 0.9, layerHeight: 0.4, firstLayerHeight: 0.45 },
    },
  ],
];

/** Every piece, lying in every way, asked for in every way. */
export const CASES: readonly (readonly [PieceId, Lying, string, PiecesAsked])[] = PIECE_IDS.flatMap((id) =>
  LYINGS.flatMap((lying) => ASKED_WAYS.map(([name, asked]) => [id, lying, name, lyingAs(lying, asked)] as const)),
);

/** A piece that must be made. */
export function made(id: PieceId, asked: PiecesAsked = ASKED): Piece {
  const result = pieceOf(id, asked);
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

/** What a piece that is made says about it. */
export function notesOf(id: PieceId, asked: PiecesAsked): readonly Problem[] {
  const result = pieceOf(id, asked);
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.notes;
}

/** The first reason why a piece is refused. */
export function refusedPiece(id: PieceId, asked: PiecesAsked): readonly Problem[] {
  const result = pieceOf(id, asked);
  if (result.ok) throw new Error('made');
  return result.problems;
}
