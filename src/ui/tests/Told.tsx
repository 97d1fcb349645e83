import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import type { Said } from '../text/said.ts';

/** A sentence with its figures set strong, each with the mark of what it rests on; the marks are explained at the foot. */
export function Told({ said }: { readonly said: Said }) {
  return said.map((piece, at) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      // A sentence is built anew as a whole, so the place of a piece is its identity.
      <span className="nw" key={at}>
        <span className="num">{piece.figure}</span>
        {piece.mark !== undefined && (
          <span className="pv-still" title={MARK_SHAPES[piece.mark].says}>
            <MarkShape kind={piece.mark} />
            <span className="vh"> ({MARK_SHAPES[piece.mark].says})</span>
          </span>
        )}
      </span>
    ),
  );
}
