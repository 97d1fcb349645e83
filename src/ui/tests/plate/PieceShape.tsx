import { memo } from 'react';
import type { Piece, RoundCorner, Slab } from '../../../core/coupons/piece.ts';
import type { Loop } from '../../../core/geometry/loop.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { distance } from '../../../core/geometry/vector.ts';
import { through } from '../../drawing/sheet.ts';
import { onPaper, pieceLetters, type Paper } from './pieceLetters.ts';

/** Chords of a round lie this near to it [mm]. */
const ON_ROUND = 0.06;

/** Painted from the plate up, each over what it hides, so that what is seen from above is left. */
function slabPath({ region }: Slab, paper: Paper): string {
  return region
    .map((loop) =>
      through(
        loop.map((point) => onPaper(paper, point)),
        true,
      ),
    )
    .join('');
}

/** The pieces of an outline that run round a corner. */
function roundPath({ centre, radius }: RoundCorner, loops: readonly Loop[], paper: Paper): string {
  const isOn = (point: Point) => Math.abs(distance(point, centre) - radius) < ON_ROUND;
  return loops
    .flatMap((loop) => loop.map((to, at) => [loop.at(at - 1) ?? to, to] as const))
    .filter(([from, to]) => isOn(from) && isOn(to))
    .map((chord) => through(chord.map((point) => onPaper(paper, point))))
    .join('');
}

interface Props {
  readonly piece: Piece;
  readonly paper: Paper;
  /** Number of the corner that is in use. */
  readonly corner?: number | undefined;
  /** Without its numbers and radii. */
  readonly isBare?: boolean;
}

/** A test piece as it is seen from above: in outline, every part at its true width. */
export const PieceShape = memo(function PieceShape({ piece, paper, corner, isBare = false }: Props) {
  const inUse = piece.corners.find(({ number }) => number === corner);
  const loops = piece.bodies.flatMap((body) => body.flatMap(({ region }) => region));
  return (
    <g>
      {piece.bodies.map((body, at) =>
        body.map((slab) => <path key={`${at} ${slab.from}`} className="slab" d={slabPath(slab, paper)} />),
      )}
      {inUse && <path className="Wa in-use" d={roundPath(inUse, loops, paper)} />}
      {(isBare ? [] : pieceLetters(piece, paper)).map(({ text, x, y }) => (
        <text key={`${text} ${x} ${y}`} className="s12 on-slab" x={x} y={y} textAnchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
});
