import type { Linked } from '../text/filamentText.ts';
import { JumpMark } from './JumpMark.tsx';

/** A sentence whose figures lead to where they come from. */
export function WithJumps({ text }: { readonly text: readonly (string | Linked)[] }) {
  return text.map((piece, at) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      // A sentence is built anew as a whole, so the place of a piece is its identity.
      <span className="nw" key={at}>
        <span className="num">{piece.figure}</span>
        <JumpMark kind={piece.kind} to={piece.to} />
      </span>
    ),
  );
}
