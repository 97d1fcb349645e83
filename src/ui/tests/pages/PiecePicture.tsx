import type { Piece } from '../../../core/coupons/piece.ts';
import { NOMINAL_PX_PER_MM, SCALES, scaleText } from '../../drawing/sheet.ts';
import { PAGE } from '../../text/pieceStepsText.ts';
import { PIECE_WORDS, sizeText } from '../../text/pieceText.ts';
import { PieceShape } from '../plate/PieceShape.tsx';

/** Room for a piece on its page [mm]. */
const ROOM = { x: 184, y: 96 } as const;
/** Kept free round it for what is lettered beside strips [px]. */
const ROUND = { x: 4, top: 18, bottom: 4 } as const;

/** The largest scale of those that drawings have, at most life size, at which a piece fits. */
export function pictureScale({ size }: Pick<Piece, 'size'>): number {
  const scales = SCALES.filter((scale) => scale <= 1);
  return scales.find((scale) => size.x * scale <= ROOM.x && size.y * scale <= ROOM.y) ?? scales.at(-1) ?? 1;
}

/** A piece from above as it comes off the plate, life size where the page has room for it. */
export function PiecePicture({ piece }: { readonly piece: Piece }) {
  const scale = pictureScale(piece);
  const pxPerMm = NOMINAL_PX_PER_MM * scale;
  const width = piece.size.x * pxPerMm + 2 * ROUND.x;
  const height = piece.size.y * pxPerMm + ROUND.top + ROUND.bottom;
  return (
    <figure className="piece-picture">
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`${PIECE_WORDS[piece.id].name}, ${scaleText(scale)}`}
      >
        <PieceShape piece={piece} paper={{ pxPerMm, at: { x: ROUND.x, y: height - ROUND.bottom } }} />
      </svg>
      <figcaption>{PAGE.picture(scaleText(scale), sizeText(piece))}</figcaption>
    </figure>
  );
}
