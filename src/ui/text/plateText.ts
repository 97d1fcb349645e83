/** What is said of pieces that were made smaller for their plate, and of those that do not fit on it. */
import type { Piece } from '../../core/coupons/piece.ts';
import type { Problem } from '../../core/problems.ts';
import { PIECE_WORDS, sizeText } from './pieceText.ts';
import { sentence } from './said.ts';

/** “Radius block: 128.0 × 90.0 × 6.0 mm with room for a brim do not fit on this plate. Choose a larger one.” */
export function unfitText(piece: Piece): string {
  return `${PIECE_WORDS[piece.id].name}: ${sizeText(piece)} with room for a brim do not fit on this plate. Choose a larger one.`;
}

/** What a piece cannot do of what was asked. */
export function pieceNotesText(notes: readonly Problem[]): string {
  return notes.map(({ message }) => sentence(message)).join(' ');
}
