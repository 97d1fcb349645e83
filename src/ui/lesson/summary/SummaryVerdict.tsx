import type { Assessment } from '../../../core/design/assessment.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { MARK_SHAPES } from '../../app/markShapes.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import type { ProvenanceKind } from '../../../core/material/types.ts';
import type { Said } from '../../text/said.ts';
import { SUMMARY } from '../../text/summaryText.ts';
import { chanceText, verdictHeading, verdictSentences } from '../../text/verdictText.ts';

/** A mark that leads nowhere: on paper there is nothing to press. */
export function PaperMark({ kind }: { readonly kind: ProvenanceKind }) {
  return (
    <span className="paper-mark">
      <MarkShape kind={kind} />
      <span className="vh"> ({MARK_SHAPES[kind].says})</span>
    </span>
  );
}

function Sentence({ said }: { readonly said: Said }) {
  return said.map((piece, at) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      // A sentence is built anew as a whole, so the place of a piece is its identity.
      <span className="nw" key={at}>
        <b>{piece.figure}</b>
        {piece.mark !== undefined && <PaperMark kind={piece.mark} />}
      </span>
    ),
  );
}

/** Shape, word and reason, and the sentences in one paragraph. */
export function SummaryVerdict({ assessment, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const chance = chanceText(assessment);
  return (
    <section className="summary-verdict" aria-label={SUMMARY.verdict}>
      <h3>
        <VerdictShape grade={assessment.verdict.grade} /> {verdictHeading(assessment)}
      </h3>
      <p>
        {verdictSentences(assessment, unit).map((said, at) => (
          <span key={at}>
            <Sentence said={said} />{' '}
          </span>
        ))}
        {chance}
      </p>
    </section>
  );
}
