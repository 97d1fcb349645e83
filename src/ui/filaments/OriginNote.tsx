import { MarkShape } from '../app/MarkShape.tsx';
import type { Origin } from '../text/filamentValueText.ts';

/** Where one number comes from: kind, words, note, and the documents in full. */
export function OriginNote({ head, origin }: { readonly head: string; readonly origin: Origin }) {
  return (
    <div className="origin">
      <MarkShape kind={origin.kind} />
      <p>
        <b>{head}</b> {origin.says} {origin.note}
        {origin.full.map((document) => (
          <small key={document}>{document}</small>
        ))}
      </p>
    </div>
  );
}
