import { THIN } from '../text/numbers.ts';

const GROUPED = new RegExp(`(\\d+(?:${THIN}\\d{3})+)`);

/** A sentence in which no line ends inside a number. */
export function Unbroken({ text }: { readonly text: string }) {
  return text.split(GROUPED).map((piece, at) =>
    at % 2 === 0 ? (
      piece
    ) : (
      // A sentence is built anew as a whole, so the place of a piece is its identity.
      <span className="nw" key={at}>
        {piece}
      </span>
    ),
  );
}
