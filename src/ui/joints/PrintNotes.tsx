import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { PRINT_NOTES_AID, printNotes } from '../text/printNotesText.ts';

/** What to set and check when printing; the notes follow the numbers of the joint. */
export function PrintNotes({ assessment, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  return (
    <section aria-label="Print notes">
      <h2 className="h">
        Print notes
        <span className="aside">{PRINT_NOTES_AID}</span>
      </h2>
      <ol className="notes">
        {printNotes(assessment, unit).map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ol>
    </section>
  );
}
