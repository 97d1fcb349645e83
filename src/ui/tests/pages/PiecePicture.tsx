import type { Piece, PiecesAsked } from '../../../core/coupons/piece.ts';
import { NOMINAL_PX_PER_MM, SCALES, scaleText } from '../../drawing/sheet.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import { GUIDE, pictureText } from '../../text/testPageText.ts';
import { PieceShape } from '../plate/PieceShape.tsx';
import { GuideLines } from './AngleGuide.tsx';
import { ownGuide, type GuideFrame } from './guides.ts';
import { Scrolled } from './Scrolled.tsx';

/** Room for a picture on its page [mm]: all of its width, or the browser would print the page smaller. */
const ROOM = { x: 186, y: 78 } as const;
/** Kept free round it for what is lettered beside it [px]. */
const BESIDE = 5;
const BESIDE_NUMBERS = 14;
const OVER = 16;
const BESIDE_CORNERS = 30;
const UNDER_CORNERS = 18;

/** To either side of a piece [mm]; one that is its own guide bears its numbers at its strips. */
function besideOf({ corners, strips }: Pick<Piece, 'corners' | 'strips'>, isGuide: boolean): number {
  const beside = corners.length > 0 ? BESIDE_CORNERS : strips.length > 1 && !isGuide ? BESIDE_NUMBERS : BESIDE;
  return beside / NOMINAL_PX_PER_MM;
}

/** The largest scale of those that drawings have, at most life size, at which a piece fits. */
export function pictureScale(piece: Pick<Piece, 'size' | 'corners' | 'strips'>): number {
  const { size } = piece;
  const room = ROOM.x - 2 * besideOf(piece, false);
  const scales = SCALES.filter((scale) => scale <= 1);
  return scales.find((scale) => size.x * scale <= room && size.y * scale <= ROOM.y) ?? scales.at(-1) ?? 1;
}

/** The comb is its own guide where it bends in the plane in which it is drawn, and is drawn life size. */
function guideOf(piece: Piece, asked: PiecesAsked) {
  const guide = pictureScale(piece) === 1 ? ownGuide(piece, asked) : undefined;
  if (!guide) return undefined;
  const { left, right } = frameOf(piece, guide.frame);
  return right - left + 2 * besideOf(piece, true) <= ROOM.x && -guide.frame.top <= ROOM.y ? guide : undefined;
}

/** What is drawn [mm], y down from the front of the piece. */
function frameOf({ size }: Piece, guide: GuideFrame | undefined): GuideFrame {
  return {
    left: Math.min(0, guide?.left ?? 0),
    top: Math.min(-size.y, guide?.top ?? 0),
    right: Math.max(size.x, guide?.right ?? 0),
    bottom: Math.max(0, guide?.bottom ?? 0),
  };
}

/** How wide it is drawn, with what is lettered beside it [mm]. */
export function pictureWidth(piece: Piece, asked: PiecesAsked): number {
  const guide = guideOf(piece, asked);
  const { left, right } = frameOf(piece, guide?.frame);
  return (right - left) * pictureScale(piece) + 2 * besideOf(piece, guide !== undefined);
}

interface Props {
  readonly piece: Piece;
  readonly asked: PiecesAsked;
  readonly unit: LengthUnit;
}

/** A piece from above as it comes off the plate, life size where the page has room for it. */
export function PiecePicture({ piece, asked, unit }: Props) {
  const scale = pictureScale(piece);
  const pxPerMm = NOMINAL_PX_PER_MM * scale;
  const guide = guideOf(piece, asked);
  const { left, top, right, bottom } = frameOf(piece, guide?.frame);
  const beside = besideOf(piece, guide !== undefined) * NOMINAL_PX_PER_MM;
  const under = piece.corners.length > 0 ? UNDER_CORNERS : BESIDE;
  const at = { x: beside - left * pxPerMm, y: OVER - top * pxPerMm };
  const width = (right - left) * pxPerMm + 2 * beside;
  const height = (bottom - top) * pxPerMm + OVER + under;
  return (
    <figure className="piece-picture">
      <Scrolled className="of-figure" label={PIECE_WORDS[piece.id].name}>
        <svg
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={`${PIECE_WORDS[piece.id].name}, ${scaleText(scale)}`}
        >
          <PieceShape piece={piece} paper={{ pxPerMm, at }} isBare={guide !== undefined} />
          {guide && (
            <g transform={`translate(${at.x} ${at.y}) scale(${pxPerMm})`}>
              <GuideLines guide={guide} />
            </g>
          )}
        </svg>
      </Scrolled>
      <figcaption>
        {pictureText(piece, scaleText(scale), unit)} {guide && GUIDE.own}
      </figcaption>
    </figure>
  );
}
