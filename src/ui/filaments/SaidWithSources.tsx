import { useId, useState } from 'react';
import { kindWords } from '../text/filamentValueText.ts';
import { FIGURE_SOURCES } from '../text/filamentsText.ts';
import type { Said } from '../text/said.ts';
import { SourceMark } from './SourceMark.tsx';

/** A sentence with its figures set strong; the mark of one opens where it comes from, under the sentence. */
export function SaidWithSources({ said }: { readonly said: Said }) {
  const noteId = useId();
  const [open, setOpen] = useState<number>();
  const opened = open === undefined ? undefined : said[open];
  const kind = typeof opened === 'object' ? opened.mark : undefined;
  return (
    <>
      {said.map((piece, at) =>
        typeof piece === 'string' ? (
          piece
        ) : (
          // A sentence is built anew as a whole, so the place of a piece is its identity.
          <span className="nw" key={at}>
            <span className="num">{piece.figure}</span>
            {piece.mark !== undefined && (
              <SourceMark
                kind={piece.mark}
                of={piece.figure}
                open={open === at}
                controls={noteId}
                onToggle={() => setOpen(open === at ? undefined : at)}
              />
            )}
          </span>
        ),
      )}
      {kind && (
        <small className="origin-said" id={noteId}>
          {kindWords(kind)}: {FIGURE_SOURCES[kind]}
        </small>
      )}
    </>
  );
}
