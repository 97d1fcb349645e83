import { Mark } from '../app/Mark.tsx';
import type { Said } from '../text/said.ts';

/** A sentence with its figures set strong, each with the mark of where it comes from. */
export function SaidText({ said }: { readonly said: Said }) {
  return said.map((piece, at) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      // A sentence is built anew as a whole, so the place of a piece is its identity.
      <span className="nw" key={at}>
        <span className="num">{piece.figure}</span>
        {piece.mark !== undefined && <Mark kind={piece.mark} about={piece.about} />}
      </span>
    ),
  );
}
