import type { Piece, PiecesAsked } from '../../../core/coupons/piece.ts';
import { NOMINAL_PX_PER_MM, SCALES, scaleText } from '../../drawing/sheet.ts';
import { PAGE, pictureText } from '../../text/pieceStepsText.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import { PieceShape } from '../plate/PieceShape.tsx';
import { AngleGuide, guideFrame, type GuideFrame } from './AngleGuide.tsx';
import { guideStrips } from './rounds.ts';
import { Scrolled } from './Scrolled.tsx';

/** Room for a piece on its page [mm]. */
const ROOM = { x: 180, y: 78 } as const;
/** Kept free round it for what is lettered beside it [px]. */
const BESIDE = 5;
const OVER = 16;
const BESIDE_CORNERS = 30;
const UNDER_CORNERS = 18;

/** The largest scale of those that drawings have, at most life size, at which a piece fits. */
export function pictureScale({ size }: Pick<Piece, 'size'>): number {
  const scales = SCALES.filter((scale) => scale <= 1);
  return scales.find((scale) => size.x * scale <= ROOM.x && size.y * scale <= ROOM.y) ?? scales.at(-1) ?? 1;
}

/** The comb is its own guide where it bends in the plane in which it is drawn, and is drawn life size. */
function guideOf(piece: Piece, { profile, turn }: PiecesAsked) {
  if (piece.id !== 'comb' || profile.lying !== 'flat' || pictureScale(piece) !== 1) return undefined;
  const strips = guideStrips(piece.strips, turn);
  const frame = guideFrame(strips, turn);
  return frame.right - frame.left > ROOM.x || -frame.top > ROOM.y ? undefined : { strips, turn, frame };
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

/** How wide it is drawn [mm]. */
export function pictureWidth(piece: Piece, asked: PiecesAsked): number {
  const { left, right } = frameOf(piece, guideOf(piece, asked)?.frame);
  return (right - left) * pictureScale(piece);
}

interface Props {
  readonly piece: Piece;
  readonly asked: PiecesAsked;
}

/** A piece from above as it comes off the plate, life size where the page has room for it. */
export function PiecePicture({ piece, asked }: Props) {
  const scale = pictureScale(piece);
  const pxPerMm = NOMINAL_PX_PER_MM * scale;
  const guide = guideOf(piece, asked);
  const { left, top, right, bottom } = frameOf(piece, guide?.frame);
  const [beside, under] = piece.corners.length > 0 ? [BESIDE_CORNERS, UNDER_CORNERS] : [BESIDE, BESIDE];
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
              <AngleGuide {...guide} />
            </g>
          )}
        </svg>
      </Scrolled>
      <figcaption>
        {pictureText(piece, scaleText(scale))} {guide && PAGE.guide}
      </figcaption>
    </figure>
  );
}
